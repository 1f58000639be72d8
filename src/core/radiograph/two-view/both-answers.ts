import type { Interval } from "../../basis.ts";
import type { AnswerValues } from "./answer-values.ts";
import { hullOf } from "./drawn-intervals.ts";

/** The answers for both kinds of receptor as one: intervals hold both, a side stands where both agree. */
export function bothAnswers(one: AnswerValues, other: AnswerValues): AnswerValues {
  const names = new Set([...Object.keys(one.intervals), ...Object.keys(other.intervals)]);
  const intervals = Object.fromEntries(
    [...names].flatMap((name): [string, Interval][] => {
      const a = one.intervals[name] ?? other.intervals[name];
      const b = other.intervals[name] ?? a;
      return a === undefined || b === undefined ? [] : [[name, hullOf(a, b)]];
    }),
  );
  const curvature = one.curvature && {
    ...one.curvature,
    intervals: Object.fromEntries(
      Object.keys(one.curvature.intervals).flatMap((name) => (intervals[name] ? [[name, intervals[name]]] : [])),
    ),
  };
  const { liesSide } = one;
  return {
    ...one,
    ...(curvature === undefined ? {} : { curvature }),
    ...turnOfBoth(one.turn, other.turn),
    intervals,
    side: one.side === other.side ? one.side : "undetermined",
    bendSides: (one.bendSides ?? []).map((side, index) => (other.bendSides?.[index] === side ? side : "undetermined")),
    ...(liesSide === undefined ? {} : { liesSide: other.liesSide === liesSide ? liesSide : "undetermined" }),
  };
}

function turnOfBoth(one: AnswerValues["turn"], other: AnswerValues["turn"]): Pick<AnswerValues, "turn"> {
  if (one === undefined) return {};
  const turn = one.map((here, at) => {
    const there = other?.[at] ?? here;
    return {
      ...here,
      lowDeg: Math.min(here.lowDeg, there.lowDeg),
      highDeg: Math.max(here.highDeg, there.highDeg),
    };
  });
  return { turn };
}
