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

/** Above the orifice an instrument straightens up: its lean dies out over this length. */
const leanMm = 4;
/** The canal's direction at its orifice is taken over this length. */
const directionOverMm = 0.5;

/**
 * The way of an instrument from its stop into a canal: it leaves the canal in the canal's direction and straightens up.
 * Takes the stop, the canal from its orifice on, and px in a mm. Gives points from the stop to just before the orifice.
 */
export function fromStop(stop: OnFilm, canal: readonly OnFilm[], pxPerMm: number): OnFilm[] {
  const orifice = canal[0] ?? stop;
  const below = beforeEnd([...canal].reverse(), directionOverMm * pxPerMm);
  const turn = Math.hypot(below[0] - orifice[0], below[1] - orifice[1]) || 1;
  const out = { u: (below[0] - orifice[0]) / turn, v: (below[1] - orifice[1]) / turn };
  const rise = 0.3 * Math.abs(out.v) + 0.7;
  const leanPx = leanMm * pxPerMm;
  const at = (away: number): OnFilm => [
    orifice[0] - out.u * leanPx * (1 - Math.exp(-away / leanPx)),
    orifice[1] - Math.sign(out.v) * away * rise,
  ];
  const whole = Math.abs(stop[1] - orifice[1]) / rise;
  const [endU, endV] = at(whole);
  return Array.from({ length: 40 }, (_, step): OnFilm => {
    const share = 1 - step / 40;
    const [u, v] = at(whole * share);
    return [u + (stop[0] - endU) * share, v + (stop[1] - endV) * share];
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
