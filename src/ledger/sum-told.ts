import type { z } from "zod";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { WhatIfAnswer } from "./what-if.ts";

/** What a sum of the ledger answers, or why there is none; either way the entry that says so. */
export type SumTold<Output> =
  | { readonly entryId: string; readonly output: Output; readonly why?: never }
  | { readonly entryId: string; readonly why: string; readonly output?: never };

/** What a sum would answer if something were otherwise, or why there would be none. */
export type SumIfTold<Output> =
  | { readonly output: Output; readonly why?: never }
  | { readonly why: string; readonly output?: never };

/** Reads one topic's entries: see {@link sumTold}. */
type Form<Output> = z.ZodType<Output>;

/**
 * What the entry of one subject says.
 * Takes the form of the topic's output. Gives undefined where no such entry stands, or where it keeps its answer in an older form.
 */
export function sumTold<Output>(
  form: Form<Output>,
  entries: readonly LedgerEntry[],
  subject: string,
): SumTold<Output> | undefined {
  const entry = entries.find((one) => one.subject === subject);
  if (entry === undefined) return undefined;
  if (entry.refused !== undefined) return { entryId: entry.id, why: entry.refused.join("; ") };
  const read = form.safeParse(entry.output);
  return read.success ? { entryId: entry.id, output: read.data } : undefined;
}

/** What an answer to a question "what if" says, by the form of its topic's output; undefined without an answer. */
export function sumIfTold<Output>(form: Form<Output>, answer: WhatIfAnswer | undefined): SumIfTold<Output> | undefined {
  if (answer === undefined) return undefined;
  if (answer.gap !== undefined) return { why: answer.gap };
  if (answer.refusal !== undefined) return { why: answer.refusal.join("; ") };
  const read = form.safeParse(answer.output);
  return read.success ? { output: read.data } : undefined;
}

/** The subjects among these entries that begin like this one: the whole visit, or one of its canals or solvents. */
export const subjectsUnder = (entries: readonly LedgerEntry[], subject: string): string[] =>
  entries.flatMap((one) => (one.subject === subject || one.subject.startsWith(`${subject} `) ? [one.subject] : []));
