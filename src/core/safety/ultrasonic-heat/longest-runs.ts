import type { Burst } from "./ultrasonic-heat-input.ts";
import type { Run } from "./ultrasonic-heat-output.ts";

/** Seconds added up, to a millionth: sums of decimals carry noise. */
export const secondsTogether = (values: readonly number[]): number =>
  Math.round(values.reduce((all, one) => all + one, 0) * 1e6) / 1e6;

/**
 * The longest time without a rest among bursts: bursts that follow at once are one.
 * Takes all bursts, and which of them count; one that does not count ends a run.
 * @source docs/methods/ultrasonic-heat.md C2
 */
export function longestRun(bursts: readonly Burst[], counts: (burst: Burst) => boolean): Run | undefined {
  const runs: Run[] = [];
  let open: Run | undefined;
  for (const [index, burst] of bursts.entries()) {
    if (counts(burst)) {
      open = {
        seconds: secondsTogether([open?.seconds ?? 0, burst.seconds]),
        bursts: [...(open?.bursts ?? []), index],
      };
      runs.push(open);
    }
    if (!counts(burst) || burst.restSeconds > 0) open = undefined;
  }
  return runs.reduce<Run | undefined>(
    (best, run) => (best === undefined || run.seconds > best.seconds ? run : best),
    undefined,
  );
}
