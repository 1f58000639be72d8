import lazzerini from "../../../data/lazzerini-1996/source.json" with { type: "json" };
import vandeVoorde from "../../../data/vande-voorde-1969/source.json" with { type: "json" };
import type { CalibrateInput } from "./calibrate-input.ts";
import type { Foreshortening } from "./foreshortening.ts";
import { magnificationOf } from "./projection.ts";
import type { Disagreement, ScaleOfKnown } from "./scale-of-known.ts";
import type { FileScale } from "./scales-of-file.ts";

/** The relative standard deviation of a scale that a length on a film is worth: 0.4 mm in 20. */
const wantedRelativeSigma = 0.02;
/** Two scales of one film nearer together than this say the same. */
const sameWithin = 0.01;
/** A scale outside these mm per px is more likely a slip of unit than a dental film. */
const likelyMmPerPx = { low: 0.005, high: 0.5 } as const;

/** The other scales that a film can carry, as a sentence begins with them. */
const originInWords: Readonly<Record<FileScale["origin"], string>> = {
  pixelSpacingFiducial: "The pixel spacing that the file had from a known length",
  pixelSpacingGeometry: "The pixel spacing that the file had from its geometry",
  pixelSpacingOfUnknownOrigin: "The pixel spacing of the file",
  detectorSpacing: "The spacing at the detector",
  detectorSpacingOverMagnification: "The spacing at the detector, taken over the magnification,",
};

const percent = (share: number): string => `${(share * 100).toPrecision(3)} %`;
const brief = (value: number): string => String(Number(value.toPrecision(3)));

/** What speaks against a scale from known lengths: marks too short, marks that disagree, an unlikely unit. */
export function cautionsOfKnown(scale: ScaleOfKnown, foreshortening: Foreshortening | undefined): string[] {
  return [
    ...cautionOfShortness(scale),
    ...cautionOfDisagreement(scale.disagreement, foreshortening),
    ...cautionOfUnit(scale.meanMmPerPx),
  ];
}

function cautionOfShortness({ clickRelativeSigma, measured, meanMmPerPx }: ScaleOfKnown): string[] {
  if (clickRelativeSigma <= wantedRelativeSigma) return [];
  const [longest] = [...measured].sort((a, b) => b.onFilmPx - a.onFilmPx);
  if (longest === undefined) return [];
  const neededPx = longest.sigmaPx / wantedRelativeSigma;
  const subject =
    measured.length === 1 ? "The known length is too short" : "The known lengths are too short, the longest";
  return [
    `${subject}: ${brief(longest.lengthMm)} mm is ${brief(longest.onFilmPx)} px here, and the clicks alone leave a relative ` +
      `standard deviation of ${percent(clickRelativeSigma)}; for ${wantedRelativeSigma * 100} % it would have to be about ` +
      `${brief(neededPx * meanMmPerPx)} mm long (${brief(neededPx)} px)`,
  ];
}

function cautionOfDisagreement(
  disagreement: Disagreement | undefined,
  foreshortening: Foreshortening | undefined,
): string[] {
  if (disagreement === undefined || foreshortening === undefined) return [];
  const [largest, smallest] = foreshortening.between;
  return [
    `The known lengths disagree by more than the clicks allow (p ${disagreement.p.toPrecision(2)}): known length ${largest + 1} gives ` +
      `${foreshortening.ratio.toFixed(3)} times the scale of known length ${smallest + 1}. It is one of: ` +
      `${foreshortening.explanations.join("; ")}. The error of the scale is widened to cover it`,
  ];
}

function cautionOfUnit(mmPerPx: number): string[] {
  if (mmPerPx >= likelyMmPerPx.low && mmPerPx <= likelyMmPerPx.high) return [];
  return [`${brief(mmPerPx)} mm per px is unlikely for a dental film: look again at the length and its unit`];
}

/** What speaks against a scale that the file states. */
export function cautionsOfFile(scale: FileScale): string[] {
  return [...cautionOfPlane(scale.origin), ...cautionOfUnit(Math.sqrt(scale.mmPerPx.column * scale.mmPerPx.row))];
}

function cautionOfPlane(origin: FileScale["origin"]): string[] {
  if (origin === "detectorSpacing")
    return [
      "The spacing is at the detector: lengths in the tooth read too long by its magnification (published means " +
        `${lazzerini.meanMagnification.longConeFilm} and ${vandeVoorde.meanMagnification.longConeParalleling} for a long cone, ` +
        `${lazzerini.meanMagnification.earlyDigitalIntraoral} for an early digital film); mark a known length`,
    ];
  if (origin === "pixelSpacingOfUnknownOrigin")
    return ["The file does not say how its pixel spacing came about or in which plane it holds; mark a known length"];
  return [];
}

/** Where the other scales on offer contradict the one that was used. Takes the relative sigma of the one used, 0 if unknown. */
export function cautionsOfOthers(used: number, relativeSigma: number, others: readonly FileScale[]): string[] {
  return others
    .filter((other) => other.inToothPlane)
    .flatMap((other) => {
      const ratio = Math.sqrt(other.mmPerPx.column * other.mmPerPx.row) / used;
      if (Math.abs(ratio - 1) <= Math.max(sameWithin, 2 * relativeSigma)) return [];
      return [
        `${originInWords[other.origin]} gives ${ratio.toFixed(3)} times the scale that was used: one of them is wrong`,
      ];
    });
}

/** Fields that contradict each other or stand without effect. */
export function cautionsOfFields(input: CalibrateInput): string[] {
  const cautions: string[] = [];
  if (input.calibrationType !== undefined && input.pixelSpacingMm === undefined)
    cautions.push("The file says how it was calibrated and states no pixel spacing, so that is without effect");
  if (input.magnification !== undefined && input.geometry !== undefined) {
    const ratio = magnificationOf(input.geometry) / input.magnification;
    if (Math.abs(ratio - 1) > sameWithin)
      cautions.push(`The distances give ${ratio.toFixed(3)} times the stated magnification; the stated one was used`);
  }
  return cautions;
}

/** What the magnification implied by a known length says. Takes the magnification and its relative sigma. */
export function cautionsOfImplied(magnification: number | undefined, relativeSigma: number): string[] {
  if (magnification === undefined || magnification >= 1 - 2 * relativeSigma) return [];
  return [
    `The known length is thrown ${magnification.toFixed(3)} times its size at the detector, and nothing in the mouth is thrown ` +
      "smaller than life: it leans against the film, was clicked short, or its length is wrong",
  ];
}
