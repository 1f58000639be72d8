import type { BodyOf } from "./parts.ts";

type OwnFigure = NonNullable<BodyOf<"plan">["own"]>[number];

/**
 * Whether a figure of the person's own is written in full: a count and of how many, or a percentage, and not both.
 * Takes a row of the plan's list. Gives false while it is being written.
 */
export function isInFull({ events, n, percent }: Pick<OwnFigure, "events" | "n" | "percent">): boolean {
  if (percent === undefined) return events !== undefined && n !== undefined;
  return events === undefined && n === undefined;
}
