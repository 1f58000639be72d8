import { closedOutline } from "../lesion/closed-outline.ts";
import { centreOf } from "../lesion/outline-area.ts";
import { alignedFilms, levelsOf, withRegion } from "./aligned-films.ts";
import { type Geometry, residualNear, residualOf, stretchOf } from "./comparability.ts";
import type { CompareFilmsInput } from "./compare-films-input.ts";
import { differenceOf, type FilmDifference, overlapOf, unchanged } from "./difference-of.ts";
import { type Homography, reversed } from "./homography.ts";
import { homographyOfLandmarks, type Landmark, landmarkResidual, placeAt } from "./homography-of-landmarks.ts";
import { carried, type Outline } from "./lesion-change.ts";
import { localShifts } from "./local-shifts.ts";
import { laidOn } from "./matched-greys.ts";
import type { Picture } from "./picture.ts";
import { type Outlines, regionOf } from "./region.ts";

/** A lesion's outline on each film, in px of that film, as far as it is drawn. */
export interface LesionOnBoth {
  readonly before?: Outline;
  readonly after?: Outline;
}

/** Everything that a comparison knows of two films. */
export interface ComparedFilms extends Geometry {
  readonly map: Homography;
  readonly lesions: LesionOnBoth;
  readonly others: readonly (LesionOnBoth & { readonly name: string })[];
  readonly landmarkResidualPx: number;
  readonly residualNearLesionPx: number | undefined;
  /** How far pieces lie off near an outline on the first film. */
  readonly residualNear: (outline: Outline) => number;
  /** Laid on the first film; computed when it is asked for. */
  readonly difference: () => FilmDifference;
}

/**
 * Two films brought together and measured against each other.
 * @throws Refusal as {@link homographyOfLandmarks} and {@link closedOutline}.
 * @source docs/methods/compare-films C1 to C5
 */
export function comparedFilms(input: CompareFilmsInput): ComparedFilms {
  const [first, second] = [pictureOf(input.before), pictureOf(input.after)];
  const landmarks = input.landmarks.map(
    (one): Landmark => ({ before: placeOf(one.before), after: placeOf(one.after) }),
  );
  const lesions = closedOnBoth(input.lesions, "lesions");
  const others = input.others.map((one, index) => ({ name: one.name, ...closedOnBoth(one, `others[${index}]`) }));
  const start = homographyOfLandmarks(landmarks);
  const leftOut = [lesions, ...others].flatMap(({ before, after }) => [
    before,
    after && carried(reversed(start), after),
  ]);
  const region = regionOf(
    first,
    input.hardParts.map((outline) => outline.map(placeOf)),
    onlyGiven(leftOut),
  );
  const all = levelsOf({ first, second, region });
  const about = alignedFilms(all, start);
  const same = unchanged(laidOn(first, second, about.map), first, region);
  const refined = alignedFilms(withRegion(all, same).slice(0, 2), about.map);
  // Where what is unchanged is too little to go by, the first map stands.
  const { map, correlation } = refined.steps === 0 ? about : refined;
  // Edges that depth moves look changed as well; how far the films lie off is asked of the whole region.
  const shifts = localShifts(all, map);
  const residualPx = residualOf(shifts.shifts);
  const laid = laidOn(first, second, map);
  const lesion = lesions.before ?? (lesions.after && carried(reversed(map), lesions.after));
  const nearTo = (outline: Outline): number => {
    const { x, y } = centreOf(outline);
    return residualNear(shifts.shifts, placeAt(x, y));
  };
  return {
    map,
    correlation,
    shifts,
    lesions,
    others,
    residualPx,
    residualMm: input.mmPerPx === undefined ? undefined : residualPx * input.mmPerPx,
    residualNearLesionPx: lesion && nearTo(lesion),
    residualNear: nearTo,
    landmarkResidualPx: landmarkResidual(map, landmarks),
    stretch: stretchOf(map, first),
    overlap: overlapOf(laid),
    difference: () => differenceOf(laid, first, same),
  };
}

const placeOf = ([u, v]: readonly [number, number]) => placeAt(u, v);

const pictureOf = ({ columns, rows, grey }: CompareFilmsInput["before"]): Picture => ({ columns, rows, values: grey });

function closedOnBoth({ before, after }: CompareFilmsInput["lesions"], path: string): LesionOnBoth {
  return {
    ...(before === undefined ? {} : { before: closedOutline(before, `${path}.before`) }),
    ...(after === undefined ? {} : { after: closedOutline(after, `${path}.after`) }),
  };
}

const onlyGiven = (outlines: readonly (Outline | undefined)[]): Outlines =>
  outlines.flatMap((outline) => (outline === undefined ? [] : [outline.map(({ x, y }) => placeAt(x, y))]));

/** An outline as the output writes it. */
export const pairsOf = (outline: Outline): [number, number][] => outline.map(({ x, y }) => [x, y]);
