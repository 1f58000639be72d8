/** A statement takes a limited number of values; rows go in by so many at a time. */
const rowsAtATime = 200;

/** Inserts rows in portions that both databases take. */
export async function inPortions<Row>(
  rows: readonly Row[],
  insert: (portion: Row[]) => Promise<unknown>,
): Promise<void> {
  for (let start = 0; start < rows.length; start += rowsAtATime) await insert(rows.slice(start, start + rowsAtATime));
}
