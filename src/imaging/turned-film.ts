import type { FilmPixels } from "./film-pixels.ts";

/** Where the pixel at a place of the upright film stands in the film as stored. */
type Origin = (column: number, row: number) => readonly [column: number, row: number];

/**
 * A film turned upright as its EXIF orientation asks.
 * Takes the film as stored and the orientation 1..8; nothing, 1 and any other number leave it as it is.
 * Gives the upright film, its sides exchanged for 5 to 8.
 * @source CIPA DC-008-2019, Exif 2.32, tag 0x0112 Orientation (memory)
 */
export function turnedFilm(film: FilmPixels, orientation: number | undefined): FilmPixels {
  const origin = orientation === undefined ? undefined : originOf(orientation, film.columns - 1, film.rows - 1);
  if (orientation === undefined || origin === undefined) return film;
  const exchanged = orientation >= 5;
  const columns = exchanged ? film.rows : film.columns;
  const rows = exchanged ? film.columns : film.rows;
  const samples = new Uint16Array(film.samples.length);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const [fromColumn, fromRow] = origin(column, row);
      samples[row * columns + column] = film.samples[fromRow * film.columns + fromColumn] ?? 0;
    }
  return { ...film, columns, rows, samples, technical: { ...film.technical, orientationApplied: orientation } };
}

/** By orientation: 2 mirrored, 3 half turn, 4 upside down, 5 and 7 transposed, 6 and 8 quarter turns. */
function originOf(orientation: number, lastColumn: number, lastRow: number): Origin | undefined {
  const origins: Readonly<Record<number, Origin>> = {
    2: (column, row) => [lastColumn - column, row],
    3: (column, row) => [lastColumn - column, lastRow - row],
    4: (column, row) => [column, lastRow - row],
    5: (column, row) => [row, column],
    6: (column, row) => [row, lastRow - column],
    7: (column, row) => [lastColumn - row, lastRow - column],
    8: (column, row) => [lastColumn - row, column],
  };
  return origins[orientation];
}
