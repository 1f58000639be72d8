import { type SeededRandom, seededRandom } from "../../src/core/statistics/seeded-random.ts";

/** One stretch of a known canal: its length, and its curvature in 1/mm (0: straight; positive: to the right). */
export interface KnownStretch {
  readonly lengthMm: number;
  readonly curvature: number;
}

/** A canal of straight part, arc and straight part: orifice at (0,0), axis +y, bend towards +x. */
export interface KnownShape {
  readonly l1: number;
  readonly radius: number;
  readonly turnDeg: number;
  readonly l2: number;
}

/** Noise of the points of a known canal: its standard deviation in each direction, and the seed of its stream. */
export interface KnownNoise {
  readonly sigmaMm: number;
  readonly seed: number;
  /** Correlation of the noise of neighbours, as a least-cost path has it; none where absent. */
  readonly following?: number;
}

/** The stretches of a canal of one bend. */
const stretchesOf = ({ l1, radius, turnDeg, l2 }: KnownShape): KnownStretch[] => [
  { lengthMm: l1, curvature: 0 },
  { lengthMm: (radius * turnDeg * Math.PI) / 180, curvature: 1 / radius },
  { lengthMm: l2, curvature: 0 },
];

/** Points of a canal of one bend every `stepMm`, orifice and foramen among them, with or without noise. */
export const knownCanal = (shape: KnownShape, stepMm: number, noise?: KnownNoise): [number, number][] =>
  knownCourse(stretchesOf(shape), stepMm, noise);

/** Points of a canal of any stretches. */
export function knownCourse(
  stretches: readonly KnownStretch[],
  stepMm: number,
  noise?: KnownNoise,
): [number, number][] {
  const length = lengthOf(stretches);
  const steps = Math.ceil(length / stepMm - 1e-9);
  const random = seededRandom(noise?.seed ?? 0);
  const [aside, along] = [noiseStream(noise, random), noiseStream(noise, random)];
  return Array.from({ length: steps + 1 }, (_, index): [number, number] => {
    const [x, y] = knownPlace(stretches, Math.min(index * stepMm, length));
    return [x + aside(), y + along()];
  });
}

/** The noise of one coordinate, point after point: each keeps a share of the one before, the standard deviation stays. */
function noiseStream(noise: KnownNoise | undefined, random: SeededRandom): () => number {
  const { sigmaMm, following = 0 } = noise ?? { sigmaMm: 0 };
  const fresh = Math.sqrt(1 - following ** 2);
  let last: number | undefined;
  return () => {
    last = last === undefined ? random.normal() : following * last + fresh * random.normal();
    return sigmaMm * last;
  };
}

/** The same points in space: laid into a tilted plane, with noise at right angles to it too. */
export function knownCanalInSpace(shape: KnownShape, stepMm: number, noise: KnownNoise): [number, number, number][] {
  const random = seededRandom(noise.seed + 1_000_000);
  return knownCanal(shape, stepMm, noise).map(([x, y]) => {
    const off = noise.sigmaMm * random.normal();
    return [0.6 * x - 0.8 * off, 0.8 * x + 0.6 * off, y];
  });
}

/** The length of a canal of any stretches, in mm. */
export const lengthOf = (stretches: readonly KnownStretch[]): number =>
  stretches.reduce((sum, { lengthMm }) => sum + lengthMm, 0);

/** The place at a distance from the orifice: arcs by their centres, with the heading counted from +y to the right. */
function knownPlace(stretches: readonly KnownStretch[], s: number): [number, number] {
  let [x, y, heading, left] = [0, 0, 0, s];
  for (const { lengthMm, curvature } of stretches) {
    const gone = Math.min(left, lengthMm);
    const turned = heading + curvature * gone;
    x += curvature === 0 ? gone * Math.sin(heading) : (Math.cos(heading) - Math.cos(turned)) / curvature;
    y += curvature === 0 ? gone * Math.cos(heading) : (Math.sin(turned) - Math.sin(heading)) / curvature;
    heading = turned;
    left -= gone;
  }
  return [x, y];
}

/** What a canal of one bend measures, by plane geometry from its foramen; written apart from the code under test. */
export function knownMeasures(shape: KnownShape) {
  const { l1, radius, turnDeg } = shape;
  const lengthMm = lengthOf(stretchesOf(shape));
  const [x, y] = knownPlace(stretchesOf(shape), lengthMm);
  return {
    lengthMm,
    pruettDeg: turnDeg,
    pruettRadiusMm: radius,
    schneiderDeg: degrees(Math.atan2(x, y - l1)),
    accessAngleDeg: degrees(Math.atan2(x, y)),
  };
}

/** Points of a course of a given curvature (positive to the right), by fine summation: no code of the tested modules. */
export function courseOfCurvature(curvature: (s: number) => number, length: number, step: number): [number, number][] {
  const fine = 400;
  let [x, y, heading] = [0, 0, 0];
  const points: [number, number][] = [[0, 0]];
  for (let index = 1; index <= Math.round(length / step); index++) {
    for (let part = 0; part < fine; part++) {
      const s = (index - 1 + (part + 0.5) / fine) * step;
      const half = (curvature(s) * step) / fine / 2;
      heading += half;
      x += (Math.sin(heading) * step) / fine;
      y += (Math.cos(heading) * step) / fine;
      heading += half;
    }
    points.push([x, y]);
  }
  return points;
}

/** The points with normal noise of a seed. */
export function withNoise(points: readonly [number, number][], sigma: number, seed: number): [number, number][] {
  const { normal } = seededRandom(seed);
  return points.map(([x, y]) => [x + sigma * normal(), y + sigma * normal()]);
}

const degrees = (angle: number): number => (angle * 180) / Math.PI;
