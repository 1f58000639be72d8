/** A picture of real numbers. */
export interface Picture {
  readonly columns: number;
  readonly rows: number;
  readonly values: Float32Array;
}

function bell(sigmaPx: number): Float64Array {
  const reach = Math.max(1, Math.ceil(sigmaPx * 3.5));
  const weights = new Float64Array(2 * reach + 1).map((_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigmaPx * sigmaPx)),
  );
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / sum);
}

/** A picture blurred by a bell curve of this standard deviation; outside, the edge's values go on. */
export function blurred(picture: Picture, sigmaPx: number): Picture {
  if (sigmaPx < 0.1) return picture;
  const weights = bell(sigmaPx);
  const { columns, rows, values } = picture;
  const across = new Float32Array(values.length);
  for (let row = 0; row < rows; row++)
    blurLine(values, across, { start: row * columns, step: 1, count: columns, weights });
  const result = new Float32Array(values.length);
  for (let column = 0; column < columns; column++)
    blurLine(across, result, { start: column, step: columns, count: rows, weights });
  return { columns, rows, values: result };
}

interface Line {
  readonly start: number;
  readonly step: number;
  readonly count: number;
  readonly weights: Float64Array;
}

function blurLine(from: Float32Array, into: Float32Array, line: Line): void {
  const { start, step, count, weights } = line;
  const reach = (weights.length - 1) / 2;
  for (let i = 0; i < count; i++) {
    let sum = 0;
    for (let k = -reach; k <= reach; k++) {
      const at = i + k < 0 ? 0 : i + k >= count ? count - 1 : i + k;
      sum += (weights[k + reach] as number) * (from[start + at * step] as number);
    }
    into[start + i * step] = sum;
  }
}

/** The picture in blocks of `factor` pixels, each the mean of its block. */
export function reduced(picture: Picture, factor: number): Picture {
  const columns = Math.ceil(picture.columns / factor);
  const rows = Math.ceil(picture.rows / factor);
  const sums = new Float64Array(columns * rows);
  const counts = new Float64Array(columns * rows);
  for (let row = 0; row < picture.rows; row++)
    for (let column = 0; column < picture.columns; column++) {
      const at = Math.floor(row / factor) * columns + Math.floor(column / factor);
      sums[at] = (sums[at] as number) + (picture.values[row * picture.columns + column] as number);
      counts[at] = (counts[at] as number) + 1;
    }
  return { columns, rows, values: new Float32Array(sums.map((sum, i) => sum / (counts[i] as number))) };
}

/** A reduced picture's value at a pixel of the full one, read between blocks. */
export function enlargedAt(picture: Picture, factor: number, column: number, row: number): number {
  const gx = Math.min(picture.columns - 1, Math.max(0, (column + 0.5) / factor - 0.5));
  const gy = Math.min(picture.rows - 1, Math.max(0, (row + 0.5) / factor - 0.5));
  const ix = Math.min(picture.columns - 2, Math.floor(gx));
  const iy = Math.min(picture.rows - 2, Math.floor(gy));
  const tx = gx - ix;
  const ty = gy - iy;
  const at = iy * picture.columns + ix;
  const v = picture.values;
  const upper = (v[at] as number) * (1 - tx) + (v[at + 1] as number) * tx;
  const lower = (v[at + picture.columns] as number) * (1 - tx) + (v[at + picture.columns + 1] as number) * tx;
  return upper * (1 - ty) + lower * ty;
}
