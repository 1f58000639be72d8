/** The names of the two rows of teeth. */
type Arch = "upper" | "lower";
/** A side of the patient, not of the picture. */
type Side = "right" | "left";

/** One tooth in every notation, and what it is. */
export interface ToothFacts {
  /** Two-digit number of ISO 3950: 11-48 permanent, 51-85 primary. The only one that a record keeps. */
  readonly twoDigit: string;
  /** 1-32 or A-T. */
  readonly universal: string;
  /** Quadrant in words and the position in it: `lower right 6`, `upper left C`. */
  readonly quadrant: string;
  readonly dentition: "permanent" | "primary";
  readonly arch: Arch;
  readonly side: Side;
  readonly type: "incisor" | "canine" | "premolar" | "molar";
  /** In words: `lower right first molar`. */
  readonly name: string;
}

const permanentNames = [
  "central incisor",
  "lateral incisor",
  "canine",
  "first premolar",
  "second premolar",
  "first molar",
  "second molar",
  "third molar",
];
const primaryNames = [
  "primary central incisor",
  "primary lateral incisor",
  "primary canine",
  "first primary molar",
  "second primary molar",
];
/** Quadrants in the order of ISO 3950, which is also the order in which the universal notation walks round the mouth. */
const quadrants: readonly { readonly arch: Arch; readonly side: Side }[] = [
  { arch: "upper", side: "right" },
  { arch: "upper", side: "left" },
  { arch: "lower", side: "left" },
  { arch: "lower", side: "right" },
];

/**
 * The 32 permanent and 20 primary teeth, by quadrant and then from the midline backwards.
 * @source International Organization for Standardization, ISO 3950 Dentistry: designation system for teeth and areas of the oral cavity, 2016 (memory)
 */
export const teeth: readonly ToothFacts[] = [
  ...quadrants.flatMap((_, quadrant) => permanentNames.map((__, at) => tooth("permanent", quadrant, at))),
  ...quadrants.flatMap((_, quadrant) => primaryNames.map((__, at) => tooth("primary", quadrant, at))),
];

function tooth(dentition: ToothFacts["dentition"], quadrant: number, at: number): ToothFacts {
  const { arch, side } = quadrants[quadrant] ?? { arch: "upper", side: "right" };
  const permanent = dentition === "permanent";
  const kind = (permanent ? permanentNames : primaryNames)[at] ?? "";
  const step = universalStep(quadrant, at, permanent ? 8 : 5);
  return {
    twoDigit: `${quadrant + (permanent ? 1 : 5)}${at + 1}`,
    universal: permanent ? String(step + 1) : letter(step),
    quadrant: `${arch} ${side} ${permanent ? at + 1 : letter(at)}`,
    dentition,
    arch,
    side,
    type: typeOf(kind),
    name: `${arch} ${side} ${kind}`,
  };
}

/** Steps round the mouth from the hindmost upper right tooth along the upper row, then back along the lower row. */
function universalStep(quadrant: number, at: number, perQuadrant: number): number {
  const towardsMidline = quadrant % 2 === 0;
  return quadrant * perQuadrant + (towardsMidline ? perQuadrant - 1 - at : at);
}

function letter(at: number): string {
  return String.fromCharCode("A".charCodeAt(0) + at);
}

function typeOf(kind: string): ToothFacts["type"] {
  if (kind.endsWith("premolar")) return "premolar";
  if (kind.endsWith("molar")) return "molar";
  return kind.endsWith("canine") ? "canine" : "incisor";
}
