import type { BodyOf } from "../../../../src/record/parts.ts";
import { visit } from "../usual-bodies.ts";
import { countedUses } from "./counted-uses.ts";
import { inSteps } from "./dice.ts";
import type { CanalStory, Story } from "./story.ts";

type Visit = BodyOf<"visit">;
type CanalRow = Visit["canals"][number];

/** The visits of a story in their order, the last of which fills. */
export function visitsOf(story: Story): Visit[] {
  if (story.treatment === "surgery") return [surgery(story)];
  if (story.treatment === "vitalPulp") return [vitalPulp(story)];
  return story.visitsOn.map((on, index) => rootCanalVisit(story, on, index));
}

function rootCanalVisit(story: Story, on: string, index: number): Visit {
  const { dice, help, canals, visitsOn } = story;
  const last = index === visitsOn.length - 1;
  const [next] = visitsOn.slice(index + 1);
  return visit({
    on,
    minutes: inSteps(dice.normal(58 + canals.length * 9 - story.progress * 12, 12, [35, 150]), 5),
    aim: aimOf(story, last),
    help,
    holdPoints: help === "alone" ? [] : [{ at: last ? "coneFit" : "workingLength", seenBy: "supervisor", says: "" }],
    anaesthetic: anaestheticOf(story),
    canals: canals.map((canal) => (last ? filledRow(story, canal) : dressedRow(story, canal))),
    irrigation: irrigationOf(story, last),
    instruments: countedUses(story, index),
    solvent: index === 0 ? solventOf(story) : [],
    ...(last
      ? { buildUp: "composite" }
      : { medicament: { kind: "calciumHydroxide" }, temporary: { material: "glass ionomer", thicknessMm: 4 } }),
    painBefore: Math.round(dice.normal(index === 0 ? 3 : 1, 2, [0, 9])),
    painAfter24h: Math.round(dice.normal(2, 1.6, [0, 8])),
    painAfter7d: Math.round(dice.normal(0.3, 0.7, [0, 5])),
    flareUp: dice.chance(0.03) ? "flareUp" : "none",
    ...(next === undefined ? {} : { nextOn: next }),
  });
}

function aimOf({ treatment }: Story, last: boolean): string {
  if (treatment === "apicalBarrier") return last ? "Barrier, fill, close" : "Open, disinfect, dress";
  if (treatment === "retreatment") return last ? "Fill and close" : "Old filling out, lengths, dress";
  return last ? "Fill and close" : "Open, lengths, shape, dress";
}

const lengthsOf = ({ workingLengthMm, size }: CanalStory, { tooth, treatment }: Story) => ({
  reference: (tooth.at(-1) ?? "6") <= "3" ? "incisal edge" : "cusp tip",
  workingLengthMm,
  ...(treatment === "apicalBarrier" ? {} : { locatorMm: workingLengthMm + 0.5 }),
  apicalSize: treatment === "apicalBarrier" ? 80 : size,
  taper: treatment === "apicalBarrier" ? 0.02 : 0.04,
});

function dressedRow(story: Story, canal: CanalStory): CanalRow {
  return { canal: canal.canal, state: "medicated", patency: "patent", ...lengthsOf(canal, story) };
}

/** A blocked canal is filled down to the block, and says so by where its filling ends. */
function filledRow(story: Story, canal: CanalStory): CanalRow {
  const stopped = canal.mishap === "block" || canal.mishap === "ledge";
  const barrier = story.treatment === "apicalBarrier";
  return {
    canal: canal.canal,
    state: "filled",
    patency: stopped ? "notPatent" : "patent",
    ...lengthsOf(canal, story),
    filledWith: barrier ? "calcium silicate cement, then gutta-percha" : "gutta-percha and sealer",
    technique: barrier ? "apical barrier" : story.dice.chance(0.6) ? "single cone" : "warm vertical compaction",
    fillingEndMm:
      canal.mishap === "fillingExtrusion"
        ? -1.5
        : stopped
          ? inSteps(story.dice.between(1.5, 4), 0.1)
          : canal.fillingEndMm,
  };
}

function anaestheticOf({ upper, molar, dice }: Story): Visit["anaesthetic"] {
  const block = !upper && molar;
  return [
    {
      agent: block ? "lidocaine" : "articaine",
      percent: block ? 2 : 4,
      vasoconstrictor: { name: "epinephrine", ratio: 100_000 },
      cartridgeMl: block ? 1.8 : 1.7,
      cartridges: dice.chance(0.3) ? 2 : 1,
      technique: block ? "inferior alveolar nerve block" : "infiltration",
      atMin: 0,
    },
  ];
}

function irrigationOf({ dice, canals }: Story, last: boolean): Visit["irrigation"] {
  const needle = { depthFromStopMm: 2, sideVented: true };
  const main = {
    ...{
      solution: "sodium hypochlorite" as const,
      percent: 3,
      volumeMl: 6 + 4 * canals.length,
      minutes: 15,
      atMin: 20,
    },
    ...{ activated: dice.chance(0.6) ? ("ultrasonic" as const) : ("no" as const), needle },
  };
  if (!last) return [main];
  return [
    main,
    { solution: "saline", volumeMl: 4, minutes: 1, atMin: 36, activated: "no", needle },
    { solution: "EDTA", percent: 17, volumeMl: 4, minutes: 2, atMin: 37, activated: "no", needle },
  ];
}

function solventOf({ treatment, dice }: Story): Visit["solvent"] {
  if (treatment !== "retreatment" || !dice.chance(0.55)) return [];
  const solvent = dice.pick([
    ["chloroform", 5],
    ["eucalyptol", 3],
    ["limonene", 3],
  ] as const);
  return Array.from({ length: Math.round(dice.between(1.5, 4.5)) }, (_, at) => ({
    ...{ solvent, volumeMl: 0.2, atMin: 18 + at * 6 },
  }));
}

function surgery(story: Story): Visit {
  return visit({
    on: story.visitsOn[0] ?? story.presentedOn,
    minutes: inSteps(story.dice.normal(85, 15, [60, 140]), 5),
    aim: "Root end cut by 3 mm, prepared with ultrasound, filled",
    help: story.help === "alone" ? "supervised" : story.help,
    isolation: { rubberDam: "notUsed", whyNot: "Surgery" },
    anaesthetic: anaestheticOf(story),
    note: "Root-end filling of calcium silicate cement.",
    told: "Stitches out in four days; film in six months.",
  });
}

function vitalPulp(story: Story): Visit {
  return visit({
    on: story.visitsOn[0] ?? story.presentedOn,
    minutes: inSteps(story.dice.normal(55, 10, [35, 90]), 5),
    aim: story.pulpal === "reversiblePulpitis" ? "Partial pulpotomy" : "Full pulpotomy",
    help: story.help,
    anaesthetic: anaestheticOf(story),
    irrigation: [{ solution: "sodium hypochlorite", percent: 1.5, volumeMl: 2, minutes: 3, activated: "no" }],
    buildUp: "composite over calcium silicate cement",
    note: "Bleeding stopped within three minutes.",
  });
}
