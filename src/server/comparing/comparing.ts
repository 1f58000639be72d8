import type { Outcome } from "../../ledger/derive-ledger.ts";
import type { Progress } from "../jobs.ts";

/** Two kept films and what an entry of the ledger asks about them. */
export interface FilmsToCompare {
  /** The entry's input. */
  readonly input: unknown;
  /** The files of the kept films. */
  readonly before: Uint8Array;
  readonly after: Uint8Array;
}

/** The pictures of a comparison by name: the second film laid on the first, and what changed. */
export const pictureNames = ["aligned", "difference"] as const;
/** See {@link pictureNames}. */
export type PictureName = (typeof pictureNames)[number];

/** What came of a comparison: what the ledger keeps, and its pictures as PNG files on the first film's pixels. */
export interface FilmsCompared {
  readonly outcome: Outcome;
  readonly pictures: Readonly<Partial<Record<PictureName, Uint8Array>>>;
}

/** Compares films; takes seconds, and ends early where the signal says so. */
export type Comparing = (asked: FilmsToCompare, told: Progress, signal: AbortSignal) => Promise<FilmsCompared>;
