import { type AnaestheticTold, anaestheticIfTold, anaestheticSubject } from "../../../../../ledger/anaesthetic-told.ts";
import type { VisitAsked, WhatIfAnswer, WhatIfAsk } from "../../../../../ledger/what-if.ts";
import { type AmountAsked, unusualInjection, unusualSolution } from "../../../../../record/unusual-amounts.ts";
import { agentWords, vasoconstrictorWords } from "../../../../../record/words/visit-words.ts";
import { useWhatIf } from "../../../../record/what-if.ts";
import { useCaseNow } from "../../case-now.ts";
import type { Injection, Solution } from "./read-injection.ts";
import type { Visit } from "./use-visit.ts";

/** A question of the anaesthetic with another visit laid over this one; nothing is recorded by it. */
function askWith({ visitId, revision }: VisitAsked, body: Visit): WhatIfAsk {
  const put = { op: "put" as const, id: visitId, kind: "visit", baseRevision: revision, body };
  return { topic: "anaesthetic", subject: anaestheticSubject(visitId), operations: [put] };
}

/** What would be left of each solution, one question each. */
export const asksOfSolutions = (stands: VisitAsked, solutions: readonly Solution[]): readonly WhatIfAsk[] =>
  solutions.map((solution) =>
    askWith(stands, { ...stands.visit, nextAnaesthetic: { ...solution, ...passing(unusualSolution(solution)) } }),
  );

/**
 * What the wanted injection would come to: once as the next one, once as if it were given. Unusual amounts are let pass there, so
 * that the sum can be shown beside the question whether they are so.
 */
export function asksOfInjection(stands: VisitAsked, injection: Injection): readonly WhatIfAsk[] {
  const { cartridges, technique: _technique, atMin: _atMin, confirmed: _confirmed, ...solution } = injection;
  const { visit } = stands;
  const given = { ...solution, cartridges, ...passing(unusualInjection(injection)) };
  return [
    askWith(stands, { ...visit, nextAnaesthetic: given }),
    askWith(stands, { ...visit, anaesthetic: [...visit.anaesthetic, given] }),
  ];
}

function passing(amounts: readonly AmountAsked[]): Pick<Injection, "confirmed"> {
  const unusual = [...new Set(amounts.flatMap(({ unusual: name }) => (name === undefined ? [] : [name])))];
  return unusual.length === 0 ? {} : { confirmed: { by: "asked", asked: amounts.map(({ says }) => says), unusual } };
}

/** What the sum says of an injection before it is recorded. */
export interface DoseAhead {
  /** The answer is on its way: nothing is recorded without it. */
  readonly waits: boolean;
  /** Why there is no answer; the limit can't be looked at then. */
  readonly why?: string | undefined;
  /** What is left before it. */
  readonly planned?: NonNullable<AnaestheticTold["planned"]> | undefined;
  /** As it would stand with it given. */
  readonly after?: AnaestheticTold;
  /** What has to be asked before it is recorded; empty below every limit. */
  readonly limits: readonly string[];
}

/** See {@link DoseAhead}; nothing to say while there is no injection to ask of. */
export function useDoseAhead(stands: VisitAsked, injection: Injection | undefined): DoseAhead | undefined {
  const { caseId } = useCaseNow();
  const asks = injection === undefined ? [] : asksOfInjection(stands, injection);
  const { answers, isOld, error } = useWhatIf(caseId, asks);
  if (injection === undefined) return undefined;
  if (error) return { waits: false, why: error.message, limits: [] };
  if (isOld || answers.length < asks.length) return { waits: true, limits: [] };
  return doseAhead(answers);
}

/** The two answers of {@link asksOfInjection} read together. */
export function doseAhead(answers: readonly WhatIfAnswer[]): DoseAhead {
  const [next, given] = answers.map(anaestheticIfTold);
  if (given?.output === undefined) return { waits: false, why: given?.why ?? "the answer can't be read", limits: [] };
  const planned = next?.output?.planned;
  const stops = given.output.stops.map(({ says }) => `With these cartridges: ${says}`);
  return { waits: false, planned, after: given.output, limits: planned?.wanted?.asks ?? stops };
}

/** What would be left of each solution, in their order; undefined where it is not known. */
export function useSolutionsLeft(stands: VisitAsked, solutions: readonly Solution[]) {
  const { caseId } = useCaseNow();
  const { answers } = useWhatIf(caseId, asksOfSolutions(stands, solutions));
  return solutions.map((_, place) => anaestheticIfTold(answers[place])?.output?.planned);
}

type Planned = NonNullable<AnaestheticTold["planned"]>;

/** `3 left, by the limit of epinephrine`. */
export function leftInWords({ cartridgesLeft, boundBy }: Planned, solution: Solution): string {
  return `${cartridgesLeft} left, by ${boundWords(boundBy, solution)}`;
}

/** Which limit binds, in words. */
export function boundWords(by: Planned["boundBy"], { agent, vasoconstrictor }: Solution): string {
  if (by === "sum") return "the limit of all agents together";
  if (by === "agent" || vasoconstrictor === undefined) return `the limit of ${agentWords[agent]}`;
  return `the limit of ${vasoconstrictorWords[vasoconstrictor.name]}`;
}
