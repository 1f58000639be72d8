import { deg, radiansOf } from "../../units.ts";
import type { FilmPlace, Receptor } from "./camera.ts";
import { traceWithRows } from "./trace-with-rows.ts";
import type { TwoViewInput, ViewInput } from "./two-view-input.ts";
import type { View, Views } from "./view.ts";

/** A horizontal angle with its standard deviation, both in degrees. */
export interface AngleKnown {
  readonly angleDeg: number;
  readonly sigmaDeg: number;
}

/** A film whose u runs to distal and v to the apex, whatever its angle. */
export type LevelView = Pick<View, "tilt" | "points" | "alongMm" | "rows" | "landmarks">;

/** How unsure an estimated height of the central ray is, in mm. */
const centralRaySigmaMm = 5;

/**
 * The films with u to distal and v to the apex, counted from the shared point.
 * Takes views that all run the same way; where they all run against v (an upper tooth), v is turned on all of them.
 * @source plane geometry, docs/methods/two-view.md C1
 */
export function levelViews({ views, countedFrom, levels = [] }: TwoViewInput): LevelView[] {
  const down = directionOf(views);
  return views.map(({ points, landmarks, uRunsTo, verticalAngleDeg }, film) => {
    const across = uRunsTo === "distal" ? 1 : -1;
    const origin = countedFrom === "orifice" ? points[0] : undefined;
    const [u0, v0] = origin ?? [0, 0];
    const placed = ([u, v]: readonly [number, number]): FilmPlace => ({ u: across * (u - u0), v: down * (v - v0) });
    return {
      tilt: radiansOf(deg(verticalAngleDeg)),
      ...traceWithRows(
        points.map(placed),
        levels.map((row) => row[film] ?? 0),
      ),
      landmarks: Object.fromEntries(Object.entries(landmarks).map(([name, at]) => [name, placed(at)])),
    };
  });
}

/** 1 where the canals run to larger v (the roots point down), -1 where they run to smaller v. */
function directionOf([first]: readonly ViewInput[]): 1 | -1 {
  return (first?.points.at(-1)?.[1] ?? 0) < (first?.points[0]?.[1] ?? 0) ? -1 : 1;
}

/** The films with their angles, receptor and tube, ready to be looked through; points not yet paired. */
export function readyViews(
  input: TwoViewInput,
  level: readonly LevelView[],
  angles: readonly AngleKnown[],
  receptor: Receptor,
): Omit<Views, "byIndex"> {
  const views = level.map((view, index): View => {
    const { angleDeg, sigmaDeg } = angles[index] ?? { angleDeg: 0, sigmaDeg: 0 };
    return { ...view, angle: radiansOf(deg(angleDeg)), angleSigma: radiansOf(deg(sigmaDeg)) };
  });
  const { geometry, units, scaleRelativeSigma: scaleSigma } = input;
  const centralRay = centralRayOf(input, level);
  if (geometry === undefined) return { views, receptor, centralRay, scaleSigma };
  const toPlaneMm = units === "detectorMm" ? (geometry.toothToDetectorMm ?? 0) : 0;
  return { views, receptor, centralRay, scaleSigma, source: { toToothMm: geometry.sourceToToothMm, toPlaneMm } };
}

/** The height of the central ray in the tooth: as stated on the first view, or the middle of the canal. */
function centralRayOf({ views, geometry, units, countedFrom }: TwoViewInput, level: readonly LevelView[]) {
  const beyondMm = units === "detectorMm" ? (geometry?.toothToDetectorMm ?? 0) : 0;
  const grown = geometry === undefined ? 1 : 1 + beyondMm / geometry.sourceToToothMm;
  const stated = geometry?.centralRayMm;
  if (stated !== undefined) {
    const origin = countedFrom === "orifice" ? (views[0]?.points[0]?.[1] ?? 0) : 0;
    return { mm: (directionOf(views) * (stated - origin)) / grown, sigmaMm: 0 };
  }
  const points = level[0]?.points ?? [];
  const middle = ((points[0]?.v ?? 0) + (points.at(-1)?.v ?? 0)) / 2;
  return { mm: middle / grown, sigmaMm: centralRaySigmaMm };
}
