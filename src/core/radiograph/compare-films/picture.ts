/** A picture of grey numbers, row by row. */
export interface Picture {
  readonly columns: number;
  readonly rows: number;
  readonly values: Float32Array | Float64Array;
}

/** Weights of a small Gaussian: the fourth row of Pascal's triangle over 16. */
const [outer, inner, middle] = [1 / 16, 4 / 16, 6 / 16];

/**
 * A picture smoothed a little both ways, so that reading between pixels errs less and grain weighs less.
 * Beyond an edge the last value goes on.
 */
export function smoothed(picture: Picture): Picture {
  const { columns, rows } = picture;
  const across = new Float32Array(columns * rows);
  const line = new Float64Array(columns + 4);
  for (let row = 0; row < rows; row++) {
    const from = row * columns;
    for (let at = 0; at < line.length; at++) line[at] = picture.values[from + held(at - 2, columns)] ?? 0;
    for (let at = 0; at < columns; at++)
      across[from + at] =
        outer * ((line[at] ?? 0) + (line[at + 4] ?? 0)) +
        inner * ((line[at + 1] ?? 0) + (line[at + 3] ?? 0)) +
        middle * (line[at + 2] ?? 0);
  }
  const values = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const lines = [-2, -1, 0, 1, 2].map((step) => held(row + step, rows) * columns);
    const [a = 0, b = 0, c = 0, d = 0, e = 0] = lines;
    for (let column = 0; column < columns; column++)
      values[row * columns + column] =
        outer * ((across[a + column] ?? 0) + (across[e + column] ?? 0)) +
        inner * ((across[b + column] ?? 0) + (across[d + column] ?? 0)) +
        middle * (across[c + column] ?? 0);
  }
  return { columns, rows, values };
}

/** Every second pixel of every second row; a place at (u, v) is at (u/2, v/2) then. */
export function halved({ columns, rows, values }: Picture): Picture {
  const [half, low] = [Math.ceil(columns / 2), Math.ceil(rows / 2)];
  const fewer = new Float32Array(half * low);
  for (let row = 0; row < low; row++)
    for (let column = 0; column < half; column++)
      fewer[row * half + column] = values[2 * row * columns + 2 * column] ?? 0;
  return { columns: half, rows: low, values: fewer };
}

/**
 * The grey at a place between pixels, from the four around it; undefined outside the picture.
 * @source bilinear interpolation
 */
export function greyAt({ columns, rows, values }: Picture, column: number, row: number): number | undefined {
  if (!(column >= 0 && row >= 0 && column <= columns - 1 && row <= rows - 1)) return undefined;
  const left = Math.min(Math.floor(column), Math.max(0, columns - 2));
  const top = Math.min(Math.floor(row), Math.max(0, rows - 2));
  const [right, down] = [column - left, row - top];
  const at = top * columns + left;
  const upper = (values[at] ?? 0) + right * ((values[at + 1] ?? 0) - (values[at] ?? 0));
  const below = at + columns;
  const lower = (values[below] ?? 0) + right * ((values[below + 1] ?? 0) - (values[below] ?? 0));
  return upper + down * (lower - upper);
}

const held = (at: number, count: number): number => Math.min(Math.max(at, 0), count - 1);
