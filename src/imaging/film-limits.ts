import { refuseFile } from "./refuse-file.ts";

/** How large a film may be; each is checked before memory is taken for it. */
export interface FilmLimits {
  /** Bytes of the file, and of a data set once unpacked. */
  readonly maxBytes: number;
  /** Columns or rows. */
  readonly maxSide: number;
  /** Columns times rows. */
  readonly maxPixels: number;
}

/** Room for every film on the market several times over, and still within a laptop's memory. */
export const filmLimits: FilmLimits = { maxBytes: 512_000_000, maxSide: 20_000, maxPixels: 120_000_000 };

/** A size as a header declares it. */
export interface DeclaredSize {
  readonly columns: number;
  readonly rows: number;
}

/**
 * Passes a declared size that a film can have.
 * Takes the file's name, the declared columns and rows, and the limits.
 * @throws Refusal `file.impossibleSize` for a side of 0 or beyond the limits, with both numbers.
 */
export function checkDeclaredSize(name: string, size: DeclaredSize, limits: FilmLimits): void {
  const { columns, rows } = size;
  const facts = { columns, rows, maxSide: limits.maxSide, maxPixels: limits.maxPixels };
  const refuse = (why: string) =>
    refuseFile(name, {
      code: "file.impossibleSize",
      state: `its header declares ${columns} columns and ${rows} rows, ${why}; export the film again`,
      facts,
    });
  if (!(columns >= 1 && rows >= 1)) throw refuse("and a film has at least one of each");
  if (columns > limits.maxSide || rows > limits.maxSide) throw refuse(`and a side may have ${limits.maxSide}`);
  if (columns * rows > limits.maxPixels) throw refuse(`and a film may have ${limits.maxPixels} pixels`);
}
