import type { BodyOf } from "./parts.ts";

type Removal = Pick<BodyOf<"removal">, "attempts" | "stopRules">;

/** How near a running total is to its rule: below four fifths of it, from there on, or at it. */
export type RuleStanding = "within" | "near" | "reached";

/** One stop rule with what was done so far. */
export interface RuleNow {
  readonly rule: "minutes" | "attempts";
  readonly done: number;
  readonly limit: number;
  readonly standing: RuleStanding;
}

/** Attempts at a separated instrument so far, and the stop rules that count. */
export interface AttemptsNow {
  readonly minutes: number;
  readonly attempts: number;
  readonly rules: readonly RuleNow[];
  /** That of the rule that is nearest to its limit; absent without a rule that counts. */
  readonly standing?: RuleStanding;
}

/** From this share of a rule on, a person is told that it comes near. */
const nearShare = 0.8;

/**
 * The running total of a removal against its stop rules.
 * Takes the removal and the minutes of the attempt that the clock runs for, 0 where it stands; that attempt counts as one.
 * Gives minutes and attempts in all, and each rule that was set with its standing.
 */
export function attemptsAgainstRules({ attempts, stopRules }: Removal, running?: number): AttemptsNow {
  const minutes = attempts.reduce((sum, one) => sum + one.minutes, running ?? 0);
  const count = attempts.length + (running === undefined ? 0 : 1);
  const rules = [
    ruleNow("minutes", minutes, stopRules?.minutes),
    ruleNow("attempts", attempts.length, stopRules?.attempts),
  ].flatMap((rule) => rule ?? []);
  const standing = (["reached", "near", "within"] as const).find((one) => rules.some((rule) => rule.standing === one));
  return { minutes, attempts: count, rules, ...(standing === undefined ? {} : { standing }) };
}

function ruleNow(rule: RuleNow["rule"], done: number, limit: number | undefined): RuleNow | undefined {
  if (limit === undefined) return undefined;
  const standing = done >= limit ? "reached" : done >= nearShare * limit ? "near" : "within";
  return { rule, done, limit, standing };
}

/** The longest attempt that the record takes, in minutes. */
const longestMin = 600;

/**
 * Minutes from one moment to another, to a tenth; 0 where a clock was set back between them, 600 at most.
 */
export function minutesBetween(since: string, until: string): number {
  const minutes = (Date.parse(until) - Date.parse(since)) / 60_000;
  return Math.min(longestMin, Math.max(0, Math.round(minutes * 10) / 10));
}

/** Whether any stop rule is written; rules that were only begun hold nobody. */
export const hasStopRule = ({ stopRules }: Pick<Removal, "stopRules">): boolean =>
  stopRules !== undefined &&
  Object.entries(stopRules).some(([rule, value]) => rule !== "setAt" && value !== undefined && value !== "");

/** Whether the stop rules stood before the first attempt began; undefined where no rule is written. */
export function rulesStoodFirst({ attempts, stopRules }: Removal, running?: { readonly since: string }) {
  if (stopRules === undefined || !hasStopRule({ stopRules })) return undefined;
  const begun = [...attempts.map(({ at }) => at), ...(running === undefined ? [] : [running.since])].sort();
  const [first] = begun;
  return first === undefined || Date.parse(stopRules.setAt) <= Date.parse(first);
}
