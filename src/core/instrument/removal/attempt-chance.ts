import type { RemovalOutput } from "../removal-output.ts";
import { countedShare, type UncertainShare } from "./uncertain-share.ts";

type Row = RemovalOutput["removalChance"][number];

/** One group that the sum draws from, and how likely it is drawn. */
export interface AttemptArm extends UncertainShare {
  readonly weight: number;
  /** What part of the gain a success of this group reaches, of what a bypass is worth and how many are bypasses. */
  readonly reach: (bypassed: number, worth: number) => number;
}

const reachOf: Record<Row["success"], AttemptArm["reach"]> = {
  removed: () => 1,
  bypassed: (_, worth) => worth,
  removedOrBypassed: (bypassed, worth) => 1 - bypassed * (1 - worth),
  notStated: () => 1,
};

/**
 * The groups that an attempt's chance is drawn from: each series as likely, in it each of its groups that match.
 * @source docs/methods/removal.md C8
 */
export function attemptArms(rows: readonly Row[]): AttemptArm[] {
  const used = rows.filter(({ inSum }) => inSum);
  const series = [...new Set(used.map((row) => row.series))];
  return used.map((row) => ({
    ...countedShare({ events: row.events ?? 0, n: row.n ?? 0 }),
    weight: 1 / series.length / used.filter((one) => one.series === row.series).length,
    reach: reachOf[row.success],
  }));
}
