import { type Course, courseThrough, directionAt, placeAt } from "../course.ts";
import { type Profile, valueAt } from "../profile.ts";
import type { Solid } from "../solid.ts";
import { distanceMm, type ToothPoint, toothPoint } from "../tooth-point.ts";
import { type Root, rootOf } from "./root.ts";

/** What a canal is made from: it follows the axis of its root at a distance that may change on the way. */
export interface CanalShape {
  /** As the clinician names it: "MB1", "MB2", "D". */
  readonly name: string;
  /** Name of the root that it runs in. */
  readonly root: string;
  /** Distance from the root's axis towards distal, by fraction of the axis. */
  readonly toDistal?: Profile;
  /** Distance from the root's axis towards buccal, by fraction of the axis. */
  readonly toBuccal?: Profile;
  /** Fraction of the root's axis at which the orifice lies. */
  readonly orificeAt: number;
  /** Radius by fraction of the canal (0 orifice, 1 foramen). */
  readonly radiusMm: Profile;
  /** How much wider the canal is from lingual to buccal than from mesial to distal, by fraction of the canal. */
  readonly ovalness?: Profile;
  /** How far from the tip of the root the foramen opens (common: 0.3 to 0.6 mm), and to which side. */
  readonly foramenShortMm: number;
  /** As wide as a chamber (the root is not finished): cut in voxels and not drawn as a strand. */
  readonly wide?: boolean;
}

/** A canal whose course is known. */
export interface Canal {
  readonly name: string;
  readonly root: string;
  /** From orifice to foramen. */
  readonly course: Course;
  readonly shape: CanalShape;
}

/** A canal of known course in a root. */
export function canalIn(root: Root, shape: CanalShape): Canal {
  const length = root.axis.lengthMm;
  const endMm = length - shape.foramenShortMm;
  const startMm = length * shape.orificeAt;
  const knots: ToothPoint[] = [];
  for (let k = 0; k <= 14; k++) {
    const along = startMm + ((endMm - startMm) * k) / 14;
    const axis = placeAt(root.axis, along);
    const t = directionAt(root.axis, along);
    const flat = Math.hypot(t.x, t.z);
    const distal = valueAt(shape.toDistal ?? [[0, 0]], along / length);
    const buccal = valueAt(shape.toBuccal ?? [[0, 0]], along / length);
    knots.push(
      toothPoint(
        axis.x + (distal * t.z) / flat - (buccal * t.x * t.y) / flat,
        axis.y + buccal * flat,
        axis.z - (distal * t.x) / flat - (buccal * t.y * t.z) / flat,
      ),
    );
  }
  return { name: shape.name, root: shape.root, course: courseThrough(knots), shape };
}

/** Radius of a canal at a length from its orifice: from mesial to distal, and from lingual to buccal. */
export function canalRadiusMm(canal: Canal, alongMm: number): { mesiodistal: number; buccolingual: number } {
  const fraction = alongMm / canal.course.lengthMm;
  const mesiodistal = valueAt(canal.shape.radiusMm, fraction);
  return { mesiodistal, buccolingual: mesiodistal * valueAt(canal.shape.ovalness ?? [[0, 1]], fraction) };
}

/** The course as a list of points a stated step apart: the truth that measurements are compared with. */
export function truePoints(canal: Canal, stepMm: number): readonly ToothPoint[] {
  const count = Math.max(1, Math.round(canal.course.lengthMm / stepMm));
  return Array.from({ length: count + 1 }, (_, i) => placeAt(canal.course, (canal.course.lengthMm * i) / count));
}

/** The length at which a course passes closest to a place. */
export function lengthNearest(course: Course, place: ToothPoint): number {
  let [best, bestAt] = [Number.POSITIVE_INFINITY, 0];
  course.points.forEach((point, i) => {
    const away = distanceMm(point, place);
    if (away < best) [best, bestAt] = [away, i];
  });
  return bestAt * course.stepMm;
}

/** A canal as a solid that goes on open through its end. */
export function canalSolid(canal: Canal): Solid {
  const { shape, course } = canal;
  const wider = shape.ovalness ?? [[0, 1]];
  return rootOf({
    name: shape.name,
    axis: truePoints(canal, course.lengthMm / 12),
    halfMesiodistal: shape.radiusMm,
    halfBuccolingual: shape.radiusMm.map(([at, radius]) => [at, radius * valueAt(wider, at)] as const),
    open: true,
  }).distance;
}
