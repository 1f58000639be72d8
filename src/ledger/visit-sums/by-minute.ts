/** A row of a visit with its place in the record's list. */
export interface Placed<Row> {
  readonly row: Row;
  readonly index: number;
}

/** Rows by their minutes where each has one, else as they stand: a minute that is missing would put a row anywhere. */
export function byMinute<Row extends { readonly atMin?: number | undefined }>(rows: readonly Row[]): Placed<Row>[] {
  const placed = rows.map((row, index) => ({ row, index }));
  if (rows.some(({ atMin }) => atMin === undefined)) return placed;
  return placed.sort((a, b) => (a.row.atMin ?? 0) - (b.row.atMin ?? 0));
}
