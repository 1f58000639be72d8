import type { Gesture } from "../../src/record/change.ts";
import type { PartKind } from "../../src/record/parts.ts";
import type { CaseState, Recording } from "../../src/store/store.ts";

/** A recording that works no ledger out. */
export const recording: Recording = { who: "A. Writer", at: "2026-03-01T09:30:00Z", deriveLedger: () => [] };

/** What says which tooth of whom a case is; invented. */
export const aboutBody = {
  pseudonym: "P-0417",
  birthYear: 1969,
  sex: "female",
  tooth: "26",
  treatment: "retreatment",
  presentedOn: "2026-02-10",
  complaint: "A dull ache when I bite.",
  referredFor: "Retreatment",
  background: "Filled nine years ago.",
  demo: false,
};

/** The gesture that makes a case. */
export const newCase = (about: object = {}): Gesture => put("about", "case", 0, { ...aboutBody, ...about });

/** A gesture that puts one part. */
export const put = (
  id: string,
  kind: PartKind,
  baseRevision: number,
  body: unknown,
  words = `${kind} set`,
): Gesture => ({
  words,
  operations: [{ op: "put", id, kind, baseRevision, body }],
});

/** A gesture that removes one part. */
export const remove = (id: string, kind: PartKind, baseRevision: number): Gesture => ({
  words: `${kind} removed`,
  operations: [{ op: "remove", id, kind, baseRevision }],
});

/** A consent on a day: a small part of which a case can hold many. */
export const consentBody = (on: string, note = "") => ({
  on,
  to: "Retreatment",
  explainedBy: "resident",
  answeredBy: "patient",
  answer: "agreed",
  capacity: "has",
  imagesFor: ["treatment"],
  note,
});

/** A film part of the given bytes' hash. */
export const filmBody = (hash: string, takenOn = "2026-02-10") => ({
  hash,
  columns: 400,
  rows: 300,
  bitsStored: 12,
  takenOn,
  purpose: "diagnostic",
  receptor: "unknown",
  uRunsTo: "unknown",
  technical: { sourceFormat: "png", sourceSha256: hash, wasColour: false, lossy: false, inverted: false },
  caption: "",
});

/** The revision of a part in a state, 0 where it does not stand. */
export const revisionIn = (state: CaseState, id: string): number =>
  state.parts.find((part) => part.id === id)?.revision ?? 0;
