import type { CaseFacts } from "./case-facts.ts";
import { holdsOf } from "./condition.ts";
import { fromSource } from "./from-source.ts";
import { factorsOf } from "./option-factors.ts";
import { mustsOf } from "./option-musts.ts";
import { outcomesOf } from "./option-outcomes.ts";
import { risksOf } from "./option-risks.ts";
import { wayStanding } from "./option-standing.ts";
import { plainChances } from "./plain-chance.ts";
import type { PlanInput } from "./plan-input.ts";
import type { PlanOption } from "./plan-output.ts";
import { conflictRows, wayRows } from "./plan-tables.ts";
import type { PlanWay } from "./plan-ways.ts";

/** A way with all that is known about it for a case, and the facts that it waits for. */
export interface WeighedWay {
  readonly option: PlanOption;
  readonly waitsFor: readonly string[];
}

/**
 * One way with all that is known about it for a case; of a way that does not fit the reason alone, and what it is.
 * @source docs/methods/plan.md C5
 */
export function weighedWay(way: PlanWay, facts: CaseFacts, own: PlanInput["own"]): WeighedWay {
  const musts = mustsOf(way, facts);
  const { standing, why, waitsFor } = wayStanding(way, facts, musts);
  const fits = standing !== "does not fit";
  const outcomes = fits ? outcomesOf(way, facts, own) : [];
  const { steps, visits, plain } = textsOf(way);
  const option: PlanOption = {
    ...{ way, standing, why: [...why], steps },
    mustBeTrueFirst: fits ? musts.map(({ shown }) => shown) : [],
    outcomes: outcomes.map(({ shown }) => shown),
    conflicts: fits ? conflictsOf(way, facts) : [],
    factors: fits ? factorsOf(way, facts) : [],
    risks: fits ? risksOf(way, facts) : [],
    visits: { ...visits, ...fromSource(visits.source) },
    plain: { ...plain, chances: plainChances(outcomes) },
  };
  return { option, waitsFor };
}

function textsOf(way: PlanWay): (typeof wayRows)[number] {
  const found = wayRows.find((row) => row.way === way);
  if (found === undefined) throw new Error(`data/plan/ways.json has no row of ${way}`);
  return found;
}

const conflictsOf = (way: PlanWay, facts: CaseFacts): PlanOption["conflicts"] =>
  conflictRows
    .filter(({ ways, onlyWhen = {} }) => ways.includes(way) && holdsOf(onlyWhen, facts).holds === "yes")
    .map(({ says, sources }) => ({ says, sources }));
