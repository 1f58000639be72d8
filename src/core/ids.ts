/** Branded identifiers: a text that is known to name one kind of thing. */
declare const names: unique symbol;
type Id<Thing extends string> = string & { readonly [names]: Thing };

/** Names one case (one tooth of one patient over time). */
export type CaseId = Id<"case">;
/** Names one part of a case. */
export type PartId = Id<"part">;
/** Names one entry of the ledger. */
export type LedgerEntryId = Id<"ledger entry">;
/** SHA-256 of a film's bytes as 64 lower-case hexadecimal digits. */
export type FilmHash = Id<"film">;

/** A text known to name a case. */
export const caseId = (text: string): CaseId => text as CaseId;
/** A text known to name a part. */
export const partId = (text: string): PartId => text as PartId;
/** A text known to name a ledger entry. */
export const ledgerEntryId = (text: string): LedgerEntryId => text as LedgerEntryId;
/** A text known to be a film's hash. */
export const filmHash = (text: string): FilmHash => text as FilmHash;
