import { type Part, type PartOf, partsOf } from "../../record/parts.ts";
import type { TipDepth } from "../course-of-canal-for-instrument/tip-in-course.ts";

type Visit = PartOf<"visit">;
/** One use of an instrument as a visit's table holds it. */
export type UseRow = Visit["body"]["instruments"][number];

/** One row of a visit's table of instruments with its place in the record. */
export interface RowUsed {
  readonly visit: Visit;
  readonly index: number;
  readonly row: UseRow;
  /** As `visit-1/instruments/3`. */
  readonly record: string;
}

/** Every row of a case, visit by visit in the order of their days. */
export const rowsUsed = (parts: readonly Part[]): RowUsed[] =>
  partsOf(parts, "visit")
    .toSorted((a, b) => a.body.on.localeCompare(b.body.on))
    .flatMap(rowsOfVisit);

/** The rows of one visit, in their order. */
export const rowsOfVisit = (visit: Visit): RowUsed[] =>
  visit.body.instruments.map((row, index) => ({ visit, index, row, record: `${visit.id}/instruments/${index}` }));

/** The depth that a row says its tip went to; undefined where it says none. */
export const tipOfRow = ({ row, record }: RowUsed): TipDepth | undefined =>
  row.depthMm === undefined
    ? undefined
    : { depthMm: row.depthMm, depthFrom: row.depthFrom ?? "referencePoint", record: `${record}/depthMm` };

/** Whether a motor turned it: what a hand turns is in no record. */
export const isDriven = ({ row }: RowUsed): boolean =>
  row.movement === "continuous" || row.movement === "reciprocating" || row.rpm !== undefined;
