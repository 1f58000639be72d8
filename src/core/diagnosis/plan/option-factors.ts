import { percent } from "../../percent.ts";
import type { CaseFacts } from "./case-facts.ts";
import { holdsOf } from "./condition.ts";
import { fromSource } from "./from-source.ts";
import type { PlanOption } from "./plan-output.ts";
import { type FactorRow, planSources } from "./plan-sources.ts";
import type { PlanWay } from "./plan-ways.ts";

type Factor = PlanOption["factors"][number];

/** How far a figure from the odds ratio may lie from the printed share with the factor: 2 points, for two roundings. */
const most = 0.02;

/**
 * The published factors of a way, those of this case first, with a personal figure where the odds ratio can carry one.
 * @source docs/methods/plan.md C8
 */
export function factorsOf(way: PlanWay, facts: CaseFacts): Factor[] {
  const order = ["here", "notRecorded", "notHere"];
  return planSources
    .flatMap(({ id, factors }) =>
      factors.filter(({ ways }) => ways.includes(way)).map((row) => shownOf(row, id, facts)),
    )
    .sort((a, b) => order.indexOf(a.standing) - order.indexOf(b.standing));
}

function shownOf(row: FactorRow, source: string, facts: CaseFacts): Factor {
  const { ways: _, when, interval, mark, note, withoutFactor: __, withFactor: ___, says, ...rest } = row;
  const standing = { yes: "here", no: "notHere", unknown: "notRecorded" } as const;
  const stands = standing[holdsOf(when, facts).holds];
  return {
    ...rest,
    says: note === undefined ? says : `${says}; ${note}`,
    standing: stands,
    ...(row.ratioIs === "odds ratio" && row.ratio !== undefined ? { oddsRatio: row.ratio } : {}),
    ...(interval === undefined ? {} : { interval: { low: interval[0], high: interval[1], level: 0.95 } }),
    ...personalFigure(row, stands),
    ...fromSource(source, mark),
  };
}

/** The share that keeps well when the odds of disease rise by a ratio. */
const shareUnder = (share: number, ratio: number): number => {
  const odds = share / (1 - share) / ratio;
  return odds / (1 + odds);
};

function personalFigure(
  { ratio, ratioIs, interval, withoutFactor, withFactor }: FactorRow,
  standing: Factor["standing"],
): Pick<Factor, "personalFigure" | "noPersonalFigure"> {
  if (standing !== "here")
    return { noPersonalFigure: standing === "notHere" ? "The factor is not here." : "It is not recorded." };
  if (ratio === undefined) return { noPersonalFigure: "No ratio is printed." };
  if (ratioIs !== "odds ratio") return { noPersonalFigure: `A ${ratioIs} gives no share by itself.` };
  if (withoutFactor === undefined)
    return { noPersonalFigure: "The share of the same series without the factor is not printed." };
  const proportion = shareUnder(withoutFactor, ratio);
  if (Math.abs(proportion - (withFactor ?? proportion)) > most)
    return {
      noPersonalFigure: `The model adjusts for more than its shares show: on its own ${percent(withoutFactor)} the odds ratio would give ${percent(proportion)}, where ${percent(withFactor ?? 0)} were seen.`,
    };
  return {
    personalFigure: {
      proportion,
      ...(interval === undefined
        ? {}
        : {
            interval: {
              ...{ low: shareUnder(withoutFactor, interval[1]), high: shareUnder(withoutFactor, interval[0]) },
              level: 0.95,
            },
          }),
      says: `Of the same series' own ${percent(withoutFactor)} without the factor the odds ratio leaves ${percent(proportion)}. This factor alone: two are never multiplied.`,
    },
  };
}
