import dijkstra from "../../../data/dijkstra-2006/source.json" with { type: "json" };
import estrela from "../../../data/estrela-2008/source.json" with { type: "json" };
import farzaneh from "../../../data/farzaneh-2004/source.json" with { type: "json" };
import gorniGagliani from "../../../data/gorni-gagliani-2004/source.json" with { type: "json" };
import pess from "../../../data/pess-2020/source.json" with { type: "json" };
import pruett from "../../../data/pruett-1997/source.json" with { type: "json" };
import schafer from "../../../data/schafer-2002/source.json" with { type: "json" };
import tzanetakis from "../../../data/tzanetakis-2008/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { Refusal } from "../refusal.ts";
import { knownTooth } from "../tooth/known-tooth.ts";
import { defineTopic } from "../topic.ts";
import { askedFacts } from "./difficulty/asked-facts.ts";
import { difficultyFaults } from "./difficulty/difficulty-faults.ts";
import { type DifficultyInput, difficultyInput } from "./difficulty/difficulty-input.ts";
import { type DifficultyFact, type DifficultyOutput, difficultyOutput } from "./difficulty/difficulty-output.ts";
import { difficultyTable } from "./difficulty/difficulty-table.ts";
import { heldToThreshold } from "./difficulty/held-to-threshold.ts";
import { recordedFacts } from "./difficulty/recorded-facts.ts";

const sources = sourcesOf([dijkstra, farzaneh, gorniGagliani, pess, schafer, tzanetakis, estrela, pruett]);

/**
 * The recorded facts that make a tooth harder, each beside its threshold, by what they make harder.
 * @throws Refusal `tooth.unknown`; `input.impossible` with every contradiction
 * @source data/difficulty/facts.json with the source of each threshold; docs/methods/difficulty
 */
export const difficultyTopic = defineTopic({
  name: "difficulty",
  version: 1,
  summary: "Recorded facts that make the tooth harder to reach, shape, seal and keep, each beside its threshold.",
  input: difficultyInput,
  output: difficultyOutput,
  sources,
  compute: difficulty,
});

function difficulty(input: DifficultyInput): DifficultyOutput {
  refuseFaults(input);
  const recorded = recordedFacts(input);
  const held = difficultyTable.flatMap((row) =>
    recorded.filter(({ id }) => id === row.id).map((found) => heldToThreshold(row, found)),
  );
  const facts = held.filter(({ harder }) => harder).map(({ fact }) => fact);
  const within = held.filter(({ harder }) => !harder).map(({ fact }) => fact);
  const asked = askedFacts(input, recorded);
  return {
    ...{ facts, within, asked },
    basis: basisOf([...facts, ...within]),
    cautions: cautionsOf(facts, within, asked.length),
    notComputed: [],
  };
}

function refuseFaults(input: DifficultyInput): void {
  if (input.tooth !== undefined) knownTooth(input.tooth, "weigh the difficulty");
  const faults = difficultyFaults(input);
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot weigh the difficulty: the facts contradict themselves", {}, faults);
}

function cautionsOf(facts: readonly DifficultyFact[], within: readonly DifficultyFact[], asked: number): string[] {
  const unsure = [...facts, ...within].filter(({ sure }) => sure === false);
  const oneFilm = [...facts, ...within].filter(({ atLeast }) => atLeast === true);
  const canals = oneFilm.map(({ canal }) => canal).join(", ");
  return [
    ...(asked === 0
      ? []
      : [`${asked} ${asked === 1 ? "fact was" : "facts were"} not recorded: none of them counts as easy`]),
    ...(oneFilm.length === 0
      ? []
      : [`Known from one film alone, the true bend is at least as large and may be larger: ${canals}`]),
    ...unsure.map(({ says, threshold }) => `${says}: the interval reaches across ${threshold.value ?? ""}`),
  ];
}

const basisOf = (used: readonly DifficultyFact[]) => ({
  formula: "Each recorded fact beside its own threshold; no sum over facts",
  assumptions: [
    "What is not recorded counts neither as harder nor as easier.",
    "A threshold marked common practice has no published source.",
  ],
  sources: [
    ...new Set(
      used
        .flatMap(({ threshold, otherThresholds = [] }) => [
          threshold.source,
          ...otherThresholds.map(({ source }) => source),
        ])
        .filter((id) => id !== "common practice"),
    ),
  ],
});
