/** A place on a film, column and row in px. */
export type OnFilm = readonly [column: number, row: number];

/** Points at even distances along a line, its two ends among them. */
export function evenly(line: readonly OnFilm[], stepPx: number): OnFilm[] {
  const along = distances(line);
  const length = along.at(-1) ?? 0;
  const count = Math.max(1, Math.round(length / stepPx));
  return Array.from({ length: count + 1 }, (_, at) => placeAt(line, along, (length * at) / count));
}

/** The place at a distance before the end of a line. */
export function beforeEnd(line: readonly OnFilm[], distancePx: number): OnFilm {
  const along = distances(line);
  return placeAt(line, along, Math.max(0, (along.at(-1) ?? 0) - distancePx));
}

/**
 * The way of an instrument from its stop into a canal: it leaves the canal in the canal's direction and straightens up.
 * Gives points from the stop to just before the canal's first.
 */
export function fromStop(stop: OnFilm, canal: readonly OnFilm[]): OnFilm[] {
  const orifice = canal[0] ?? stop;
  const below = beforeEnd([...canal].reverse(), 20);
  const chord = Math.hypot(orifice[0] - stop[0], orifice[1] - stop[1]);
  const turn = Math.hypot(below[0] - orifice[0], below[1] - orifice[1]) || 1;
  const pull = (at: 0 | 1): number => ((below[at] - orifice[at]) / turn) * chord * 0.4;
  const middle: OnFilm = [orifice[0] - pull(0), orifice[1] - pull(1)];
  return Array.from({ length: 24 }, (_, step): OnFilm => {
    const t = step / 24;
    const mixed = (at: 0 | 1): number => (1 - t) ** 2 * stop[at] + 2 * t * (1 - t) * middle[at] + t ** 2 * orifice[at];
    return [mixed(0), mixed(1)];
  });
}

function distances(line: readonly OnFilm[]): number[] {
  let sum = 0;
  return line.map((point, at) => {
    const before = line[at - 1];
    if (before !== undefined) sum += Math.hypot(point[0] - before[0], point[1] - before[1]);
    return sum;
  });
}

function placeAt(line: readonly OnFilm[], along: readonly number[], distance: number): OnFilm {
  const found = along.findIndex((at) => at >= distance - 1e-9);
  const after = Math.max(1, found < 0 ? line.length - 1 : found);
  const [from, to] = [line[after - 1], line[after]];
  const [start, end] = [along[after - 1] ?? 0, along[after] ?? 0];
  if (from === undefined || to === undefined) return from ?? to ?? [0, 0];
  const share = end === start ? 0 : Math.min(1, (distance - start) / (end - start));
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}
