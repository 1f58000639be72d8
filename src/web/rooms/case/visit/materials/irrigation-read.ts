import { type IrrigationTold, irrigationsTold } from "../../../../../ledger/irrigation-told.ts";
import { byMinute } from "../../../../../ledger/visit-sums/by-minute.ts";
import type { LedgerEntry } from "../../../../../record/ledger-entry.ts";
import type { Irrigant } from "./read-irrigant.ts";

type Clash = IrrigationTold["clashes"][number];

/** A clash with the entry that tells it, and the canals in which it happened. */
interface ClashInVisit {
  readonly clash: Clash;
  readonly entryId: string;
  readonly canals: readonly string[];
}

/** One row of a visit's irrigation in the order of use, with what it met. */
export interface IrrigantInOrder {
  readonly row: Irrigant;
  /** Its place in the record's list, from 0. */
  readonly index: number;
  readonly met: readonly ClashInVisit[];
}

/** The irrigants of a visit in the order of use, each with the clashes in which it is the second. */
export function irrigationInOrder(
  rows: readonly Irrigant[],
  ledger: readonly LedgerEntry[],
  visitId: string,
): readonly IrrigantInOrder[] {
  const told = irrigationsTold(ledger, visitId).flatMap(({ output, entryId, canal }) => {
    const paths = ledger.find(({ id }) => id === entryId)?.inputPaths ?? [];
    return (output?.clashes ?? []).map((clash) => ({ clash, entryId, canal, at: rowOf(clash.steps[1], paths) }));
  });
  return byMinute(rows).map(({ row, index }) => {
    const here = told.filter(({ at }) => at === index);
    const each = new Map(here.map((one) => [one.clash.first + one.clash.what, one]));
    const met = [...each].map(([name, { clash, entryId }]) => ({
      ...{ clash, entryId },
      canals: here.flatMap((one) => (one.clash.first + one.clash.what === name ? (one.canal ?? []) : [])),
    }));
    return { row, index, met };
  });
}

/** The place in the record of a step of the sum's sequence. */
function rowOf(step: number, paths: LedgerEntry["inputPaths"]): number | undefined {
  const record = paths.find(({ input }) => input === `sequence[${step}]`)?.record;
  const place = /\/irrigation\/(\d+)$/.exec(record ?? "")?.[1];
  return place === undefined ? undefined : Number(place);
}
