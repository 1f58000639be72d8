import { seededRandom } from "../../statistics/seeded-random.ts";
import { mm, type PlanePoint } from "../../units.ts";

/** How long an outline is, and how wide at right angles to that. */
export interface OutlineDiameters {
  readonly largest: number;
  readonly across: number;
}

/**
 * The largest distance between two corners of an outline, and its width at right angles to it, in mm.
 * @source plane geometry; docs/methods/lesion C3
 */
export function diametersOf(corners: readonly PlanePoint[]): OutlineDiameters {
  const hull = hullOf(corners);
  let [largest, along] = [0, { x: 1, y: 0 }];
  for (const [index, a] of hull.entries())
    for (const b of hull.slice(index + 1)) {
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      if (length > largest) [largest, along] = [length, { x: (b.x - a.x) / length, y: (b.y - a.y) / length }];
    }
  const aside = hull.map(({ x, y }) => y * along.x - x * along.y);
  return { largest, across: Math.max(...aside) - Math.min(...aside) };
}

/** How clicks change the diameters: by how much they read too long at most, and their standard deviations. */
export interface DiameterErrors {
  readonly excess: OutlineDiameters;
  readonly sigma: OutlineDiameters;
}

const draws = 100;
/**
 * The clicked outline is rough already, so that a draw from it is rough by sqrt(2) sigma. A round outline's excess grows
 * with sigma: draws add sqrt(2) - 1 of what the clicks did. A slender one's grows with its square and is overstated.
 */
const shownByDraws = Math.SQRT2 - 1;

/**
 * What click error does to the diameters, from draws with a fixed seed.
 * The largest of many distances has no gradient to propagate, and it reads too long: an error outwards counts, one
 * inwards is passed over. Takes the corners and the click's standard deviation in mm.
 * @source parametric bootstrap: B. Efron, R. J. Tibshirani, An introduction to the bootstrap, 1993, chapters 6 and 10
 * (memory); docs/methods/lesion C5
 */
export function diameterErrors(corners: readonly PlanePoint[], sigma: number): DiameterErrors {
  const { normal } = seededRandom(1);
  const drawn = Array.from({ length: draws }, () =>
    diametersOf(corners.map(({ x, y }) => ({ x: mm(x + sigma * normal()), y: mm(y + sigma * normal()) }))),
  );
  const plain = diametersOf(corners);
  const of = (name: keyof OutlineDiameters): { excess: number; sigma: number } => {
    const mean = drawn.reduce((sum, one) => sum + one[name], 0) / draws;
    const square = drawn.reduce((sum, one) => sum + (one[name] - mean) ** 2, 0) / (draws - 1);
    return { excess: Math.max(0, mean - plain[name]) / shownByDraws, sigma: Math.sqrt(square) };
  };
  const [largest, across] = [of("largest"), of("across")];
  return {
    excess: { largest: largest.excess, across: across.excess },
    sigma: { largest: largest.sigma, across: across.sigma },
  };
}

/** The corners of the convex hull, in order (monotone chain). */
function hullOf(corners: readonly PlanePoint[]): PlanePoint[] {
  const sorted = [...corners].sort((a, b) => a.x - b.x || a.y - b.y);
  const lower = chainOf(sorted);
  const upper = chainOf(sorted.reverse());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function chainOf(sorted: readonly PlanePoint[]): PlanePoint[] {
  const chain: PlanePoint[] = [];
  for (const place of sorted) {
    while (chain.length > 1 && !turnsLeft(chain.at(-2), chain.at(-1), place)) chain.pop();
    chain.push(place);
  }
  return chain;
}

const turnsLeft = (a: PlanePoint | undefined, b: PlanePoint | undefined, c: PlanePoint): boolean =>
  a === undefined || b === undefined || (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) > 0;
