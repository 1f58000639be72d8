import { type Vector, vector } from "../../geometry/vector.ts";

/** A canal of one bend: straight, an arc, straight; its plane is turned from the film's (0: to distal, 90: to buccal). */
export interface BentCanal {
  readonly l1: number;
  readonly radius: number;
  readonly turnDeg: number;
  readonly l2: number;
  readonly planeDeg: number;
}

const radians = (angleDeg: number): number => (angleDeg * Math.PI) / 180;

/** Length along it: L1 + R t + L2. */
export const lengthOf = ({ l1, radius, turnDeg, l2 }: BentCanal): number => l1 + radius * radians(turnDeg) + l2;

/** Places from orifice to foramen in equal steps of about half a millimetre. */
export function placesOf(canal: BentCanal, steps = Math.ceil(2 * lengthOf(canal))): Vector[] {
  const { l1, radius, turnDeg, planeDeg } = canal;
  return Array.from({ length: steps + 1 }, (_, index) => {
    const s = (index / steps) * lengthOf(canal);
    const angle = Math.min(Math.max((s - l1) / radius, 0), radians(turnDeg));
    const end = Math.max(0, s - l1 - radius * radians(turnDeg));
    const aside = radius * (1 - Math.cos(angle)) + end * Math.sin(angle);
    const along = Math.min(s, l1) + radius * Math.sin(angle) + end * Math.cos(angle);
    return vector(aside * Math.cos(radians(planeDeg)), aside * Math.sin(radians(planeDeg)), along);
  });
}

type Pair = [number, number];

/** What a film under an angle shows, by the formulas for parallel rays as they are printed. */
export function shown(
  places: readonly Vector[],
  angleDeg: number,
  receptor: "turnsWithBeam" | "fixed" = "turnsWithBeam",
): Pair[] {
  const a = radians(angleDeg);
  return places.map(
    ({ x, y, z }): Pair => [receptor === "fixed" ? x + y * Math.tan(a) : x * Math.cos(a) + y * Math.sin(a), z],
  );
}

/** Views of places under angles, as the topic takes them. */
export const viewsOf = (
  places: readonly Vector[],
  anglesDeg: readonly number[],
  receptor?: "turnsWithBeam" | "fixed",
) =>
  anglesDeg.map((horizontalAngleDeg) => ({ horizontalAngleDeg, points: shown(places, horizontalAngleDeg, receptor) }));
