import type { CaseFacts } from "./case-facts.ts";
import { holdsOf } from "./condition.ts";
import { fromSource } from "./from-source.ts";
import { inWords } from "./in-words.ts";
import type { PlanOption } from "./plan-output.ts";
import { type MustRow, mustRows } from "./plan-tables.ts";
import type { PlanWay } from "./plan-ways.ts";

type Must = PlanOption["mustBeTrueFirst"][number];

/** One thing that must be true first, the fact that it looks at, and whether the way waits for it. */
export interface MustStanding {
  readonly shown: Must;
  readonly fact: string;
  readonly waits: boolean;
}

/**
 * What must be true before a way is taken, each met, not met or not recorded, with how far the value lies above or
 * below its threshold.
 * @source docs/methods/plan.md C4
 */
export const mustsOf = (way: PlanWay, facts: CaseFacts): MustStanding[] =>
  mustRows.filter(({ ways }) => ways.includes(way)).map((row) => mustStanding(row, facts));

function mustStanding(row: MustRow, facts: CaseFacts): MustStanding {
  const { fact, oneOf, atLeast, atMost } = row;
  const wanted = oneOf ?? {
    ...(atLeast === undefined ? {} : { atLeast }),
    ...(atMost === undefined ? {} : { atMost }),
  };
  const { holds } = holdsOf({ [fact]: wanted }, facts);
  const standing = { yes: "met", no: "notMet", unknown: "notRecorded" } as const;
  const waits = holds !== "yes" && (row.waits === "always" || (row.waits === "whenNotMet" && holds === "no"));
  return { shown: { ...shownOf(row, facts.get(fact)), standing: standing[holds], decides: waits }, fact, waits };
}

function shownOf(row: MustRow, value: string | number | undefined): Omit<Must, "standing" | "decides"> {
  const { id, says, unit, note, atLeast, atMost } = row;
  const threshold = atLeast ?? atMost;
  return {
    id,
    says,
    ...(value === undefined ? {} : { value: typeof value === "number" ? value : inWords(value) }),
    ...(threshold === undefined ? {} : { threshold }),
    ...(threshold !== undefined && typeof value === "number"
      ? { by: Math.round((value - threshold) * 1000) / 1000 }
      : {}),
    ...(unit === undefined ? {} : { unit }),
    ...(note === undefined ? {} : { note }),
    ...fromSource(row.source),
  };
}
