import { Refusal } from "../core/refusal.ts";
import { lastPlan, type PlanTold, planSubject, planTold } from "../ledger/plan-told.ts";
import type { BodyOf } from "../record/parts.ts";
import { thePart } from "../record/parts.ts";
import { wayChosen } from "../record/way-chosen.ts";
import { wayWords } from "../record/words/case-words.ts";
import type { CaseSource } from "./case-source.ts";
import { aboutTooth } from "./consent/about-tooth.ts";
import { afterwards, answer, ifNothing, questions } from "./consent/around-the-choice.ts";
import { choicePage } from "./consent/choice.ts";
import type { ConsentCase } from "./consent/consent-case.ts";
import { consentWords } from "./consent/consent-words.ts";
import { risksByHand, risksPage } from "./consent/risks.ts";
import { waysPage } from "./consent/ways.ts";
import { whereFrom } from "./consent/where-from.ts";
import { ledgerReader } from "./ledger-reader.ts";
import type { PageModel } from "./page-model.ts";

/**
 * What the patient is told and signs: the tooth, what is wrong, every way that is open, what is advised and why, each risk
 * that the facts call for, and room for questions and signatures; in plain words, in large print, with no name stored.
 * @throws Refusal `input.notDeterminable` without a plan, with a plan in which nobody has chosen or a way was chosen against the facts without a reason, or where the ways of this case can't be computed
 */
export function consentSheet(source: CaseSource): PageModel {
  const of = consentCase(source);
  const told = [
    ...[aboutTooth(of), waysPage(of), choicePage(of), risksPage(of), ...risksByHand(of)],
    ...[ifNothing(of), afterwards(of), questions(), answer(of)],
  ];
  const { demo, pseudonym } = of.about;
  return {
    as: "consent",
    title: consentWords.title,
    mark: demo ? `${pseudonym} · Demo: invented` : pseudonym,
    demo,
    pages: [...told, whereFrom(of, told)],
  };
}

function consentCase(source: CaseSource): ConsentCase {
  const about = thePart(source.parts, "case")?.body;
  const plan = lastPlan(source.parts);
  if (about === undefined || plan === undefined)
    throw new Refusal(
      "input.notDeterminable",
      "Cannot make the consent page: no plan is recorded; add a plan and choose a way",
    );
  if (wayChosen(plan.body) === undefined)
    throw new Refusal(
      "input.notDeterminable",
      "Cannot make the consent page: no way is chosen in the plan yet; choose one, so that the page advises what you do",
    );
  const read = ledgerReader(source.ledger);
  const subject = planSubject(plan.id);
  const ways = planTold(read.entry(subject));
  if (ways === undefined)
    throw new Refusal(
      "input.notDeterminable",
      `Cannot make the consent page: the ways of this tooth are not computed${whyNot(read.entry(subject)?.refused)}`,
    );
  refuseUnreasoned(plan.body, ways);
  const isMinor = ageOn(plan.body.madeOn, about) < ageOfMajority;
  return { source, about, plan: plan.body, ways, read, subject, isMinor };
}

/** Who advises a way that the facts speak against says why, or advises another. */
function refuseUnreasoned({ chosen, because }: BodyOf<"plan">, { options }: PlanTold): void {
  const against = options.find(({ way, standing }) => way === chosen && standing === "does not fit");
  if (against === undefined || because.trim() !== "") return;
  const why = against.why.map(({ says }) => says.replace(/\.$/, "")).join("; ");
  throw new Refusal(
    "input.notDeterminable",
    `Cannot make the consent page: the chosen way, ${wayWords[chosen]}, does not fit what is recorded (${why}); on the plan's page choose another, or write under Because why it is taken`,
  );
}

const whyNot = (refused: readonly string[] | undefined): string =>
  refused === undefined ? "" : `: ${refused.join("; ")}`;

/** Who is younger has a parent or guardian sign as well; only the year of birth is kept, so the age is the year's. */
const ageOfMajority = 18;

const ageOn = (day: string, { birthYear }: BodyOf<"case">): number => Number(day.slice(0, 4)) - birthYear;
