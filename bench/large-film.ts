import { greyPng } from "../src/imaging/grey-png.ts";
import { seededRandom } from "../src/phantom/seeded-random.ts";

/** The size of the film that the benchmarks open. */
export const largeFilm = { columns: 2_000, rows: 1_500 } as const;

/** Where the dark line of the large film runs, by row. */
export const lineAt = (row: number): number => 1_000 + 140 * Math.sin(row / 420);

/** A 16-bit PNG of that or another size: a bright root with a dark line down its middle, and grain. */
export function largeFilmPng({
  columns,
  rows,
}: {
  readonly columns: number;
  readonly rows: number;
} = largeFilm): Uint8Array {
  const grain = seededRandom(7);
  const bytes = new Uint8Array(2 * columns * rows);
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1) {
      const off = Math.abs(column - lineAt(row));
      const level = 0.25 + 0.5 * Math.exp(-((off / 260) ** 2)) - 0.18 * Math.exp(-((off / 9) ** 2));
      const sample = Math.round(65_535 * Math.min(1, Math.max(0, level + 0.01 * grain.normal())));
      const at = 2 * (row * columns + column);
      bytes[at] = sample >> 8;
      bytes[at + 1] = sample & 0xff;
    }
  return greyPng({ columns, rows, depth: 16, bytes });
}
