import { wilsonInterval } from "../../statistics/wilson-interval.ts";
import type { CaseFacts } from "./case-facts.ts";
import { holdsOf } from "./condition.ts";
import { fromSource } from "./from-source.ts";
import { outOfWords } from "./plain-chance.ts";
import { planFlags } from "./plan-input.ts";
import type { PlanOption } from "./plan-output.ts";
import { type RiskRow, riskRows } from "./plan-tables.ts";
import type { PlanWay } from "./plan-ways.ts";

type Risk = PlanOption["risks"][number];

/**
 * Every material risk of a way that the facts call for, each with the fact.
 * @source docs/methods/plan.md C9
 */
export function risksOf(way: PlanWay, facts: CaseFacts): Risk[] {
  return riskRows
    .filter(({ ways }) => ways.includes(way))
    .flatMap((row) => {
      const calls = row.calls.filter(({ when }) => holdsOf(when, facts).holds === "yes");
      return calls.length === 0 ? [] : [riskOf(row, calls.map(({ because }) => filled(because, facts)).join("; "))];
    });
}

const flags: ReadonlySet<string> = new Set(planFlags);

/** Facts that are not recorded and could call for a risk of a way that nothing calls for yet. */
export function unknownRisks(way: PlanWay, facts: CaseFacts): { fact: string; risk: string }[] {
  return riskRows
    .filter(({ ways, calls }) => ways.includes(way) && calls.every(({ when }) => holdsOf(when, facts).holds !== "yes"))
    .flatMap(({ id, calls }) =>
      calls.flatMap(({ when }) =>
        holdsOf(when, facts).missing.map((fact) => ({ fact: flags.has(fact) ? "medicalTaken" : fact, risk: id })),
      ),
    );
}

function riskOf({ id, says, plain, outOf, source }: RiskRow, because: string): Risk {
  const from = fromSource(source);
  if (outOf === undefined) return { id, says, because, plain, ...from };
  const { events, n } = outOf;
  return {
    ...{ id, says, because },
    plain: `${plain} ${outOf.says} ${outOfWords(events / n)}.`,
    outOf: { events, n, interval: wilsonInterval(events, n) },
    ...from,
  };
}

const filled = (text: string, facts: CaseFacts): string =>
  text.replace(/\{(\w+)\}/g, (_, fact: string) => String(Math.round(Number(facts.get(fact)))));
