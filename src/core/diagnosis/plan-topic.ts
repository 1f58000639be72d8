import { sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { caseFacts } from "./plan/case-facts.ts";
import { checkedTooth } from "./plan/check-plan.ts";
import { factsToAsk } from "./plan/plan-ask.ts";
import { planCautions } from "./plan/plan-cautions.ts";
import { type PlanInput, planInput } from "./plan/plan-input.ts";
import { weighedWay } from "./plan/plan-option.ts";
import { type PlanOption, type PlanOutput, planOutput } from "./plan/plan-output.ts";
import { planPlain } from "./plan/plan-plain.ts";
import { planSources } from "./plan/plan-sources.ts";
import { planWays } from "./plan/plan-ways.ts";

/**
 * What can be done with a tooth: each way with what must be true first, published outcomes, factors, risks and visits.
 * @throws Refusal `tooth.unknown`; `input.notDeterminable` for a primary tooth; `input.impossible` for facts that clash
 * @source the folders of data/ that the rows name (seen or memory, by row); docs/methods/plan.md
 */
export const planTopic = defineTopic({
  name: "plan",
  version: 1,
  summary: "The ways a tooth can go: what must be true first, published outcomes, factors, risks, visits, plain words.",
  input: planInput,
  output: planOutput,
  sources: sourcesOf(planSources),
  compute: plan,
});

function plan(input: PlanInput): PlanOutput {
  const facts = caseFacts(input, checkedTooth(input));
  const ways = planWays.map((way) => weighedWay(way, facts, input.own));
  const options = ways.map(({ option }) => option);
  return {
    options,
    ask: factsToAsk(ways, facts),
    plain: planPlain(input, facts),
    basis: {
      formula: "Rows of a table held against the facts; published counts with Wilson's interval, or the printed one",
      assumptions: [
        "Each published series stands alone: none is pooled with another, and none is a chance of this patient.",
        "A personal figure is given for one factor at a time, on the same series' own group without it.",
        ...(lengthAlone(input) ? ["The earlier filling is judged by its end alone: 0 to 2 mm short is adequate."] : []),
      ],
      sources: sourcesIn(options),
    },
    cautions: planCautions(input, options),
    notComputed: notComputed(options),
  };
}

const lengthAlone = ({ earlierFillingIs = "unknown", earlierFillingEndMm }: PlanInput): boolean =>
  earlierFillingIs === "unknown" && earlierFillingEndMm !== undefined;

/** In the order of the sources; the rows' common practice and the person's own are no published source. */
function sourcesIn(options: readonly PlanOption[]): string[] {
  const named = options.flatMap((option) => [
    ...[option.why, option.mustBeTrueFirst, option.outcomes, option.factors, option.risks].flatMap((rows) =>
      rows.map(({ source }) => source),
    ),
    ...option.conflicts.flatMap(({ sources }) => sources),
    option.visits.source,
  ]);
  return planSources.map(({ id }) => id).filter((id) => named.includes(id));
}

function notComputed(options: readonly PlanOption[]): PlanOutput["notComputed"] {
  const bare = options.filter(({ standing, outcomes }) => standing !== "does not fit" && outcomes.length === 0);
  const extraction = options.find(({ way }) => way === "extraction");
  return [
    ...bare.map(({ way }) => ({
      name: `${way}.outcomes`,
      why: "no published figure is kept: give your own with its range",
    })),
    ...(extraction?.standing === "does not fit"
      ? []
      : [
          {
            name: "extraction.withoutReplacement",
            why: "no published figure of a gap left open is kept: give your own",
          },
        ]),
    {
      name: "personalChance",
      why: "no whole published model is kept; factors stand one at a time on their own series",
    },
  ];
}
