import { ledgerEntryId, caseId as named } from "../core/ids.ts";
import { canonicalJson, hashOf } from "../record/canonical-json.ts";
import type { Change } from "../record/change.ts";
import type { CaseFacts } from "../record/facts.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type Part, partTypes } from "../record/parts.ts";
import { readPart } from "../record/read-part.ts";
import type { ChangeRow, FactsRow, JsonText, LedgerRow, PartRow } from "./tables.ts";

/**
 * A value as the text of a JSON column. Free words go through it too: a text column may cut a text at a zero character or
 * change a half surrogate, JSON escapes both.
 */
export const toJsonText = (value: unknown): JsonText => canonicalJson(value);

/** The value of a JSON column; what it holds is for the caller to check. */
export function fromJsonText(text: JsonText): unknown {
  const value: unknown = JSON.parse(text);
  return value;
}

/** The hash that a row carries over the rest of itself, so that a changed byte is found. */
export const sealOf = (row: object): string => hashOf(row);

/** A change as a row. */
export function changeToRow(change: Change): ChangeRow {
  const { who, words, patches, inverts, ...rest } = change;
  return {
    ...rest,
    who: toJsonText(who),
    words: toJsonText(words),
    patches: toJsonText(patches),
    inverts: inverts ?? null,
  };
}

/** A change of a row; its hash tells whether it is what was written. */
export function changeFromRow(row: ChangeRow): Change {
  const { caseId, who, words, patches, inverts, ...rest } = row;
  return {
    ...rest,
    caseId: named(caseId),
    who: fromJsonText(who) as string,
    words: fromJsonText(words) as string,
    patches: fromJsonText(patches) as Change["patches"],
    ...(inverts === null ? {} : { inverts }),
  };
}

/** A part as a row of a case. */
export function partToRow(caseId: string, part: Part, place: number): PartRow {
  const { id, kind, revision } = part;
  return { caseId, id, place, kind, version: partTypes[kind].version, revision, body: toJsonText(part.body) };
}

/**
 * A part of a row, in today's form.
 * @throws Refusal `record.newerVersion`, `input.invalid`
 */
export function partFromRow(row: PartRow): Part {
  const { id, kind, version, revision } = row;
  return readPart({ id, kind, version, revision, body: fromJsonText(row.body) });
}

/** Facts as a row. */
export function factsToRow(facts: CaseFacts): FactsRow {
  const retained = facts.retained === null ? null : Number(facts.retained);
  return { ...facts, demo: Number(facts.demo), retained };
}

/** Facts of a row. */
export function factsFromRow(row: FactsRow): CaseFacts {
  return { ...row, demo: row.demo !== 0, retained: row.retained === null ? null : row.retained !== 0 };
}

/** An entry of the ledger as a row. */
export function ledgerToRow(entry: LedgerEntry): LedgerRow {
  const { subject, input, inputPaths, output, refused, ...rest } = entry;
  return {
    ...rest,
    subject: toJsonText(subject),
    input: toJsonText(input),
    inputPaths: toJsonText(inputPaths),
    output: output === undefined ? null : toJsonText(output),
    refused: refused === undefined ? null : toJsonText(refused),
    seal: sealOf(entry),
  };
}

/** An entry of a row; its seal tells whether it is what was written. */
export function ledgerFromRow(row: LedgerRow): LedgerEntry {
  const { id, caseId, subject, input, inputPaths, output, refused, seal: _seal, ...rest } = row;
  return {
    ...rest,
    id: ledgerEntryId(id),
    caseId: named(caseId),
    subject: fromJsonText(subject) as string,
    input: fromJsonText(input),
    inputPaths: fromJsonText(inputPaths) as LedgerEntry["inputPaths"],
    ...(output === null ? {} : { output: fromJsonText(output) }),
    ...(refused === null ? {} : { refused: fromJsonText(refused) as string[] }),
  };
}
