import type { Interval } from "../../basis.ts";
import { wilsonInterval } from "../../statistics/wilson-interval.ts";
import type { CaseFacts } from "./case-facts.ts";
import { type Condition, holdsOf } from "./condition.ts";
import { fromSource } from "./from-source.ts";
import { inWords } from "./in-words.ts";
import type { PlanInput } from "./plan-input.ts";
import type { PlanOption } from "./plan-output.ts";
import { type OutcomeRow, planSources } from "./plan-sources.ts";
import { factTexts } from "./plan-tables.ts";
import type { PlanWay } from "./plan-ways.ts";

type Outcome = PlanOption["outcomes"][number];
/** A series as it is shown, with the words that a patient is told it in; the person's own figures have none. */
export interface ShownOutcome {
  readonly shown: Outcome;
  readonly plain?: OutcomeRow["plain"];
}

const order = ["nearest", "near", "wider", "other"] as const;

/**
 * The published series of a way, the group nearest to this case first; of equally near ones the more closely described.
 * @source docs/methods/plan.md C6
 */
export function outcomesOf(way: PlanWay, facts: CaseFacts, own: PlanInput["own"] = []): ShownOutcome[] {
  const rows = planSources.flatMap(({ id, outcomes }) =>
    outcomes
      .filter(({ ways, onlyWhen = {} }) => ways.includes(way) && holdsOf(onlyWhen, facts).holds === "yes")
      .map((row) => ({ row, shown: shownOf(row, id, facts) })),
  );
  const rank = ({ row, shown }: (typeof rows)[number]): number =>
    order.indexOf(shown.nearest) * 100 - Object.keys(row.when).length;
  const published = [...rows].sort((a, b) => rank(a) - rank(b)).map(({ row, shown }) => ({ shown, plain: row.plain }));
  return [...own.flatMap((one, index) => (one.way === way ? [{ shown: ownOf(one, index) }] : [])), ...published];
}

function shownOf(row: OutcomeRow, source: string, facts: CaseFacts): Outcome {
  const { ways: _, when, onlyWhen: __, plain: ___, implied, interval, mark, recall, ...rest } = row;
  return {
    ...rest,
    proportion: row.proportion ?? (row.events ?? 0) / (row.n ?? 1),
    ...intervalOf(row),
    ...(recall === undefined ? {} : { recall: { ...recall, proportion: recall.examined / recall.of } }),
    ...nearness(when, facts),
    ...fromSource(source, mark),
  };
}

/** Of a count Wilson's, else the printed one, else none. */
function intervalOf({ events, n, implied, interval }: OutcomeRow): Pick<Outcome, "interval" | "intervalIs"> {
  if (events !== undefined && n !== undefined)
    return { interval: wilsonInterval(events, n), intervalIs: implied === true ? "wilsonOfImpliedCounts" : "wilson" };
  if (interval === undefined) return { intervalIs: "none" };
  return { interval: { low: interval[0], high: interval[1], level: 0.95 }, intervalIs: "printed" };
}

function nearness(when: Condition, facts: CaseFacts): Pick<Outcome, "nearest" | "nearestSays"> {
  const { holds, missing, against } = holdsOf(when, facts);
  const asHere = (names: readonly string[]): string =>
    names.map((fact) => `${factName(fact)} ${inWords(String(facts.get(fact)))}`).join(", ");
  const all = Object.keys(when);
  if (all.length === 0) return { nearest: "wider", nearestSays: "The whole series, whatever its teeth had." };
  if (holds === "yes") return { nearest: "nearest", nearestSays: `As here: ${asHere(all)}.` };
  if (holds === "no") return { nearest: "other", nearestSays: `Another group; here: ${asHere(against)}.` };
  return { nearest: "near", nearestSays: `Not recorded here: ${missing.map(factName).join(", ")}.` };
}

const factName = (fact: string): string => factTexts[fact]?.name ?? fact;

function ownOf(one: NonNullable<PlanInput["own"]>[number], index: number): Outcome {
  const { way, what, kind, followUp, from } = one;
  return {
    id: `own-${way}-${index + 1}`,
    ...{ what, kind, followUp, definition: "asPrinted", definitionSays: "as the person gives it" },
    ...ownShare(one),
    ...{ imaging: "notStated", unit: "notStated", design: "the person's own figure", group: from },
    ...{ nearest: "near", nearestSays: "As the person judges." },
    ...fromSource("own"),
  };
}

function ownShare(
  one: NonNullable<PlanInput["own"]>[number],
): Pick<Outcome, "events" | "n" | "proportion" | "interval" | "intervalIs"> {
  const { events, n, percent = 0, lowPercent, highPercent } = one;
  if (events !== undefined && n !== undefined)
    return { events, n, proportion: events / n, interval: wilsonInterval(events, n), intervalIs: "wilson" };
  if (lowPercent === undefined || highPercent === undefined) return { proportion: percent / 100, intervalIs: "none" };
  const interval: Interval = { low: lowPercent / 100, high: highPercent / 100, level: 0.95 };
  return { proportion: percent / 100, interval, intervalIs: "printed" };
}
