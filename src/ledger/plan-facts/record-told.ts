import { type PlanInput, planFlags } from "../../core/diagnosis/plan/plan-input.ts";
import { isInFull } from "../../record/own-figures.ts";
import { type Part, type PartOf, partsOf, thePart } from "../../record/parts.ts";
import { type FactTold, factTold } from "../fact-told.ts";
import { latestOf } from "../latest-of.ts";

/** What the rest of the record says: the clinician's terms, history, age, roots, mishaps and the plan itself. */
export const recordTold = (parts: readonly Part[]): FactTold<keyof PlanInput>[] => [
  ...termsTold(latestOf(partsOf(parts, "diagnosis"))),
  ...historyTold(latestOf(partsOf(parts, "medicalHistory"))),
  ...ageTold(thePart(parts, "case")),
  ...rootsTold(thePart(parts, "anatomy")),
  ...mishapsTold(partsOf(parts, "mishap")),
  ...planTold(latestOf(partsOf(parts, "plan"))),
];

const termsTold = (diagnosis: PartOf<"diagnosis"> | undefined): FactTold<keyof PlanInput>[] =>
  diagnosis === undefined
    ? []
    : [
        ...factTold("pulpal", diagnosis.body.pulpal, `${diagnosis.id}/pulpal`),
        ...factTold("apical", diagnosis.body.apical, `${diagnosis.id}/apical`),
      ];

function historyTold(history: PartOf<"medicalHistory"> | undefined): FactTold<keyof PlanInput>[] {
  if (history === undefined) return [];
  const flags: ReadonlySet<string> = new Set(history.body.flags.map(({ flag }) => flag));
  return factTold(
    "medical",
    planFlags.filter((flag) => flags.has(flag)),
    `${history.id}/flags`,
  );
}

/** The year's difference, as only the year of birth is kept. */
function ageTold(about: PartOf<"case"> | undefined): FactTold<keyof PlanInput>[] {
  if (about === undefined) return [];
  const { presentedOn, birthYear } = about.body;
  const age = Number(presentedOn.slice(0, 4)) - birthYear;
  return age < 0 || age > 120 ? [] : factTold("ageYears", age, `${about.id}/birthYear`, `${about.id}/presentedOn`);
}

const rootsTold = (anatomy: PartOf<"anatomy"> | undefined): FactTold<keyof PlanInput>[] =>
  anatomy === undefined ? [] : factTold("roots", anatomy.body.roots.length, `${anatomy.id}/roots`);

const undone = new Set(["removed", "repaired"]);

/** A mishap is told as long as it is not undone; that none is recorded is no sign that there is none. */
function mishapsTold(mishaps: readonly PartOf<"mishap">[]): FactTold<keyof PlanInput>[] {
  const open = mishaps.filter(({ body }) => !undone.has(body.handled));
  const places = (what: readonly string[], among: readonly PartOf<"mishap">[] = open) =>
    among.filter(({ body }) => what.includes(body.what)).map(({ id }) => `${id}/what`);
  const some = (field: keyof PlanInput, value: string, found: readonly string[]): FactTold<keyof PlanInput>[] =>
    found.length === 0 ? [] : factTold(field, value, ...found);
  return [
    ...some("fragment", "present", places(["separatedInstrument"])),
    ...some("perforation", "present", places(["perforation"], mishaps)),
    ...some("morphology", "altered", places(["ledge", "transportation", "perforation"], mishaps)),
  ];
}

function planTold(plan: PartOf<"plan"> | undefined): FactTold<keyof PlanInput>[] {
  if (plan === undefined) return [];
  const { altered, crowned, own = [] } = plan.body;
  const inFull = own.filter(isInFull);
  return [
    ...factTold("morphology", altered === "notAssessed" ? undefined : altered, `${plan.id}/altered`),
    ...factTold("crowned", crowned === "notAsked" ? undefined : crowned, `${plan.id}/crowned`),
    ...factTold("own", inFull.length === 0 ? undefined : inFull, `${plan.id}/own`),
  ];
}
