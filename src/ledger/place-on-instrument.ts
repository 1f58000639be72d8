import type { BendTold } from "./bend-told.ts";

/** A place of a seated instrument with its strain. */
export interface PlaceOnInstrument {
  readonly fromTipMm: number;
  /** In the canal, from where its course begins; below 0 what stands above it. */
  readonly fromStartMm: number;
  readonly strain: number;
}

type Seated = Pick<BendTold, "profile" | "tipDepthMm" | "course">;

/** Places of the profile from the tip on; takes the number of one of them, beyond the ends the last one. */
export function placeNumbered({ profile, tipDepthMm }: Seated, number: number): PlaceOnInstrument | undefined {
  const sample = profile[Math.min(profile.length - 1, Math.max(0, number))];
  return sample && { ...sample, fromStartMm: tipDepthMm - sample.fromTipMm };
}

/** The number of the place of the profile that is nearest to a distance from the tip, mm. */
export function numberNearest({ profile }: Pick<BendTold, "profile">, fromTipMm: number): number {
  const off = profile.map((one) => Math.abs(one.fromTipMm - fromTipMm));
  return Math.max(0, off.indexOf(Math.min(...off)));
}

/** The same for a share of the seated part, 0 at the tip. */
export function numberAtShare(seated: Pick<BendTold, "profile">, share: number): number {
  const [from, to] = [seated.profile[0]?.fromTipMm ?? 0, seated.profile.at(-1)?.fromTipMm ?? 0];
  return numberNearest(seated, from + (to - from) * share);
}

/** The same for a share of the way along the course, 0 where it begins. */
export const numberAtCourse = (seated: Seated, share: number): number =>
  numberNearest(seated, seated.tipDepthMm - lengthOfCourse(seated) * share);

/** Length of the course as it is written, mm. */
export const lengthOfCourse = ({ course }: Pick<BendTold, "course">): number =>
  course.slice(1).reduce((sum, point, index) => {
    const before = course[index] ?? point;
    return sum + Math.hypot(...point.map((value, axis) => value - (before[axis] ?? 0)));
  }, 0);
