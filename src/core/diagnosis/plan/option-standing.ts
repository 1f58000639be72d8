import type { CaseFacts } from "./case-facts.ts";
import { holdsOf } from "./condition.ts";
import { fromSource } from "./from-source.ts";
import type { MustStanding } from "./option-musts.ts";
import type { PlanOption } from "./plan-output.ts";
import { factTexts, fitRows } from "./plan-tables.ts";
import type { PlanWay } from "./plan-ways.ts";

/** Where a way stands, why, and the facts that it waits for. */
export interface WayStanding {
  readonly standing: PlanOption["standing"];
  readonly why: PlanOption["why"];
  readonly waitsFor: readonly string[];
}

/**
 * Where a way stands: it does not fit as soon as a row speaks against it, or none speaks for it; it needs an answer
 * first where a row asks, a row that decides is not known, or what must be true first is not met or not recorded.
 * @source docs/methods/plan.md C3 and C5
 */
export function wayStanding(way: PlanWay, facts: CaseFacts, musts: readonly MustStanding[]): WayStanding {
  const rows = fitRows
    .filter((row) => row.way === way)
    .map((row) => ({ ...row, ...holdsOf(row.when, facts), ...fromSource(row.source) }));
  const those = (speaks: string, holds: string) => rows.filter((row) => row.speaks === speaks && row.holds === holds);
  const reasons = (found: typeof rows) =>
    found.map(({ id, speaks, says, source, mark }) => ({ row: id, speaks, says, source, mark }));
  const against = those("against", "yes");
  if (against.length > 0) return { standing: "does not fit", why: reasons(against), waitsFor: [] };
  const speakFor = those("for", "yes");
  const mayFit = speakFor.length > 0 ? [] : those("for", "unknown");
  if (speakFor.length === 0 && mayFit.length === 0)
    return { standing: "does not fit", why: [nothingFor], waitsFor: [] };
  const open = [...mayFit, ...those("against", "unknown")];
  const waitsFor = [
    ...new Set([
      ...open.flatMap(({ missing }) => missing.map(asked)),
      ...musts.flatMap((must) => (must.waits ? [must.fact] : [])),
    ]),
  ];
  const asks = those("asks", "yes");
  const waits = waitsFor.length > 0 || asks.length > 0;
  return {
    standing: waits ? "needs an answer first" : "open",
    why: [...reasons([...speakFor, ...asks]), ...waitsFor.map(notKnown)],
    waitsFor,
  };
}

/** That the diagnosis is not determined is asked as the term itself. */
const asked = (fact: string): string => (fact === "undetermined" ? "pulpal" : fact);

const nothingFor = {
  ...{ row: "nothing-for", speaks: "against" as const, says: "Nothing that is recorded speaks for it." },
  ...fromSource("common practice"),
};

const notKnown = (fact: string) => ({
  ...{ row: `ask-${fact}`, speaks: "asks" as const, says: factTexts[fact]?.ask ?? fact },
  ...fromSource("common practice"),
});
