import { dayOf } from "../record/day-of.ts";
import type { Part } from "../record/parts.ts";

/** The part with the last day; of those of one day the one that came last; undefined where there is none. */
export const latestOf = <P extends Part>(parts: readonly P[]): P | undefined =>
  parts.reduce<P | undefined>(
    (last, one) => (last === undefined || dayText(one) >= dayText(last) ? one : last),
    undefined,
  );

const dayText = (part: Part): string => dayOf(part) ?? "";
