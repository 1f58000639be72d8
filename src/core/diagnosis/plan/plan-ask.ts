import type { CaseFacts } from "./case-facts.ts";
import { unknownRisks } from "./option-risks.ts";
import type { WeighedWay } from "./plan-option.ts";
import type { PlanOutput } from "./plan-output.ts";
import { factTexts } from "./plan-tables.ts";

type Ask = PlanOutput["ask"][number];

/**
 * The facts that are not recorded and matter: each with the ways that wait for it and the risks that it could call for;
 * those that the most ways wait for first.
 * @source docs/methods/plan.md C5 and C9
 */
export function factsToAsk(ways: readonly WeighedWay[], facts: CaseFacts): Ask[] {
  const fitting = ways.filter(({ option }) => option.standing !== "does not fit");
  const risks = fitting.flatMap(({ option }) => unknownRisks(option.way, facts));
  const names = new Set([...fitting.flatMap(({ waitsFor }) => waitsFor), ...risks.map(({ fact }) => fact)]);
  const asks = [...names].map((fact) => ({
    fact,
    says: factTexts[fact]?.ask ?? fact,
    ways: fitting.filter(({ waitsFor }) => waitsFor.includes(fact)).map(({ option }) => option.way),
    risks: [...new Set(risks.filter((one) => one.fact === fact).map(({ risk }) => risk))],
  }));
  return asks.sort((a, b) => b.ways.length - a.ways.length);
}
