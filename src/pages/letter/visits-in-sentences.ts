import { irrigationsTold } from "../../ledger/irrigation-told.ts";
import type { BodyOf, PartOf } from "../../record/parts.ts";
import { canalStateWords, solutionWords, solventWords } from "../../record/words/visit-words.ts";
import { momentWords } from "../moment-words.ts";
import type { Line, Run } from "../page-model.ts";
import { leftInWords, solutionInWords } from "../sections/visit-materials.ts";
import { sentence } from "../sentence.ts";
import type { LetterCase } from "./letter-case.ts";

type Visit = BodyOf<"visit">;

/** Each visit in a few plain sentences. */
export const visitsInSentences = (of: LetterCase): readonly Line[] =>
  of.visits.map((visit, index) => visitLine(visit, index + 1, of));

function visitLine(visit: PartOf<"visit">, number: number, of: LetterCase): Line {
  const { body } = visit;
  const minutes = body.minutes === undefined ? "" : `, ${body.minutes} min`;
  const head = `Visit ${number}, ${momentWords(body.on, of.source.parts)}${minutes}. `;
  const before = [body.aim, damInWords(body), anaestheticInWords(body)];
  const after = [canalsInWords(body), ...leftInWords(body)];
  const told = [...sentences(before), ...rinsed(visit, of), ...sentences([solventInWords(body), ...after])];
  return [{ text: head }, ...told];
}

const sentences = (texts: readonly string[]): Run[] =>
  texts.filter((text) => text !== "").map((text) => ({ text: `${sentence(text).replace(/[.;\s]+$/, "")}. ` }));

function damInWords({ isolation: { rubberDam, whyNot = "" } }: Visit): string {
  if (rubberDam === "notRecorded") return "";
  if (rubberDam === "used") return "Under rubber dam";
  return whyNot === "" ? "Without rubber dam" : `Without rubber dam (${whyNot})`;
}

function anaestheticInWords({ anaesthetic }: Visit): string {
  const given = anaesthetic.map((one) => `${one.cartridges} × ${one.cartridgeMl} ml ${solutionInWords(one)}`);
  return given.length === 0 ? "" : `Local anaesthetic: ${given.join("; ")}`;
}

/** The solutions with their totals as the ledger holds them; by name alone where it holds none. */
function rinsed({ id, body }: PartOf<"visit">, { source, read }: LetterCase): Run[] {
  const told = irrigationsTold(source.ledger, id).flatMap(({ entryId, output, canal }) =>
    (output?.totals ?? []).map((total, index) => ({ entryId, canal, total, at: `totals[${index}].volumeMl` })),
  );
  if (told.length === 0) return sentences([solutionsByName(body)]);
  const runs = told.flatMap(({ entryId, canal, total, at }, index): Run[] => {
    const subject = source.ledger.find((entry) => entry.id === entryId)?.subject ?? "";
    const where = canal === undefined ? "" : ` in ${canal}`;
    const amount = read.number(subject, at, 1) ?? { text: "–" };
    return [{ text: `${index === 0 ? "" : "; "}${total.solution}${where} ` }, amount, { text: " ml" }];
  });
  return [{ text: "Irrigated with " }, ...runs, { text: `${countedInEach(body)}. ` }];
}

/** What was used in all open canals stands in the total of each: nobody is to add them up. */
const countedInEach = ({ irrigation }: Visit): string =>
  irrigation.some(({ canal }) => canal !== undefined) && irrigation.some(({ canal }) => canal === undefined)
    ? "; in each canal with what all canals were given"
    : "";

function solutionsByName({ irrigation }: Visit): string {
  const names = irrigation.map(({ solution, named, percent }) => {
    const name = solution === "other" ? (named ?? "another solution") : solutionWords[solution];
    return percent === undefined ? name : `${name} ${percent} %`;
  });
  return names.length === 0 ? "" : `Irrigated with ${[...new Set(names)].join(", ")}`;
}

function solventInWords({ solvent }: Visit): string {
  const names = [...new Set(solvent.map((dose) => dose.own?.name ?? solventWords[dose.solvent]))];
  const doses = solvent.map(({ volumeMl }) => `${volumeMl}`).join(" + ");
  return names.length === 0 ? "" : `Solvent: ${names.join(", ")}, ${doses} ml`;
}

/** Canals by the state in which the visit left them. */
function canalsInWords({ canals }: Visit): string {
  const states = [...new Set(canals.map(({ state }) => state))];
  const words = states.map((state) => {
    const names = canals.filter((one) => one.state === state).map(({ canal }) => canal);
    return `${names.join(", ")} ${canalStateWords[state]}`;
  });
  return words.join("; ");
}
