import { jargonIn } from "../../core/plain-words/jargon.ts";
import { readingGrade } from "../../core/plain-words/reading-grade.ts";
import type { BodyOf } from "../../record/parts.ts";

/** The highest grade of a sentence for the patient: it is read at an age of about twelve. */
export const plainGrade = 7;

/** What keeps a patient from understanding a text: words of the trade, and long sentences. */
export interface NotPlain {
  readonly jargon: readonly string[];
  /** Present where the text is harder to read than {@link plainGrade}. */
  readonly grade?: number;
}

/** What is not plain in a text; undefined where nothing is. */
export function notPlain(text: string): NotPlain | undefined {
  const jargon = jargonIn(text);
  const grade = readingGrade(text);
  const isHard = grade !== undefined && grade > plainGrade;
  return jargon.length === 0 && !isHard ? undefined : { jargon, ...(isHard ? { grade } : {}) };
}

/**
 * The reason for the choice in words for the patient: those written for it, else the clinician's where they are plain;
 * undefined where the page leaves lines for it.
 */
export function plainReason({ saidPlainly, because }: BodyOf<"plan">): string | undefined {
  const written = saidPlainly?.trim() ?? "";
  if (written !== "") return written;
  return because.trim() === "" || notPlain(because) !== undefined ? undefined : because.trim();
}
