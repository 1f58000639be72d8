import { type LifeOutput, lifeOutput } from "../core/instrument/life-input.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";

/** The life that an instrument has used. */
export interface LifeTold extends Omit<LifeOutput, "uses"> {
  /** Each use with its row of the record, as `visit-1/instruments/3`. */
  readonly uses: readonly (LifeOutput["uses"][number] & { readonly row?: string })[];
  /** Several uses that nothing but their geometry holds together; what to say of it, else undefined. */
  readonly takenAsOne?: string;
}

/** See {@link LifeTold}; undefined for an entry that refused, or that keeps its answer in an older form. */
export function lifeTold(
  entry: Pick<LedgerEntry, "subject" | "inputPaths" | "output"> | undefined,
): LifeTold | undefined {
  const output = lifeOutput.safeParse(entry?.output).data;
  if (entry === undefined || output === undefined) return undefined;
  const isCounted = entry.subject.startsWith(lifeOfFileSubject("")) || entry.inputPaths.some(isFile);
  return {
    ...output,
    uses: output.uses.map((use, index) => ({ ...use, ...rowOf(entry, index) })),
    ...(isCounted || output.uses.length < 2 ? {} : { takenAsOne }),
  };
}

const takenAsOne =
  "Its uses are taken as those of one instrument: no file is counted for it. Were they several instruments, each has used less.";

const isFile = ({ record }: { readonly record: string }): boolean => record.endsWith("/file");

function rowOf({ inputPaths }: Pick<LedgerEntry, "inputPaths">, index: number): { readonly row?: string } {
  const record = inputPaths.find(({ input }) => input === `uses[${index}].seconds`)?.record;
  return record === undefined ? {} : { row: record.replace(/\/seconds$/, "") };
}

/** What the life of an instrument at a visit is called in the ledger; takes its name at that visit. */
export const lifeSubject = (visit: string, name: string): string => `lifeUsed of ${visit} ${name}`;
/** The same of a counted file over a whole case. */
export const lifeOfFileSubject = (file: string): string => `lifeUsed of file ${file}`;
/** The same of the one that broke, until it did. */
export const lifeUntilBreakSubject = (mishap: string): string => `lifeUsed of ${mishap}`;
