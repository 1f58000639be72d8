import type { z } from "zod";
import { instrumentTopic } from "../core/instrument/instrument-topic.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";

/** What an entry of the ledger says of an instrument's shape. */
export type InstrumentTold = z.infer<typeof instrumentTopic.output>;

/** What the shape of the instrument that broke is called in the ledger. */
export const brokenInstrumentSubject = (mishapId: string): string => `instrument of ${mishapId}`;

/** See {@link InstrumentTold}; undefined for an entry that refused. */
export const instrumentTold = (entry: Pick<LedgerEntry, "output"> | undefined): InstrumentTold | undefined =>
  instrumentTopic.output.safeParse(entry?.output).data;
