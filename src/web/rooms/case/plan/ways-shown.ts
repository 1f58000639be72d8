import type { PlanTold, WayTold } from "../../../../ledger/plan-told.ts";
import type { BodyOf } from "../../../../record/parts.ts";

type Plan = BodyOf<"plan">;

/** A way on the page, with the digit that chooses it. */
export interface WayShown extends WayTold {
  readonly key?: string;
}

/** The ways in the order in which they are read: open ones, those that wait for an answer, those that do not fit. */
export interface WaysShown {
  readonly open: readonly WayShown[];
  readonly waiting: readonly WayShown[];
  readonly unfit: readonly WayShown[];
}

const digits = 9;

/** See {@link WaysShown}. */
export function waysShown({ options }: PlanTold): WaysShown {
  const standing = (one: WayTold["standing"]) => options.filter((option) => option.standing === one);
  const [open, waiting] = [standing("open"), standing("needs an answer first")];
  const keyed = [...open, ...waiting].map((way, at): WayShown => (at < digits ? { ...way, key: String(at + 1) } : way));
  return { open: keyed.slice(0, open.length), waiting: keyed.slice(open.length), unfit: standing("does not fit") };
}

/** The entries of the ledger that a choice is made on. */
export interface EntriesOfChoice {
  readonly planEntry?: string | undefined;
  readonly difficultyEntry?: string | undefined;
}

/** A plan with another way chosen, on the entries that stand now; the way gets a row for what speaks for and against it. */
export function withChoice(plan: Plan, way: Plan["chosen"], { planEntry, difficultyEntry }: EntriesOfChoice): Plan {
  const { planEntry: _plan, difficultyEntry: _difficulty, ...others } = plan;
  return {
    ...withWeighed(others, way),
    chosen: way,
    ...(planEntry === undefined ? {} : { planEntry }),
    ...(difficultyEntry === undefined ? {} : { difficultyEntry }),
  };
}

/** A plan with a row for a way. */
export function withWeighed(plan: Plan, way: Plan["chosen"]): Plan {
  if (plan.options.some((option) => option.way === way)) return plan;
  return { ...plan, options: [...plan.options, { way, forIt: "", againstIt: "" }] };
}

/** The risks named to the patient, with one more or one less. */
export const withRisk = (named: readonly string[], risk: string): readonly string[] =>
  named.includes(risk) ? named.filter((one) => one !== risk) : [...named, risk];

/** Risks that the facts call for and nobody has named yet. */
export const unnamed = ({ risks }: Pick<WayTold, "risks">, named: readonly string[]): WayTold["risks"] =>
  risks.filter(({ says }) => !named.includes(says));

/** The series of groups near to the case, and those of wider or other groups; of a way that has none near, all. */
export function outcomesByNearness(outcomes: WayTold["outcomes"]): {
  readonly alike: WayTold["outcomes"];
  readonly other: WayTold["outcomes"];
} {
  const isAlike = ({ nearest }: WayTold["outcomes"][number]) => nearest === "nearest" || nearest === "near";
  if (!outcomes.some(isAlike)) return { alike: outcomes, other: [] };
  return { alike: outcomes.filter(isAlike), other: outcomes.filter((one) => !isAlike(one)) };
}
