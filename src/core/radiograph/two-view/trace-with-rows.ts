import type { FilmPlace } from "./camera.ts";

/** A trace with a point wherever a person fixed a level. */
export interface TraceWithRows {
  readonly points: readonly FilmPlace[];
  /** Distance of each point along the trace, in mm. */
  readonly alongMm: readonly number[];
  /** Which of the points stand at a fixed level, in their order. */
  readonly rows: readonly number[];
}

interface Stop {
  readonly at: FilmPlace;
  readonly along: number;
  readonly fixed: boolean;
}

/**
 * A trace with points added at fixed distances along it.
 * Takes the trace's points and distances in mm, growing, inside the trace.
 * @source plane geometry, docs/methods/two-view.md C6
 */
export function traceWithRows(points: readonly FilmPlace[], fixedMm: readonly number[]): TraceWithRows {
  let along = 0;
  const stops = points.map((at, index): Stop => {
    const before = points[index - 1] ?? at;
    along += Math.hypot(at.u - before.u, at.v - before.v);
    return { at, along, fixed: false };
  });
  const added = fixedMm.map((mm): Stop => ({ at: placeAlong(stops, mm), along: mm, fixed: true }));
  const all = [...stops, ...added].sort((a, b) => a.along - b.along);
  return {
    points: all.map(({ at }) => at),
    alongMm: all.map((stop) => stop.along),
    rows: all.flatMap(({ fixed }, index) => (fixed ? [index] : [])),
  };
}

function placeAlong(stops: readonly Stop[], mm: number): FilmPlace {
  const next = stops.findIndex(({ along }) => along >= mm);
  const to = stops[next < 0 ? stops.length - 1 : next];
  const from = stops[Math.max(0, (next < 0 ? stops.length - 1 : next) - 1)];
  if (to === undefined || from === undefined) throw new RangeError("a trace has points");
  const share = to.along === from.along ? 1 : Math.min(1, (mm - from.along) / (to.along - from.along));
  return { u: from.at.u + share * (to.at.u - from.at.u), v: from.at.v + share * (to.at.v - from.at.v) };
}
