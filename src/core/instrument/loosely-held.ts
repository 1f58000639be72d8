import { type CanalBending, curvatureAt, type Knot } from "./canal-bending.ts";

type Bent = Pick<CanalBending, "knots" | "lengthMm">;

/** How far apart the places lie at which a straightened course is told, mm. */
const knotStepMm = 0.25;
/** An instrument straightens over no more than this to either side, mm. */
const farthestMm = 3;

/**
 * The course that an instrument takes in a canal that is wider than it: straightened over the stretch on which the arc
 * leaves its chord by no more than the clearance, sqrt(2 c R) to either side where the canal bends most.
 * Takes the canal's bending and the clearance in mm. Gives the same bending for none.
 * @source plane geometry: the height of an arc over its chord; docs/methods/fracture.md C4
 */
export function looselyHeld({ knots, lengthMm }: Bent, clearanceMm: number): Bent {
  const sharpest = Math.max(0, ...knots.map(({ perMm }) => perMm));
  if (clearanceMm <= 0 || sharpest === 0) return { knots, lengthMm };
  const reachMm = Math.min(farthestMm, Math.sqrt((2 * clearanceMm) / sharpest));
  const turned = turnsAlong(knots, lengthMm);
  const meanAt = (s: number): number => (turned(s + reachMm) - turned(s - reachMm)) / (2 * reachMm);
  const count = Math.ceil(lengthMm / knotStepMm);
  const places = Array.from({ length: count + 1 }, (_, index) => Math.min(lengthMm, index * knotStepMm));
  return { lengthMm, knots: places.map((fromOrificeMm): Knot => ({ fromOrificeMm, perMm: meanAt(fromOrificeMm) })) };
}

/** How far a canal has turned from its orifice to a place, in radians; straight beyond its ends. */
function turnsAlong(knots: readonly Knot[], lengthMm: number): (s: number) => number {
  const fineMm = 0.1;
  const count = Math.ceil(lengthMm / fineMm);
  const sums = new Float64Array(count + 1);
  for (let index = 0; index < count; index++)
    sums[index + 1] = (sums[index] ?? 0) + fineMm * curvatureAt(knots, (index + 0.5) * fineMm);
  return (s) => {
    const place = Math.min(count, Math.max(0, s / fineMm));
    const below = Math.floor(place);
    const low = sums[below] ?? 0;
    return low + (place - below) * ((sums[Math.min(count, below + 1)] ?? low) - low);
  };
}
