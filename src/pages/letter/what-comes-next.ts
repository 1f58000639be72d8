import { handbackGaps } from "../../record/handback-gaps.ts";
import { handedToWords } from "../../record/words/handback-words.ts";
import { type Block, type Line, type Page, says } from "../page-model.ts";
import { textBlock } from "../sections/presenting.ts";
import { leftInWords } from "../sections/visit-materials.ts";
import type { LetterCase } from "./letter-case.ts";

const dayMs = 86_400_000;

const page = (title: string, blocks: readonly Block[]): Page[] =>
  blocks.length === 0 ? [] : [{ title, on: "", blocks, notes: [] }];

/** The dentist and the patient, whose names no record holds: they are written by hand. */
export function head({ handback }: LetterCase): Page {
  const to = handback?.to === undefined ? "To" : `To ${handedToWords[handback.to]}`;
  const labels = [to, "Patient's name and date of birth", "Date of the hand-back", "From"];
  return { title: "", on: "", blocks: [{ kind: "blanks", labels }], notes: [] };
}

/** What must be restored, with what, by when, how the orifices are marked and what closes the tooth until then. */
export function restoreNow({ handback, visits }: LetterCase): Page[] {
  const last = visits.at(-1);
  const closed = last === undefined ? [] : leftInWords(last.body);
  return page("What must be restored", [
    ...textBlock("With", handback?.restoreWith ?? ""),
    ...textBlock("By when", handback === undefined ? "" : byWhen(handback)),
    ...textBlock("Orifices are marked by", handback?.orificesMarkedBy ?? ""),
    ...textBlock("In the tooth since the last visit", closed.join("; ")),
  ]);
}

/** Counted from the day of the hand-back, which stands on the letter by hand. */
function byWhen({ on, restoreBy }: NonNullable<LetterCase["handback"]>): string {
  if (restoreBy === undefined) return "";
  const days = Math.round((Date.parse(restoreBy) - Date.parse(on)) / dayMs);
  return days <= 0 ? "At once." : `Within ${days} ${days === 1 ? "day" : "days"} of the hand-back.`;
}

/** What whoever enters the tooth again must know, as the person took or wrote it. */
export const forReentry = ({ handback }: LetterCase): Page[] =>
  page("For whoever enters the tooth again", textBlock("", handback?.warnings ?? "").map(unheaded));

const unheaded = (block: Block): Block =>
  block.kind === "text" ? { kind: "text", points: true, lines: block.lines } : block;

/** Recall, pain, and whom to call. */
export function afterwards({ handback, source }: LetterCase): Page[] {
  const call = source.firstCall;
  const recall = [handback === undefined ? "" : recallInWords(handback), handback?.recallAsks ?? ""];
  return page("Recall and pain", [
    ...textBlock("Recall", recall.filter((text) => text !== "").join("\n")),
    ...textBlock("Pain", handback?.painAdvice ?? ""),
    ...textBlock("In an emergency", call === undefined ? "" : `${call.who}: ${call.number}`),
  ]);
}

function recallInWords({ on, recallOn }: NonNullable<LetterCase["handback"]>): string {
  if (recallOn === undefined) return "";
  const months = Math.round((Date.parse(recallOn) - Date.parse(on)) / dayMs / 30.4375);
  return months < 1
    ? "Within a month of the hand-back."
    : `${months} ${months === 1 ? "month" : "months"} after the hand-back.`;
}

/** What the record does not hold, so that nobody takes silence for an answer. */
export function notTold({ source, handback }: LetterCase): Page[] {
  const gaps = handbackGaps(source.parts, handback).map(({ says: told }): Line => says(`${told}.`));
  return gaps.length === 0 ? [] : page("Not recorded, so not told here", [{ kind: "text", points: true, lines: gaps }]);
}
