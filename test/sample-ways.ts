import { type PlanOption, type PlanOutput, planOutput } from "../src/core/diagnosis/plan/plan-output.ts";
import { planWays } from "../src/core/diagnosis/plan/plan-ways.ts";
import { ledgerEntryId } from "../src/core/ids.ts";
import type { CaseSource } from "../src/pages/case-source.ts";
import type { LedgerEntry } from "../src/record/ledger-entry.ts";

const from = { source: "known-2001", mark: "memory" } as const;

/** An outcome of 80 in 100, its interval that of Wilson as R's prop.test(80, 100, correct = FALSE) gives it. */
export const sampleOutcome: PlanOption["outcomes"][number] = {
  ...{ id: "healed", what: "healed", kind: "healing", events: 80, n: 100, proportion: 0.8 },
  interval: { low: 0.7112, high: 0.8666, level: 0.95 },
  ...{ intervalIs: "wilson", definition: "loose", definitionSays: "no lesion, or a smaller one", imaging: "film" },
  ...{ unit: "tooth", design: "cohort", followUp: "4 years", group: "teeth with a lesion", nearest: "nearest" },
  ...{ nearestSays: "a lesion, as here", ...from },
};

/** A way that fits in nothing, unless told otherwise. */
function option(way: PlanOption["way"], more: Partial<PlanOption> = {}): PlanOption {
  return {
    ...{ way, standing: "does not fit", steps: [], mustBeTrueFirst: [], outcomes: [], conflicts: [] },
    why: [{ row: `${way}-1`, speaks: "against", says: `Nothing here asks for it`, ...from }],
    ...{ factors: [], risks: [], visits: { least: 1, most: 2, usual: "1 or 2", why: "as usual", ...from } },
    plain: {
      ...{ name: `Way ${way}`, whatItIs: ["We do it."], whatItAsks: [], whatItLeaves: [] },
      ...{ visits: "It takes 1 or 2 visits.", chances: [] },
    },
    ...more,
  };
}

/** What the ledger might say of the sample's ways: retreatment and extraction are open, surgery waits for an answer. */
export function sampleWays(): PlanOutput {
  const told: Partial<Record<PlanOption["way"], Partial<PlanOption>>> = {
    retreat: {
      standing: "open",
      why: [{ row: "retreat-1", speaks: "for", says: "The canals were filled and there is a lesion", ...from }],
      steps: ["Take the old filling out", "Shape, clean and fill"],
      mustBeTrueFirst: [
        {
          ...{ id: "ferrule", says: "Sound tooth all round above the gum", standing: "met", value: 2.5 },
          ...{ threshold: 2, unit: "mm", by: 0.5, decides: true, ...from },
        },
        { id: "crownRoot", says: "Root longer than crown", standing: "notRecorded", decides: false, ...from },
      ],
      outcomes: [
        sampleOutcome,
        {
          ...sampleOutcome,
          ...{ id: "kept", what: "still in place", kind: "retention", events: 95, proportion: 0.95 },
          ...{ interval: { low: 0.8882, high: 0.9785, level: 0.95 }, definition: "survival" },
        },
      ],
      factors: [
        {
          ...{ id: "lesion", says: "A lesion before", standing: "here", ratio: 0.5, ratioIs: "odds ratio" },
          ...{ oddsRatio: 0.5, appliesTo: "healing", direction: "lowers", noPersonalFigure: "no group without it" },
          ...from,
        },
      ],
      risks: [
        {
          ...{ id: "separation", says: "An instrument may break in a canal", because: "a bend of 35°" },
          ...{ plain: "A small tool may break in the tooth.", outOf: { events: 3, n: 100, interval: sampleInterval } },
          ...from,
        },
        {
          ...{ id: "fracture", says: "A cusp may break before it is covered", because: "a molar without a crown" },
          ...{ plain: "A part of the tooth may break off before it has a crown.", ...from },
        },
      ],
      plain: {
        ...{ name: "Clean and fill the roots again", whatItIs: ["We take out the old filling.", "We fill the roots."] },
        ...{ whatItAsks: ["You need a crown."], whatItLeaves: ["If it does not heal, we can talk again."] },
        visits: "It takes 2 visits.",
        chances: [{ outcome: "healed", says: "About 8 out of 10 teeth like this had healed." }],
      },
    },
    surgery: { standing: "needs an answer first" },
    extraction: {
      standing: "open",
      risks: [
        {
          ...{ id: "fracture", says: "A cusp may break before it is covered", because: "a molar without a crown" },
          ...{ plain: "A part of the tooth may break off before it has a crown.", ...from },
        },
        {
          ...{ id: "gap", says: "Neighbours may tilt", because: "a gap stays" },
          ...{ plain: "The teeth next to the gap may tip.", ...from },
        },
      ],
      plain: {
        ...{ name: "Take the tooth out", whatItIs: ["We take the whole tooth out."], whatItLeaves: ["A gap stays."] },
        ...{ whatItAsks: ["You bite on a pad."], visits: "It takes 1 visit.", chances: [] },
      },
    },
  };
  return planOutput.parse({
    options: planWays.map((way) => option(way, told[way])),
    ask: [{ fact: "sinus", says: "How near the sinus is", ways: ["surgery"], risks: [] }],
    plain: {
      whatIsWrong: ["The root of your tooth has an infection."],
      ifNothingIsDone: ["It will not go away by itself.", "It may hurt or swell."],
    },
    basis: { formula: "made up", assumptions: [], sources: ["known-2001"] },
    ...{ cautions: [], notComputed: [] },
  });
}

const sampleInterval = { low: 0.01, high: 0.085, level: 0.95 };

/** A case's source whose ledger says this of the ways of `plan-1`, whatever else it says. */
export function withWays(source: CaseSource, ways: PlanOutput = sampleWays()): CaseSource {
  const entry: LedgerEntry = {
    ...{ id: ledgerEntryId("a1".repeat(32)), caseId: source.ledger[0]?.caseId ?? ("sample" as LedgerEntry["caseId"]) },
    ...{ subject: "plan of plan-1", topic: "plan", topicVersion: 1, input: {}, inputPaths: [] },
    ...{ output: ways, at: "2024-03-04T10:00:00.000Z" },
  };
  const reference = "Known AB. On canals. J 2001;1:1-2";
  const references = new Map([...source.references, ["known-2001", { reference, verification: "memory" as const }]]);
  return { ...source, references, ledger: [...source.ledger.filter(({ topic }) => topic !== "plan"), entry] };
}
