/** Where a bending line is after some distance, seen from where it starts and along which it starts. */
export interface BentPlace {
  /** Distance gone in the first direction. */
  readonly along: number;
  /** Distance gone to the side of the bend. */
  readonly aside: number;
  /** Angle turned so far, in radians. */
  readonly turned: number;
}

/**
 * The place on a line whose curvature is `curvature + rate * s` after the distance s: straight, arc or clothoid.
 * Takes curvature in 1/mm at the start, its rate in 1/mm per mm, and the distance in mm (negative: backwards).
 * @source plane geometry, docs/methods/curvature.md C3
 */
export function bentPlace(curvature: number, rate: number, distance: number): BentPlace {
  const turned = distance * (curvature + (rate * distance) / 2);
  if (rate !== 0) return integrated(curvature, rate, distance);
  if (Math.abs(turned) < 1e-4) {
    const square = turned * turned;
    return { along: distance * (1 - square / 6), aside: (distance * turned * (1 - square / 12)) / 2, turned };
  }
  return { along: Math.sin(turned) / curvature, aside: (1 - Math.cos(turned)) / curvature, turned };
}

/** Nodes and weights of the eight-point rule of Gauss and Legendre on -1..1, one half; the rule is symmetric. */
const rule = [
  { node: 0.1834346424956498, weight: 0.362683783378362 },
  { node: 0.525532409916329, weight: 0.3137066458778873 },
  { node: 0.7966664774136267, weight: 0.2223810344533745 },
  { node: 0.9602898564975363, weight: 0.1012285362903763 },
] as const;

function integrated(curvature: number, rate: number, distance: number): BentPlace {
  const half = distance / 2;
  let along = 0;
  let aside = 0;
  for (let index = 0; index < 8; index++) {
    const pair = rule[index >> 1];
    if (pair === undefined) break;
    const s = half * (index % 2 === 0 ? 1 + pair.node : 1 - pair.node);
    const heading = s * (curvature + (rate * s) / 2);
    along += pair.weight * Math.cos(heading);
    aside += pair.weight * Math.sin(heading);
  }
  return { along: along * half, aside: aside * half, turned: distance * (curvature + (rate * distance) / 2) };
}
