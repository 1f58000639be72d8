import { type Homography, mapped, reversed } from "../src/core/radiograph/compare-films/homography.ts";
import { placeAt } from "../src/core/radiograph/compare-films/homography-of-landmarks.ts";
import { seededRandom } from "../src/core/statistics/seeded-random.ts";

/** A picture that is known between its pixels as well: grey 0.1 to 0.9 at every place. */
export type KnownPicture = (column: number, row: number) => number;

/** Waves of many lengths and directions, as bone looks, and the same for the same seed. */
export function boneLike(seed: number): KnownPicture {
  const { uniform } = seededRandom(seed);
  const waves = Array.from({ length: 36 }, (_, index) => {
    const [length, direction] = [10 * 1.09 ** index, uniform() * Math.PI];
    const k = (2 * Math.PI) / length;
    return {
      u: k * Math.cos(direction),
      v: k * Math.sin(direction),
      phase: uniform() * 2 * Math.PI,
      high: length ** 0.3,
    };
  });
  const most = Math.sqrt(waves.reduce((sum, { high }) => sum + high * high, 0));
  return (column, row) => {
    let sum = 0;
    for (const { u, v, phase, high } of waves) sum += high * Math.cos(u * column + v * row + phase);
    return 0.5 + 0.4 * Math.tanh(sum / most);
  };
}

/** How a film of a known picture is made. */
export interface FilmMaking {
  readonly columns: number;
  readonly rows: number;
  /** Where places of the picture fall on the film; where they are unless given. */
  readonly map?: Homography;
  /** What becomes of a grey; nothing unless given. */
  readonly tone?: (grey: number) => number;
  /** Standard deviation of the grain, as a share of the full range. */
  readonly noise?: number;
  readonly seed?: number;
}

/** A film of a known picture, in steps of 12 bits. */
export function filmOf(picture: KnownPicture, making: FilmMaking) {
  const { columns, rows, map, tone = (grey) => grey, noise = 0, seed = 1 } = making;
  const { normal } = seededRandom(seed);
  const back = map && reversed(map);
  const grey = Float32Array.from({ length: columns * rows }, (_, index) => {
    const place = placeAt(index % columns, Math.floor(index / columns));
    const { column, row } = back === undefined ? place : mapped(back, place);
    const value = tone(picture(column, row)) + noise * normal();
    return Math.round(4095 * Math.min(1, Math.max(0, value))) / 4095;
  });
  return { columns, rows, grey };
}
