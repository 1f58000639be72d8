import { type SeededRandom, seededRandom } from "../../src/core/statistics/seeded-random.ts";

/** Three numbers: to distal, to buccal, to the apex. */
export type Triple = readonly [number, number, number];

/** One stretch of a canal in space: its length, the angle it turns by (0: straight) and to which side, in radians. */
export interface SpaceStretch {
  readonly lengthMm: number;
  readonly turn: number;
  /** 0 turns to distal, pi/2 to buccal. */
  readonly towards: number;
}

/** A canal in space of known stretches: its places and what is true of it. */
export interface SpaceCanal {
  readonly places: readonly Triple[];
  readonly lengthMm: number;
  /** The direction in which it runs before and after each of its stretches. */
  readonly headings: readonly { readonly before: Triple; readonly after: Triple; readonly turn: number }[];
}

const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const sum = (a: Triple, s: number, b: Triple): Triple => [a[0] + s * b[0], a[1] + s * b[1], a[2] + s * b[2]];
const normed = (a: Triple): Triple => {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
};

/** A canal laid out by thousands of short chords, one stretch after the other, with a place every half millimetre. */
function spaceCanal(lean: readonly [number, number], stretches: readonly SpaceStretch[]): SpaceCanal {
  const chord = 0.002;
  let at: Triple = [0, 0, 0];
  let along = normed([lean[0], lean[1], 1]);
  let gone = 0;
  const places: Triple[] = [at];
  const headings: { before: Triple; after: Triple; turn: number }[] = [];
  for (const { lengthMm, turn, towards } of stretches) {
    const before = along;
    // The side to which it turns, made square to the canal.
    const aim: Triple = [Math.cos(towards), Math.sin(towards), 0];
    const side = normed(sum(aim, -dot(aim, before), before));
    const steps = Math.max(1, Math.round(lengthMm / chord));
    for (let step = 0; step < steps; step++) {
      const angle = (turn * (step + 0.5)) / steps;
      along = sum(
        [Math.cos(angle) * before[0], Math.cos(angle) * before[1], Math.cos(angle) * before[2]],
        Math.sin(angle),
        side,
      );
      const next = sum(at, lengthMm / steps, along);
      const reached = gone + lengthMm / steps;
      const mark = 0.5 * places.length;
      if (reached >= mark) places.push(sum(at, (lengthMm / steps) * ((mark - gone) / (reached - gone)), along));
      at = next;
      gone = reached;
    }
    along = sum(
      [Math.cos(turn) * before[0], Math.cos(turn) * before[1], Math.cos(turn) * before[2]],
      Math.sin(turn),
      side,
    );
    headings.push({ before, after: along, turn });
  }
  if (gone - 0.5 * (places.length - 1) > 0.05) places.push(at);
  else places[places.length - 1] = at;
  return { places, lengthMm: gone, headings };
}

/** What is true of the largest bend: its angle, how far it turns out of the film, and what a straight film hides of it. */
export function truthOf({ headings, lengthMm }: SpaceCanal) {
  const bend = headings.reduce((best, one) => (one.turn > best.turn ? one : best));
  const { before, after } = bend;
  const y = normed(sum([0, 1, 0], -before[1], before));
  const outOfFilm = Math.atan2(dot(after, y), dot(after, before));
  const x: Triple = [
    y[1] * before[2] - y[2] * before[1],
    y[2] * before[0] - y[0] * before[2],
    y[0] * before[1] - y[1] * before[0],
  ];
  const seen = Math.abs(Math.atan2(after[0], after[2]) - Math.atan2(before[0], before[2]));
  return {
    lengthMm,
    pruettDeg: degrees(bend.turn),
    outOfFilmDeg: degrees(outOfFilm),
    angleToFilmDeg: degrees(Math.atan2(Math.abs(dot(after, y)), Math.abs(dot(after, x)))),
    hiddenDeg: degrees(bend.turn - seen),
  };
}

const degrees = (angle: number): number => (angle * 180) / Math.PI;

const between = (random: SeededRandom, low: number, high: number): number => low + (high - low) * random.uniform();

/** A kind of canal, drawn at random from a seed. */
export type CanalKind = "bend" | "hook" | "s" | "across";

/**
 * A random canal: "bend" has one bend of 15 to 60 degrees with R of 5 mm and more, or a straight end of 3 mm and more; "hook"
 * turns by 25 to 60 degrees on 2 to 4 mm within the last millimetres; "s" has two bends on opposite sides; "across" is a
 * "bend" that turns straight to buccal or to lingual, so that a straight film hides it.
 */
export function randomCanal(kind: CanalKind, random: SeededRandom): SpaceCanal {
  const lean = [0.15 * random.normal(), 0.15 * random.normal()] as const;
  const straight = (lengthMm: number): SpaceStretch => ({ lengthMm, turn: 0, towards: 0 });
  const anywhere = between(random, 0, 2 * Math.PI);
  const towards = kind === "across" ? (anywhere < Math.PI ? 0.5 : 1.5) * Math.PI : anywhere;
  const arc = (turn: number, radius: number, side: number): SpaceStretch => ({
    lengthMm: turn * radius,
    turn,
    towards: side,
  });
  const radians = (low: number, high: number): number => (between(random, low, high) * Math.PI) / 180;
  if (kind === "hook") {
    const turn = radians(25, 60);
    return spaceCanal(lean, [
      straight(between(random, 7, 10)),
      arc(turn, between(random, 2, 4), towards),
      straight(between(random, 0.05, 1)),
    ]);
  }
  if (kind === "s") {
    const first = arc(radians(30, 50), between(random, 4, 7), towards);
    const second = arc(radians(15, 28), between(random, 4, 7), towards + Math.PI);
    return spaceCanal(lean, [
      straight(between(random, 3, 5)),
      first,
      straight(between(random, 0.5, 2)),
      second,
      straight(between(random, 1, 2)),
    ]);
  }
  const turn = radians(15, 60);
  const wide = random.uniform() < 0.5;
  const radius = wide ? between(random, 5, 15) : between(random, 2.5, 10);
  const end = wide ? between(random, 0.05, 4) : between(random, 3, 5);
  return spaceCanal(lean, [straight(between(random, 4, 9)), arc(turn, radius, towards), straight(end)]);
}

/** How a canal is filmed. */
export interface Filming {
  readonly receptor: "turnsWithBeam" | "fixed";
  readonly anglesDeg: readonly number[];
  readonly sigmaMm: number;
  readonly angleSigmaDeg: number;
}

/** The canal's points on each film, under true angles that are a little off the stated ones; parallel rays. */
export function filmed(
  { places }: SpaceCanal,
  { receptor, anglesDeg, sigmaMm, angleSigmaDeg }: Filming,
  random: SeededRandom,
) {
  return anglesDeg.map((horizontalAngleDeg) => {
    const angle = ((horizontalAngleDeg + angleSigmaDeg * random.normal()) * Math.PI) / 180;
    const [ofX, ofY] = receptor === "fixed" ? [1, Math.tan(angle)] : [Math.cos(angle), Math.sin(angle)];
    const points = places.map(([x, y, z]): [number, number] => [
      x * ofX + y * ofY + sigmaMm * random.normal(),
      z + sigmaMm * random.normal(),
    ]);
    return { horizontalAngleDeg, points };
  });
}

export { seededRandom };
