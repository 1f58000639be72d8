import type { DueKind } from "../record/due.ts";
import type { CaseFacts } from "../record/facts.ts";

/** A value as JSON text; read and written only through column-codecs.ts. */
export type JsonText = string;

/**
 * The tables of the record. In the database the names are written with underscores (case_facts, fillingEndMm as
 * filling_end_mm). Only text, numbers and null are stored: both databases hold them alike.
 */
export interface Tables {
  meta: { name: string; value: string };
  changes: ChangeRow;
  parts: PartRow;
  partRevisions: { caseId: string; id: string; revision: number };
  filmUses: { caseId: string; hash: string };
  caseFacts: FactsRow;
  ledgerEntries: LedgerRow;
  ledgerCurrent: { caseId: string; place: number; entryId: string };
  films: { hash: string; bytes: number; keptAt: string; seal: string };
  documents: { id: string; caseId: string; at: string; row: JsonText; seal: string };
  settings: { name: string; value: JsonText; seal: string };
  exercises: { id: string; at: string; row: JsonText; seal: string };
  cabinetChanges: CabinetChangeRow;
  cabinetItems: CabinetItemRow;
  fileUses: FileUseRow;
  dueThings: DueRow;
  tombstones: { caseId: string; headHash: string; at: string; who: JsonText; seal: string };
  /** Files that are being written or taken away; a start removes those that no row names. */
  unfinishedFiles: { path: string };
}

/** One link of a chain. */
export interface ChangeRow {
  caseId: string;
  sequence: number;
  at: string;
  who: JsonText;
  words: JsonText;
  patches: JsonText;
  inverts: number | null;
  previousHash: string;
  hash: string;
}

/** A part as it stands; place keeps the order in which the parts came. */
export interface PartRow {
  caseId: string;
  id: string;
  place: number;
  kind: string;
  version: number;
  revision: number;
  body: JsonText;
}

/** One link of the cabinet's chain. */
export type CabinetChangeRow = Omit<ChangeRow, "caseId">;

/** An item of the cabinet, its body null once it was removed; place keeps the order in which the items came. */
export interface CabinetItemRow extends Omit<PartRow, "caseId" | "body"> {
  body: JsonText | null;
}

/** One use of a counted file in a case. */
export interface FileUseRow {
  caseId: string;
  visitId: string;
  row: number;
  fileId: string;
  day: string;
  canal: string | null;
  seconds: number | null;
  turnsNet: number | null;
  turnsSwept: number | null;
}

/** One thing that a case owes. */
export interface DueRow {
  caseId: string;
  partId: string;
  kind: DueKind;
  day: string;
  askedUntil: string | null;
}

/** {@link CaseFacts} with 0 and 1 for no and yes. */
export type FactsRow = { -readonly [Field in keyof CaseFacts]: StoredFact<CaseFacts[Field]> };
type StoredFact<Value> = Value extends boolean ? number : Value;

/** One entry of the ledger, sealed by a hash over all of it. */
export interface LedgerRow {
  caseId: string;
  id: string;
  subject: JsonText;
  topic: string;
  topicVersion: number;
  input: JsonText;
  inputPaths: JsonText;
  output: JsonText | null;
  refused: JsonText | null;
  at: string;
  seal: string;
}
