import { lowerCanineSegment } from "../cases/front-segment.ts";
import { lowerMolarSegment } from "../cases/lower-segment.ts";
import { upperMolarSegment } from "../cases/upper-left-segment.ts";
import type { JawSegment } from "../jaw-segment.ts";
import type { PlaceToMark } from "./calibration-film.ts";

/** A tooth as the exercise shows it: the segment that it stands in, and what is marked on it. */
export interface ToothOfExercise {
  readonly tooth: string;
  readonly arch: "upper" | "lower";
  readonly segment: (seed: number) => JawSegment;
  readonly index: number;
  /** Rows of the film: as many as the tooth is long. */
  readonly rows: number;
  /** The height in the middle of the film, mm from the cementoenamel junction towards the apex. */
  readonly middleZ: number;
  readonly places: readonly PlaceToMark[];
}

const apex = (of: string, root: string): PlaceToMark => ({ kind: "apex", of, says: `Apex of the ${root}` });
const entrance = (of: string, canal: string): PlaceToMark => ({
  kind: "entrance",
  of,
  says: `Entrance of the ${canal}`,
});
const cusp = (cuspX: number, which: string): PlaceToMark => ({ kind: "cusp", cuspX, says: `Tip of the ${which}` });
const crest = (side: "mesial" | "distal"): PlaceToMark => ({
  kind: "crest",
  says: `Crest of the bone at the root, ${side} side`,
});

const distal = [apex("D", "distal root"), cusp(-2.7, "mesial cusp"), entrance("D", "distal canal")];
const mesial = [apex("M", "mesial root"), cusp(-2.7, "mesial cusp"), entrance("MB", "mesial canal")];
const single = (cuspX: number, side: "mesial" | "distal" = "mesial"): readonly PlaceToMark[] => [
  apex("R", "root"),
  cusp(cuspX, "highest cusp"),
  crest(side),
];

const lower = { arch: "lower", segment: lowerMolarSegment, rows: 680, middleZ: 3.4 } as const;
const upper = { arch: "upper", segment: upperMolarSegment, rows: 660, middleZ: 3 } as const;
const canine: ToothOfExercise = {
  ...{ tooth: "lower canine", arch: "lower", segment: lowerCanineSegment, index: 0, rows: 780, middleZ: 2.6 },
  places: single(-0.2),
};
const upperFirst: ToothOfExercise = {
  ...{ ...upper, tooth: "upper first molar", index: 0 },
  places: [apex("MB", "mesiobuccal root"), cusp(-2.6, "mesial cusp"), entrance("MB1", "mesiobuccal canal")],
};

/** The teeth of the exercise in the order of the films; they come round again with other angles and another grain. */
export const teethOfExercise: readonly ToothOfExercise[] = [
  { ...lower, tooth: "lower first molar", index: 0, places: distal },
  canine,
  { ...lower, tooth: "lower second premolar", index: 1, places: single(-0.1) },
  { ...lower, tooth: "lower second molar", index: 3, places: mesial },
  { ...upper, tooth: "upper second premolar", index: 1, places: single(0) },
  upperFirst,
  { ...lower, tooth: "lower first molar", index: 0, places: mesial },
  { ...lower, tooth: "lower first premolar", index: 2, places: single(0, "distal") },
  { ...lower, tooth: "lower second molar", index: 3, places: distal },
  canine,
];
