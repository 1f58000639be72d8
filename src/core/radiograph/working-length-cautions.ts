import { percent } from "../percent.ts";
import { deg } from "../units.ts";
import { lengthRatioOfBeam } from "./projection.ts";
import type { WorkingLengthInput } from "./working-length-input.ts";

/** Beyond this the locator and the film contradict each other (common practice). */
const locatorAllowanceMm = 1;
/** An instrument on film over its true length: what a tooth beside a detector can be thrown at. */
const likelyRatio = { low: 1, high: 1.2 } as const;

/** What speaks against a working length from a film. Takes the readings and the locator's difference, where there is one. */
export function cautionsOfWorkingLength(input: WorkingLengthInput, locatorDifferenceMm: number | undefined): string[] {
  return [
    ...cautionsOfRatio(input),
    ...cautionsOfCurve(input),
    ...cautionsOfApex(input),
    ...cautionsOfLocator(locatorDifferenceMm),
  ];
}

function cautionsOfRatio({ known, sigmaMm, scaledByKnown }: WorkingLengthInput): string[] {
  if (known === undefined) return scaledByKnown ? [] : [cautionOfNoKnown()];
  const ratio = known.onFilmMm / known.lengthMm;
  const allowance = (2 * sigmaMm) / known.lengthMm;
  if (ratio < likelyRatio.low - allowance)
    return [
      `The instrument reads ${percent(1 - ratio)} shorter than it is: the film is foreshortened; take another, if it is much`,
    ];
  if (ratio > likelyRatio.high + allowance)
    return [
      `The instrument reads ${percent(ratio - 1)} longer than it is: the film is elongated; take another, if it is much`,
    ];
  return [];
}

function cautionOfNoKnown(): string {
  const short = 1 - lengthRatioOfBeam(deg(30), deg(10));
  const long = lengthRatioOfBeam(deg(30), deg(-10)) - 1;
  return (
    "No instrument of known length is given: foreshortening stays in the length (a beam 10 degrees off, with the detector " +
    `30 degrees from the tooth, reads ${percent(short)} short or ${percent(long)} long)`
  );
}

function cautionsOfCurve({ curved, known, traced }: WorkingLengthInput): string[] {
  if (!curved || (known === undefined && traced)) return [];
  if (known === undefined)
    return ["The canal is curved: a straight reading is shorter than its course; trace the course, or use two angles"];
  return [
    "The instrument is curved: the ratio holds only for a straight one in the plane of the tooth; take the length as a guide",
  ];
}

function cautionsOfApex({ openApex, apicalResorption, stopShortMm }: WorkingLengthInput): string[] {
  const state = apexState(openApex, apicalResorption);
  if (state === undefined) return [];
  if (stopShortMm === undefined)
    return [`No default stop applies with ${state}: the constriction that it counts on is gone; give stopShortMm`];
  return [`The stop is the one given, ${stopShortMm} mm; with ${state} no published default applies`];
}

/** The state of the apex that takes the default stop away, in words; absent where the apex is sound. */
export function apexState(openApex: boolean, apicalResorption: boolean): string | undefined {
  if (openApex && apicalResorption) return "an open, resorbed apex";
  if (openApex) return "an open apex";
  return apicalResorption ? "apical resorption" : undefined;
}

function cautionsOfLocator(differenceMm: number | undefined): string[] {
  if (differenceMm === undefined || Math.abs(differenceMm) <= locatorAllowanceMm + 1e-9) return [];
  const direction = differenceMm < 0 ? "shorter" : "longer";
  return [
    `The apex locator reads ${Math.abs(differenceMm).toFixed(1)} mm ${direction} than the film, over ${locatorAllowanceMm.toFixed(1)} mm apart: ` +
      "measure both again before either is used",
  ];
}
