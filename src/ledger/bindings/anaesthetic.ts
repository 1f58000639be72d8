import type { AnaestheticInput, Confirmable } from "../../core/safety/anaesthetic/anaesthetic-input.ts";
import { anaestheticTopic } from "../../core/safety/anaesthetic-topic.ts";
import { canonicalJson } from "../../record/canonical-json.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import { anaestheticSubject } from "../anaesthetic-told.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { type FactTold, factsAsked, factTold } from "../fact-told.ts";
import { historyAnswers } from "../visit-sums/history-answers.ts";
import { bodyMassAt, massMissing, personAt } from "../visit-sums/person-at-visit.ts";

type Visit = PartOf<"visit">;
type Row = Visit["body"]["anaesthetic"][number];
type Solution = NonNullable<Visit["body"]["nextAnaesthetic"]>;
type Told = FactTold<keyof AnaestheticInput>;

/** The anaesthetic of each visit in which any was given, or is to be given next. */
export const anaestheticBinding: Binding = {
  topic: anaestheticTopic,
  ask: (context) => partsOf(context.parts, "visit").flatMap((visit) => anaestheticOf(visit, context)),
};

function anaestheticOf(visit: Visit, { parts }: BindingContext): (Question | Gap)[] {
  const { anaesthetic, nextAnaesthetic } = visit.body;
  if (anaesthetic.length === 0 && nextAnaesthetic === undefined) return [];
  const subject = anaestheticSubject(visit.id);
  const missing = (why: string, input: string, record: string): Gap[] => [
    { subject, why, inputPaths: [{ input, record }] },
  ];
  const mass = bodyMassAt(visit, parts);
  if (mass.length === 0) return missing(massMissing, "bodyMassKg", `${visit.id}/vitalSigns/bodyMassKg`);
  const limits = limitsOf(visit);
  if (limits === undefined) return missing(ownLimitsMissing, "limitSet", `${visit.id}/clinic/ownDoseLimits`);
  const person = [...mass, ...personAt(visit, parts), ...historyAnswers(visit, parts)];
  return [{ subject, ...factsAsked([...person, ...dosesOf(visit), ...limits, ...massConfirmed(visit, massOf(mass))]) }];
}

const massOf = ([told]: ReturnType<typeof bodyMassAt>): number | undefined =>
  typeof told?.value === "number" ? told.value : undefined;

const ownLimitsMissing =
  "the clinic's own limits are chosen and none is written; write them into the settings and take them over, or choose a published set";

/** Whose limits; the topic's own where nothing is chosen; undefined where own ones are chosen and there are none. */
function limitsOf({ id, body: { clinic } }: Visit): Told[] | undefined {
  const { doseLimits, ownDoseLimits = [], vasoconstrictorLimits } = clinic ?? {};
  if (doseLimits === "own" && ownDoseLimits.length === 0) return undefined;
  const place = doseLimits === "own" ? "ownDoseLimits" : "doseLimits";
  const set = doseLimits === "own" ? ownDoseLimits : doseLimits;
  return [
    ...factTold("limitSet" as const, set, `${id}/clinic/${place}`),
    ...factTold("vasoconstrictorLimits" as const, vasoconstrictorLimits, `${id}/clinic/vasoconstrictorLimits`),
  ];
}

function dosesOf({ id, body: { anaesthetic, nextAnaesthetic } }: Visit): Told[] {
  const given = anaesthetic.map(({ technique: _technique, confirmed: _confirmed, ...dose }, index) => ({
    ...dose,
    ...confirmedIn(stoodBy(anaesthetic[index])),
  }));
  const paths = given.map((_, index) => ({ input: `given[${index}]`, record: `${id}/anaesthetic/${index}` }));
  const alike = nextAnaesthetic && anaesthetic.find((row) => isSameSolution(row, nextAnaesthetic));
  const next = nextAnaesthetic && plannedOf(nextAnaesthetic, stoodBy(alike));
  return [
    {
      field: "given",
      value: given,
      paths: paths.length === 0 ? [{ input: "given", record: `${id}/anaesthetic` }] : paths,
    },
    ...factTold("planned" as const, next, `${id}/nextAnaesthetic`),
  ];
}

/** The planned solution with what was said of it, or of an injection of the same. */
function plannedOf(next: Solution, ofAlike: readonly Confirmable[]): object {
  const { confirmed: _confirmed, ...solution } = next;
  return { ...solution, ...confirmedIn([...new Set([...stoodBy(next), ...ofAlike])]) };
}

/** What a person said of one injection is said of no other: a slip in the next row is still asked for. */
const confirmedIn = (unusual: readonly Confirmable[]): { confirmed?: readonly Confirmable[] } =>
  unusual.length === 0 ? {} : { confirmed: unusual };

/** The amounts of a row that a person stands by: as they were read when it was asked, and no longer once they are others. */
function stoodBy(row: Row | Solution | undefined): readonly Confirmable[] {
  if (row?.confirmed === undefined) return [];
  const { percent, cartridgeMl, vasoconstrictor, cartridges } = row;
  const now = { percent, cartridgeMl, cartridges, ratio: vasoconstrictor?.ratio, iuPerMl: vasoconstrictor?.iuPerMl };
  const { unusual = [], asked } = row.confirmed;
  return unusual.filter((name) => name !== "bodyMassKg" && isRead(now[name], asked));
}

const isRead = (value: number | undefined, asked: readonly string[]): boolean =>
  value !== undefined && asked.some((ask) => (ask.match(/\d+(\.\d+)?/g) ?? []).map(Number).includes(value));

/** The mass is the person's: who stood by it at one injection stood by it, as long as it is the same. */
function massConfirmed({ id, body: { anaesthetic } }: Visit, mass: number | undefined): Told[] {
  const index = anaesthetic.findIndex(
    ({ confirmed }) => confirmed?.unusual?.includes("bodyMassKg") && isRead(mass, confirmed.asked),
  );
  return index < 0 ? [] : factTold("confirmed" as const, ["bodyMassKg"], `${id}/anaesthetic/${index}/confirmed`);
}

const isSameSolution = (row: Row, next: Solution): boolean =>
  canonicalJson(solutionOf(row)) === canonicalJson(solutionOf(next));
const solutionOf = ({ agent, percent, vasoconstrictor, cartridgeMl }: Row | Solution) => ({
  ...{ agent, percent, cartridgeMl },
  vasoconstrictor: vasoconstrictor ?? null,
});
