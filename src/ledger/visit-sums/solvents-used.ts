import type { SolventInput } from "../../core/safety/solvent/solvent-input.ts";
import { canonicalJson } from "../../record/canonical-json.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import type { PartOf } from "../../record/parts.ts";
import type { Gap } from "../binding.ts";
import type { FactTold } from "../fact-told.ts";
import type { Placed } from "./by-minute.ts";

type Visit = PartOf<"visit">;
type Dose = Visit["body"]["solvent"][number];

/** All doses of one solvent in a visit. */
export interface SolventUsed {
  /** By which limits name it too; another one by the name of its own numbers. */
  readonly name: string;
  readonly doses: readonly Placed<Dose>[];
}

/** The solvents of a visit in the order of their first doses. */
export function solventsUsed({ body: { solvent } }: Visit): SolventUsed[] {
  const byName = new Map<string, Placed<Dose>[]>();
  for (const [index, row] of solvent.entries()) {
    const name = row.solvent === "other" ? (row.own?.name ?? "other") : row.solvent;
    byName.set(name, [...(byName.get(name) ?? []), { row, index }]);
  }
  return [...byName].map(([name, doses]) => ({ name, doses }));
}

/** The solvent and its doses as the topic asks for them, or what is missing of it. */
export function solventAsked(
  { name, doses }: SolventUsed,
  visitId: string,
): { readonly told: FactTold<keyof SolventInput>[] } | Omit<Gap, "subject"> {
  const at = (index: number, field: string) => `${visitId}/solvent/${index}/${field}`;
  const [first] = doses;
  if (first === undefined) return { why: "no dose is recorded", inputPaths: [] };
  const own = first.row.solvent === "other" ? first.row.own : undefined;
  const inputPaths: InputPath[] = doses.map(({ index }) => ({ input: "solvent", record: at(index, "own") }));
  if (first.row.solvent === "other" && own === undefined) return { why: numbersMissing, inputPaths };
  if (doses.some(({ row }) => canonicalJson(row.own ?? null) !== canonicalJson(own ?? null)) && own !== undefined)
    return { why: `the numbers of ${name} differ between its doses; write the same in each`, inputPaths };
  return {
    told: [
      {
        field: "solvent",
        value: own === undefined ? first.row.solvent : ownNumbers(own),
        paths: [{ input: "solvent", record: at(first.index, own === undefined ? "solvent" : "own") }],
      },
      {
        field: "doses",
        value: doses.map(({ row: { atMin, volumeMl, recoveredFraction } }) => ({
          ...{ atMin, volumeMl },
          ...(recoveredFraction === undefined ? {} : { recoveredFraction }),
        })),
        paths: doses.map(({ index }, place) => ({
          input: `doses[${place}]`,
          record: `${visitId}/solvent/${index}`,
        })),
      },
    ],
  };
}

const numbersMissing =
  "nothing is known of another solvent: it needs its numbers, as its safety data sheet prints them (name, molar mass, density, vapour pressure)";

/** Limits of it come with those of the clinic. */
const ownNumbers = ({ name, ...numbers }: NonNullable<Dose["own"]>) => ({
  own: name.slice(0, 80),
  ...numbers,
  limits: [],
});
