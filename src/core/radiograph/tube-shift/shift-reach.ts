import { chiSquareTail } from "../chi-square-tail.ts";
import { leastOutDeg } from "../two-view/sides.ts";
import { leastVerdictDeg } from "../two-view/two-view-answer.ts";
import type { ReadingOfFilms } from "./reading-of-films.ts";
import type { ShiftReach } from "./tube-shift-output.ts";

/** A normal interval of 95 % reaches so many standard deviations to either side. */
const reach95 = 1.959964;
/** 80 % of a normal distribution lie above this many deviations below its middle: `twoView` tells a side from that share on. */
const sureDeviations = 0.841621;
/** A quarter of it lies above this many: `twoView` takes a bend to be out of the film from that share on. */
const likelyDeviations = 0.67449;
const settledShare = 0.95;
const widestDeg = 90;

/** What films tell of a bend that turns to buccal and of its mirror image: the worse of both. */
export function shiftReach(readings: readonly ReadingOfFilms[], shiftDeg: number): ShiftReach {
  const each = readings.map((reading) => {
    const outOfFilmHalfWidthDeg = Math.min(widestDeg, reach95 * reading.outSigmaDeg);
    return {
      outOfFilmHalfWidthDeg,
      hiddenHalfWidthDeg: Math.min(widestDeg, reach95 * reading.hiddenSigmaDeg),
      sideToldShare: shiftDeg < leastVerdictDeg ? 0 : toldShare(reading),
      offZero: outOfFilmHalfWidthDeg < Math.abs(reading.outOfFilmDeg),
    };
  });
  const sideToldShare = Math.min(...each.map((one) => one.sideToldShare));
  return {
    outOfFilmHalfWidthDeg: Math.max(...each.map((one) => one.outOfFilmHalfWidthDeg)),
    hiddenHalfWidthDeg: Math.max(...each.map((one) => one.hiddenHalfWidthDeg)),
    sideToldShare,
    settles: sideToldShare >= settledShare && each.every(({ offZero }) => offZero),
  };
}

/**
 * The share of readings of a bend, normal about the true one, of which the rule of `twoView` would tell the side rightly.
 * @source docs/methods/two-view.md C10, docs/methods/tube-shift.md C4
 */
function toldShare({ outOfFilmDeg, onFilmDeg, outSigmaDeg }: ReadingOfFilms): number {
  const radians = Math.PI / 180;
  const byPlane = Math.atan(Math.tan(onFilmDeg * radians) * Math.tan(leastOutDeg * radians)) / radians;
  const least = Math.min(leastOutDeg, byPlane);
  const from = Math.max(sureDeviations * outSigmaDeg, least - likelyDeviations * outSigmaDeg);
  const deviations = (Math.abs(outOfFilmDeg) - from) / outSigmaDeg;
  const beyond = chiSquareTail(deviations ** 2, 1) / 2;
  return deviations > 0 ? 1 - beyond : beyond;
}
