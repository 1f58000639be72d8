import { planFlags } from "../../core/diagnosis/plan/plan-input.ts";
import { isInFull } from "../../record/own-figures.ts";
import { type Part, type PartOf, partsOf, thePart } from "../../record/parts.ts";
import { latestOf } from "../latest-of.ts";
import { type Told, told } from "./told.ts";

/** What the rest of the record says: the clinician's terms, history, age, roots, mishaps and the plan itself. */
export const recordTold = (parts: readonly Part[]): Told[] => [
  ...termsTold(latestOf(partsOf(parts, "diagnosis"))),
  ...historyTold(latestOf(partsOf(parts, "medicalHistory"))),
  ...ageTold(thePart(parts, "case")),
  ...rootsTold(thePart(parts, "anatomy")),
  ...mishapsTold(partsOf(parts, "mishap")),
  ...planTold(latestOf(partsOf(parts, "plan"))),
];

const termsTold = (diagnosis: PartOf<"diagnosis"> | undefined): Told[] =>
  diagnosis === undefined
    ? []
    : [
        ...told("pulpal", diagnosis.body.pulpal, `${diagnosis.id}/pulpal`),
        ...told("apical", diagnosis.body.apical, `${diagnosis.id}/apical`),
      ];

function historyTold(history: PartOf<"medicalHistory"> | undefined): Told[] {
  if (history === undefined) return [];
  const flags: ReadonlySet<string> = new Set(history.body.flags.map(({ flag }) => flag));
  return told(
    "medical",
    planFlags.filter((flag) => flags.has(flag)),
    `${history.id}/flags`,
  );
}

/** The year's difference, as only the year of birth is kept. */
function ageTold(about: PartOf<"case"> | undefined): Told[] {
  if (about === undefined) return [];
  const { presentedOn, birthYear } = about.body;
  const age = Number(presentedOn.slice(0, 4)) - birthYear;
  return age < 0 || age > 120 ? [] : told("ageYears", age, `${about.id}/birthYear`, `${about.id}/presentedOn`);
}

const rootsTold = (anatomy: PartOf<"anatomy"> | undefined): Told[] =>
  anatomy === undefined ? [] : told("roots", anatomy.body.roots.length, `${anatomy.id}/roots`);

const undone = new Set(["removed", "repaired"]);

/** A mishap is told as long as it is not undone; that none is recorded is no sign that there is none. */
function mishapsTold(mishaps: readonly PartOf<"mishap">[]): Told[] {
  const open = mishaps.filter(({ body }) => !undone.has(body.handled));
  const places = (what: readonly string[], among: readonly PartOf<"mishap">[] = open) =>
    among.filter(({ body }) => what.includes(body.what)).map(({ id }) => `${id}/what`);
  const some = (fact: Told["fact"], value: string, found: readonly string[]): Told[] =>
    found.length === 0 ? [] : told(fact, value, ...found);
  return [
    ...some("fragment", "present", places(["separatedInstrument"])),
    ...some("perforation", "present", places(["perforation"], mishaps)),
    ...some("morphology", "altered", places(["ledge", "transportation", "perforation"], mishaps)),
  ];
}

function planTold(plan: PartOf<"plan"> | undefined): Told[] {
  if (plan === undefined) return [];
  const { altered, crowned, own = [] } = plan.body;
  const inFull = own.filter(isInFull);
  return [
    ...told("morphology", altered === "notAssessed" ? undefined : altered, `${plan.id}/altered`),
    ...told("crowned", crowned === "notAsked" ? undefined : crowned, `${plan.id}/crowned`),
    ...told("own", inFull.length === 0 ? undefined : inFull, `${plan.id}/own`),
  ];
}
