import type { FractureTold } from "../ledger/fracture-told.ts";

type Explained = FractureTold["explanations"][number];
/** An explanation made up by hand, with the ends and the middle of its chance. */
export const explained = (
  name: Explained["name"],
  [low, mean, high]: readonly [number, number, number],
): Explained => ({
  ...{ name, places: [], likelihood: 1, prior: { mean: 0.3, source: "assumption" } },
  predictedFromTipMm: name === "flawOrJoint" ? null : { mean: name === "bendingFatigue" ? 4.25 : 2.4, sd: 0.8 },
  posterior: { mean, interval: { low, high, level: 0.95 } },
});
const each = (bendingFatigue: number, torsionalOverload: number, flawOrJoint: number) => ({
  ...{ bendingFatigue, torsionalOverload, flawOrJoint },
});

/** An answer made up by hand: three explanations, one assumption that turns the order, one that does not. */
export const toldOfBreak: FractureTold = {
  explanations: [
    explained("bendingFatigue", [0.3, 0.55, 0.8]),
    explained("torsionalOverload", [0.2, 0.4, 0.6]),
    explained("flawOrJoint", [0.01, 0.05, 0.12]),
  ],
  weighsMost: "The place weighs most (cheung-darvell-2007).",
  wouldDecide: ["A microscope of the face.", "The flutes."],
  fragmentLength: { mm: 3.04, sigmaMm: 0.21, percentile: 0.62, source: "s", measures: [], series: [] },
  ...{ facts: [], priors: [], shifts: [], cautions: [], notComputed: [] },
  sensitivity: [
    { assumption: "a", says: "A.", middle: 1, halved: each(0.3, 0.6, 0.1), doubled: each(0.6, 0.3, 0.1) },
    { assumption: "b", says: "B.", middle: 1, halved: each(0.6, 0.3, 0.1), doubled: each(0.5, 0.4, 0.1) },
  ],
  atMiddle: each(0.55, 0.4, 0.05),
  basis: { formula: "f", assumptions: [], sources: [] },
};
