import type { BodyOf } from "../../../../src/record/parts.ts";

/** What the logbook is drawn from; docs/demo.md says for each whether it has a source or is invented. */
type Treatment = BodyOf<"case">["treatment"];
type Weighted<Thing> = readonly (readonly [Thing, number])[];

/** The first and the last day on which a tooth of the logbook presented, and the last day on which anybody was seen. */
export const span = { from: "2022-09-12", to: "2025-09-05", seenUntil: "2026-11-13" } as const;

/** Positions in a quadrant, upper and lower, at the start and at the end of the three years; molars become more. */
export const positions: {
  readonly atStart: Weighted<`${"upper" | "lower"}${1 | 2 | 3 | 4 | 5 | 6 | 7}`>;
  readonly atEnd: Weighted<`${"upper" | "lower"}${1 | 2 | 3 | 4 | 5 | 6 | 7}`>;
} = {
  atStart: [
    ...([
      ["upper1", 12],
      ["upper2", 8],
      ["upper3", 5],
      ["upper4", 9],
      ["upper5", 11],
      ["upper6", 11],
      ["upper7", 3],
    ] as const),
    ...([
      ["lower1", 2],
      ["lower2", 2],
      ["lower3", 3],
      ["lower4", 5],
      ["lower5", 7],
      ["lower6", 16],
      ["lower7", 6],
    ] as const),
  ],
  atEnd: [
    ...([
      ["upper1", 4],
      ["upper2", 3],
      ["upper3", 2],
      ["upper4", 6],
      ["upper5", 6],
      ["upper6", 23],
      ["upper7", 11],
    ] as const),
    ...([
      ["lower1", 2],
      ["lower2", 1],
      ["lower3", 2],
      ["lower4", 3],
      ["lower5", 4],
      ["lower6", 22],
      ["lower7", 11],
    ] as const),
  ],
};

/** Kinds of treatment at the start and at the end. */
export const treatments: { readonly atStart: Weighted<Treatment>; readonly atEnd: Weighted<Treatment> } = {
  atStart: [
    ["firstTreatment", 82],
    ["retreatment", 13],
    ["vitalPulp", 4],
    ["apicalBarrier", 1],
    ["surgery", 0],
  ],
  atEnd: [
    ["firstTreatment", 48],
    ["retreatment", 36],
    ["vitalPulp", 4],
    ["apicalBarrier", 3],
    ["surgery", 9],
  ],
};

/** Share of teeth with a lesion before treatment, by what the pulp is. */
export const lesionShare = { vital: 0.04, necrotic: 0.74, treated: 0.64, surgery: 1 } as const;

/** Share of teeth that stay without or come to be without a lesion, where nothing speaks against it. */
export const healedShare = { withoutLesion: 0.88, withLesion: 0.9 } as const;
/** What is taken off that share for each thing that does. */
export const healedLess = { fillingBeyond: 0.14, fillingShort: 0.05, mishap: 0.06, retreatment: 0.03 } as const;
/** Months until a lesion that heals is gone: median, and the spread as a factor. */
export const healingMonths = { median: 7.5, spreadFactor: 1.6 } as const;

/** Share of canals in which something goes otherwise than meant: in molars at the start and at the end, and elsewhere. */
export const mishapShare = { molarAtStart: 0.045, molarAtEnd: 0.026, otherTooth: 0.018 } as const;
/** What it is. */
export const mishaps: Weighted<BodyOf<"mishap">["what"]> = [
  ["separatedInstrument", 34],
  ["ledge", 26],
  ["block", 14],
  ["fillingExtrusion", 14],
  ["perforation", 9],
  ["irrigantExtrusion", 3],
];

/** Where fillings end, mm short of the apex: most within two, a few beyond or short. */
export const fillingEnd = { mean: 0.85, deviation: 0.45, beyondShare: 0.055, shortShare: 0.05 } as const;

/** Share of teeth that are never seen again after the treatment. */
export const neverSeenAgain = 0.2;
/** Months after the treatment at which a tooth is called back, with the share that comes. */
export const recallMonths: readonly (readonly [number, number])[] = [
  [6, 0.5],
  [12, 0.78],
  [24, 0.6],
  [36, 0.45],
  [48, 0.4],
];
/** Share of teeth lost in a year. */
export const lostPerYear = 0.018;
/** Why a tooth was lost. */
export const reasonsOfLoss: Weighted<string> = [
  ["vertical root fracture", 36],
  ["fracture of the crown below the bone", 22],
  ["caries at the margin, could not be restored", 18],
  ["infection that persisted, patient's choice", 14],
  ["loss of attachment", 10],
];
/** Share of readings in which the second reader gives the neighbouring score. */
export const readersDiffer = 0.19;
