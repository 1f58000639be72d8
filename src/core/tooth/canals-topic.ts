import { z } from "zod";
import ahmed from "../../../data/ahmed-2017/source.json" with { type: "json" };
import fan from "../../../data/fan-2004/source.json" with { type: "json" };
import vertucci from "../../../data/vertucci-1984/source.json" with { type: "json" };
import { outputParts, sourcesOf } from "../basis.ts";
import { Refusal } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { canalCode } from "./canal-code.ts";
import { canalFaults } from "./canal-faults.ts";
import { cShapeNotes, rootCountNotes, shareNotes } from "./canal-notes.ts";
import { type CanalRoot, canalNames, canalRootSchema, cShapeAt } from "./canal-root.ts";
import { canalSequence, sequenceText, vertucciType } from "./canal-sequence.ts";
import { extraRoot } from "./extra-root.ts";
import { knownTooth } from "./known-tooth.ts";
import type { ToothFacts } from "./teeth.ts";

const sources = sourcesOf([vertucci, ahmed, fan]);

const input = z.strictObject({
  tooth: z.string().describe("Two-digit number of ISO 3950, as 46."),
  roots: z.array(canalRootSchema).min(1).max(6).describe("The roots, in the order in which they are to be named."),
});

const output = z.strictObject({
  roots: z.array(
    z.strictObject({
      name: z.string(),
      orifices: z.array(z.string()).describe("Names of the canals at the orifice."),
      sequence: z.string().describe("Separate canals from orifice to foramen, equal neighbours once: 2-1-2."),
      vertucci: z
        .enum(["I", "II", "III", "IV", "V", "VI", "VII", "VIII"])
        .nullable()
        .describe("null: none of the eight."),
    }),
  ),
  rootCount: z.number().int(),
  canalCount: z.number().int().describe("Canals at the level of the orifices."),
  foramenCount: z.number().int(),
  code: z.strictObject({ plain: z.string(), display: z.string() }).describe("Roots, tooth, and course of each root."),
  extraRoot: z.enum(["radix entomolaris", "radix paramolaris"]).nullable().optional().describe("null: no extra root."),
  notes: z.array(z.string()),
  ...outputParts,
});

/**
 * Roots and canals of a tooth: their sequences, types, counts and code, and an extra root.
 * @throws Refusal `input.impossible` with every contradiction (an unknown tooth, names twice, orifices that do not fit).
 * @source Vertucci 1984, Ahmed et al. 2017, Fan et al. 2004 (memory); docs/methods/canals
 */
export const canalsTopic = defineTopic({
  name: "canals",
  version: 1,
  summary: "Roots, canals and how they join: type, count, code and extra root.",
  input,
  output,
  sources,
  compute: ({ tooth: twoDigit, roots }) => {
    const tooth = checkedTooth(twoDigit, roots);
    const described = roots.map(describe);
    const extra = extraRoot(tooth, roots);
    return {
      roots: described,
      rootCount: roots.length,
      canalCount: sum(described.map(({ orifices }) => orifices.length)),
      foramenCount: sum(roots.map(({ levels }) => canalSequence(levels).at(-1) ?? 0)),
      code: canalCode(tooth.twoDigit, roots),
      ...(extra.kind === "sideUnknown" ? {} : { extraRoot: extra.kind === "named" ? extra.name : null }),
      notes: [
        ...rootCountNotes(tooth, roots.length),
        ...roots.flatMap((root, at) => [
          ...cShapeNotes(root),
          ...shareNotes(tooth, roots, root, described[at]?.vertucci ?? null),
        ]),
      ],
      basis: basis(),
      cautions: [],
      notComputed: extra.kind === "sideUnknown" ? [sideMissing(extra.root)] : [],
    };
  },
});

function checkedTooth(twoDigit: string, roots: readonly CanalRoot[]): ToothFacts {
  const tooth = knownTooth(twoDigit, "describe the canals");
  const faults = canalFaults(tooth, roots);
  if (faults.length === 0) return tooth;
  throw new Refusal("input.impossible", "Cannot describe the canals: the roots contradict themselves", {}, faults);
}

function describe(root: CanalRoot) {
  const sequence = canalSequence(root.levels);
  const cShaped = root.levels.some((level) => cShapeAt(level) !== undefined);
  return {
    name: root.name,
    orifices: [...canalNames(root)],
    sequence: sequenceText(sequence),
    vertucci: cShaped ? null : vertucciType(sequence),
  };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const sideMissing = (root: string) => ({
  name: "extraRoot",
  why: `root ${root} is a third root whose side is not recorded; give it side buccal or lingual`,
});

const basis = () => ({
  formula: "Vertucci's types by sequence; code of Ahmed, Versiani, De-Deus and Dummer",
  assumptions: [
    "A level counts the canals that are separate there; canals between two levels are taken to join or part between them.",
    "A root and not a canal makes a radix (common practice).",
  ],
  sources: sources.map(({ id }) => id),
});
