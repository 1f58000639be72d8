import type { RemovalTold } from "../../ledger/removal-told.ts";

/** A published group with its counts and its place in the weighing. */
interface CountedGroup {
  readonly at: number;
  readonly series: string;
  readonly share: number;
  readonly events: number;
  readonly n: number;
}

/** Of the groups that this case belongs to, those in which a try worked least and most often; one where it is the same. */
export function endsOfChance({ removalChance }: Pick<RemovalTold, "removalChance">): readonly CountedGroup[] {
  const own = removalChance.flatMap(({ matches, series, share, events, n }, at): CountedGroup[] =>
    matches !== "yes" || share === undefined || events === undefined || n === undefined
      ? []
      : [{ at, series, share, events, n }],
  );
  const sorted = own.sort((a, b) => a.share - b.share);
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (least === undefined || most === undefined) return [];
  return least === most ? [least] : [least, most];
}
