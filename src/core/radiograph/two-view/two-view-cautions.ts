import { mismatchCautions } from "./film-mismatch.ts";
import { leastOutDeg, likelyShare } from "./sides.ts";
import { leastVerdictDeg, type ReceptorAnswer } from "./two-view-answer.ts";

/** Weight from which another family is worth a word. */
const worthAWord = 0.1;

/** A deflection out of the film that a wrongly stated receptor can invent. */
const slightDeg = 10;
const slight = (outDeg: number): string =>
  `The largest bend turns only ${Math.abs(outDeg).toFixed(0)} degrees out of the film: a receptor held otherwise than stated shows as much.`;

/** What a reader must know beside the numbers that one kind of receptor gives. */
export function twoViewCautions(answer: ReceptorAnswer): string[] {
  return [
    ...shiftCautions(answer),
    ...pairingCautions(answer),
    ...fitCautions(answer),
    ...sideCautions(answer),
    ...answer.receptorCautions,
    ...mismatchCautions(answer.solved),
  ];
}

function shiftCautions({ shiftDeg }: ReceptorAnswer): string[] {
  if (shiftDeg >= leastVerdictDeg) return [];
  return [
    `The films are only ${shiftDeg.toFixed(1)} degrees apart: depth is known to a fraction of what is usual, and no side is told. A shift of 20 to 30 degrees serves.`,
  ];
}

function pairingCautions({ paired, alignments, mostMovedMm }: ReceptorAnswer): string[] {
  const turned = alignments.map(
    ({ film, scale, turned }) =>
      `views[${film}] was brought to the scale and level of views[0] by its landmarks: made ${sizeWords(scale)}, turned by ${Math.abs((turned * 180) / Math.PI).toFixed(1)} degrees.`,
  );
  const other = paired.atOtherHeights
    ? ["The views have equally many points, but at different heights: they were paired by level instead."]
    : [];
  const held =
    mostMovedMm > 0
      ? [`Places fixed by hand as one level move heights on the films by up to ${mostMovedMm.toFixed(1)} mm.`]
      : [];
  return [...turned, ...other, ...held];
}

function fitCautions({ solved: { agreement, choice, scatters } }: ReceptorAnswer): string[] {
  const rms = agreement.rmsMm.toFixed(3);
  const none = agreement.fits
    ? []
    : [
        `No family of courses fits both films: the nearest is ${rms} mm off and on one side for long stretches; the intervals are widened.`,
      ];
  const scatter = scatters
    ? [`The points scatter by ${rms} mm about one common course, more than stated; the intervals are widened.`]
    : [];
  const [best, ...others] = choice.fits;
  const ends = others.some(
    ({ fit, weight }) =>
      weight >= worthAWord &&
      fit.family.bends === best?.fit.family.bends &&
      fit.family.bends > 0 &&
      fit.family.straightEnd !== best.fit.family.straightEnd,
  );
  return [
    ...none,
    ...scatter,
    ...(ends ? ["The films do not decide whether the canal is straight at its end; the intervals hold both."] : []),
  ];
}

function sideCautions({ solved: { reading }, sides, shiftDeg }: ReceptorAnswer): string[] {
  if (reading.bends.length === 0) return ["The course is straight: it turns to no side."];
  if (shiftDeg < leastVerdictDeg) return [];
  const { planeDeg, outOfFilmDeg } = reading.largest;
  if (sides.side !== "undetermined") return Math.abs(outOfFilmDeg) < slightDeg ? [slight(outOfFilmDeg)] : [];
  const under = `under ${leastOutDeg} by more than its error allows`;
  return sides.outShare < likelyShare
    ? [`The largest bend lies ${planeDeg.toFixed(0)} degrees out of the film's plane, ${under}: it has no side.`]
    : ["The films allow the largest bend to turn to either side."];
}

const sizeWords = (scale: number): string =>
  `${Math.abs((scale - 1) * 100).toFixed(1)} % ${scale < 1 ? "smaller" : "larger"}`;
