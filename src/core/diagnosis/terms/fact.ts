/** Whether a thing holds; a test that was not done leaves it unknown and never makes it a no. */
export type Truth = "yes" | "no" | "unknown";

/** One thing that rows of the table look at, as this case has it. */
export interface Fact {
  readonly is: Truth;
  /** What was found, in words; empty where nobody looked. */
  readonly says: string;
  /** Where it stands in the input, as `history.painToCold` or `tooth 26: cold`. */
  readonly at: readonly string[];
}

/** A fact, with the places that it was read at. */
export const fact = (is: Truth, says: string, ...at: readonly string[]): Fact => ({
  is,
  says: is === "unknown" ? "" : says,
  at,
});

/** Yes where one is yes, no where all are no. */
export function anyOf(truths: readonly Truth[]): Truth {
  if (truths.includes("yes")) return "yes";
  return truths.length > 0 && truths.every((one) => one === "no") ? "no" : "unknown";
}

/** Yes where all are yes, no where one is no. */
export function allOf(truths: readonly Truth[]): Truth {
  if (truths.includes("no")) return "no";
  return truths.length > 0 && truths.every((one) => one === "yes") ? "yes" : "unknown";
}

/** The answer to a question, with what was not asked or not done left unknown. */
export function answerIs(answer: string, yes: readonly string[], unknown: readonly string[] = []): Truth {
  if (["notDone", "notAsked", "notSeen", "notTried", ...unknown].includes(answer)) return "unknown";
  return yes.includes(answer) ? "yes" : "no";
}

/** A fact of an answer: what it is in words where it is one of those that mean yes, else that it is not there. */
export function answerFact(answer: string, yes: readonly string[], words: string, at: string): Fact {
  const is = answerIs(answer, yes);
  return fact(is, is === "yes" ? words : `no ${words.replace(/^an? /, "")}`, at);
}

/** A fact of an answer yes, no or not asked. */
export const yesNoFact = (answer: string, words: string, at: string): Fact => answerFact(answer, ["yes"], words, at);

/** One fact of several: their words one after the other, their places together. */
export function joined(is: Truth, facts: readonly Fact[]): Fact {
  const telling = facts.filter((one) => one.says !== "" && (is !== "yes" || one.is === "yes"));
  return fact(is, telling.map(({ says }) => says).join("; "), ...telling.flatMap(({ at }) => at));
}
