import { seededRandom } from "../../src/core/statistics/seeded-random.ts";

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
}

/** Points of a known canal every `stepMm`, orifice and foramen among them, with or without noise. */
export function knownCanal(shape: KnownShape, stepMm: number, noise?: KnownNoise): [number, number][] {
  const length = shape.l1 + shape.radius * radians(shape.turnDeg) + shape.l2;
  const steps = Math.ceil(length / stepMm - 1e-9);
  const random = seededRandom(noise?.seed ?? 0);
  const sigma = noise?.sigmaMm ?? 0;
  return Array.from({ length: steps + 1 }, (_, index): [number, number] => {
    const [x, y] = knownPlace(shape, Math.min(index * stepMm, length));
    return [x + sigma * random.normal(), y + sigma * random.normal()];
  });
}

/** The place at a distance from the orifice along a known canal. */
function knownPlace(shape: KnownShape, s: number): [number, number] {
  const turn = radians(shape.turnDeg);
  if (s <= shape.l1) return [0, s];
  const angle = Math.min((s - shape.l1) / shape.radius, turn);
  const rest = Math.max(0, s - shape.l1 - shape.radius * turn);
  return [
    shape.radius * (1 - Math.cos(angle)) + rest * Math.sin(angle),
    shape.l1 + shape.radius * Math.sin(angle) + rest * Math.cos(angle),
  ];
}

/** What a known canal measures, by plane geometry from its foramen; written apart from the code under test. */
export function knownMeasures(shape: KnownShape) {
  const { l1, radius, turnDeg, l2 } = shape;
  const lengthMm = l1 + radius * radians(turnDeg) + l2;
  const [x, y] = knownPlace(shape, lengthMm);
  return {
    lengthMm,
    chordMm: Math.hypot(x, y),
    pruettDeg: turnDeg,
    pruettRadiusMm: radius,
    schneiderDeg: degrees(Math.atan2(x, y - l1)),
    accessAngleDeg: degrees(Math.atan2(x, y)),
  };
}

const radians = (angle: number): number => (angle * Math.PI) / 180;
const degrees = (angle: number): number => (angle * 180) / Math.PI;
