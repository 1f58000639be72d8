import children from "../../../data/aapd-2023-recalled/source.json" with { type: "json" };
import devine from "../../../data/devine-1974/source.json" with { type: "json" };
import epinephrine from "../../../data/epinephrine-limits/source.json" with { type: "json" };
import label from "../../../data/lidocaine-label-2018/source.json" with { type: "json" };
import plain from "../../../data/lidocaine-plain-recalled/source.json" with { type: "json" };
import recalled from "../../../data/malamed-2013-recalled/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { anaestheticCautions, type Told } from "./anaesthetic/anaesthetic-cautions.ts";
import { refuseFaults } from "./anaesthetic/anaesthetic-faults.ts";
import { type AnaestheticInput, anaestheticInput } from "./anaesthetic/anaesthetic-input.ts";
import { type AnaestheticOutput, anaestheticOutput } from "./anaesthetic/anaesthetic-output.ts";
import { doseQuestions } from "./anaesthetic/dose-questions.ts";
import { agentRow, vasoconstrictorRow } from "./anaesthetic/dose-rows.ts";
import { doseState } from "./anaesthetic/dose-state.ts";
import { doseStops } from "./anaesthetic/dose-stops.ts";
import { dosingMass } from "./anaesthetic/dosing-mass.ts";
import { numberOf } from "./anaesthetic/exact-ratio.ts";
import { chosenSet, limitFiles } from "./anaesthetic/limit-sets.ts";
import { plannedRow } from "./anaesthetic/planned-row.ts";
import { isGrown } from "./anaesthetic/without-limit.ts";

const sources = sourcesOf([...limitFiles, recalled, epinephrine, label, plain, children, devine]);

/**
 * How much local anaesthetic was given against whose limits, and how many whole cartridges are left.
 * @throws Refusal `input.impossible` for a mass that no adult has, percent and ratio mixed up, what is unusual and not
 * confirmed, an agent without a limit, or none by mass, in the chosen set where that is needed.
 * @source the folders of data/ that it names; docs/methods/anaesthetic.md
 */
export const anaestheticTopic = defineTopic({
  name: "anaesthetic",
  version: 1,
  summary: "How much anaesthetic was given against whose limits, agents together, and how many cartridges are left.",
  input: anaestheticInput,
  output: anaestheticOutput,
  sources,
  compute: anaesthetic,
});

function anaesthetic(input: AnaestheticInput): AnaestheticOutput {
  const set = chosenSet(input.limitSet);
  const mass = dosingMass(input);
  refuseFaults(input, set, mass.kg);
  const measure = { set, massKg: mass.kg, grown: isGrown(input, mass.kg), asked: input };
  const state = doseState(input.given, measure);
  const agents = state.agents.map((row) => agentRow(row, measure));
  const vasoconstrictors = state.vasoconstrictors.map(vasoconstrictorRow);
  const stops = doseStops(input, state);
  return {
    limitSet: { name: set.name, says: set.says },
    dosingMass: { kg: mass.kg, says: mass.says },
    agents,
    fractionSum: numberOf(state.sum),
    overLimit: state.sumIsOver || state.over.length > 0,
    vasoconstrictors,
    ...(input.planned === undefined ? {} : { planned: plannedRow(input, input.planned, measure) }),
    stops,
    questions: doseQuestions(input),
    basis: basisOf({ input, set, mass, stops, vasoconstrictors }),
    cautions: anaestheticCautions({ input, set, mass, stops, vasoconstrictors }),
    notComputed: unlimited(input, vasoconstrictors),
  };
}

/** Vasoconstrictors, given or planned, that no limit is known of. */
function unlimited({ given, planned, vasoconstrictorLimits = [] }: AnaestheticInput, rows: Told["vasoconstrictors"]) {
  const names = new Set(
    [...given, ...(planned === undefined ? [] : [planned])].map((one) => one.vasoconstrictor?.name),
  );
  if (!names.has("felypressin") || vasoconstrictorLimits.some(({ name }) => name === "felypressin")) return [];
  const index = rows.findIndex(({ name }) => name === "felypressin");
  const name = index < 0 ? "planned.bounds.vasoconstrictor" : `vasoconstrictors[${index}].limit`;
  return [{ name, why: "no source that was read limits felypressin in a visit; give a limit with its source" }];
}

const basisOf = ({ input, set, mass, vasoconstrictors }: Told) => ({
  formula:
    "given over the lower of mg/kg and the maximum, added over agents; whole micrograms; each vasoconstrictor alone",
  assumptions: [
    `Limits: ${set.name}, ${set.says}.`,
    `Mass: ${mass.kg} kg, ${mass.says}.`,
    "No elimination is credited within a visit, whenever a dose was given.",
    "Agents add up as fractions of their own limits (from memory).",
    "A cartridge holds what its label says, and all of it is given.",
    ...(input.cardiacRisk === undefined ? ["Whether there is cardiac risk was not said: taken as none."] : []),
    ...(input.ageIsLeast === true && input.ageYears !== undefined
      ? [`Age: ${input.ageYears} years at least, as the year of birth allows; it may be one more.`]
      : []),
    ...confirmedText(input),
  ],
  sources: [...new Set([...setSources(set, input), recalled.id, ...vasoconstrictors.map((row) => row.source ?? "")])]
    .filter((id) => sources.some((source) => source.id === id))
    .concat(mass.byFormula ? [devine.id] : []),
});

/** What was confirmed, of all of it or of one dose. */
function confirmedText({ confirmed = [], given, planned }: AnaestheticInput): string[] {
  const all = [...confirmed, ...given.flatMap((dose) => dose.confirmed ?? []), ...(planned?.confirmed ?? [])];
  return all.length === 0 ? [] : [`Confirmed although unusual: ${[...new Set(all)].join(", ")}.`];
}

/** Sources of an agent's limit, and of what cautions quote of lidocaine. */
const setSources = ({ limits }: Told["set"], { given, planned }: AnaestheticInput): string[] =>
  [...given, ...(planned === undefined ? [] : [planned])].flatMap(({ agent }) => [
    ...(limits.get(agent)?.source.split(", ") ?? []),
    ...(agent === "lidocaine" ? [label.id, plain.id, children.id] : []),
  ]);
