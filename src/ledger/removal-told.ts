import { assumedInnerSide, type RootSide, removalInput } from "../core/instrument/removal-input.ts";
import { type RemovalOutput, removalOutput } from "../core/instrument/removal-output.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";

/** What an entry of the ledger says of a piece's removal. */
export type RemovalTold = RemovalOutput;

/** What the weighing of a removal is called in the ledger. */
export const removalSubject = (removalId: string): string => `removal of ${removalId}`;

/** See {@link RemovalTold}; undefined for an entry that refused. */
export const removalTold = (entry: Pick<LedgerEntry, "output" | "refused"> | undefined): RemovalTold | undefined =>
  removalOutput.safeParse(entry?.output).data;

/** Towards which wall a weighing took the straight line to run, and whether that was told; undefined without its input. */
export function innerSideTaken(
  entry: Pick<LedgerEntry, "input"> | undefined,
): { readonly side: RootSide; readonly isTold: boolean } | undefined {
  const asked = removalInput.safeParse(entry?.input).data;
  return asked && { side: asked.innerSide ?? assumedInnerSide, isTold: asked.innerSide !== undefined };
}

/** What a weighing was computed with where the removal's own page says nothing: from films, the mishap or the ledger. */
export function removalFromElsewhere(entry: LedgerEntry | undefined, removalId: string) {
  const asked = removalInput.safeParse(entry?.input).data;
  const { headDepthMm, headDiameterMm } = asked?.fragment ?? {};
  const own = (field: string): boolean =>
    (entry?.inputPaths ?? []).some(({ record }) => record === `${removalId}/${field}`);
  return {
    headDepthMm: own("headDepthMm") ? undefined : headDepthMm,
    headDiameterMm: own("headDiameterMm") ? undefined : headDiameterMm,
  };
}
