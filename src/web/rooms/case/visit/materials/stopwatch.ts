import { useEffect, useState } from "react";

interface Watch {
  /** When the tip began to work; absent while it rests. */
  readonly since?: number;
  /** When it stopped last. */
  readonly stopped?: number;
}

/** Outlives the dialog, so that a pause is counted while something else is entered. */
const watches = new Map<string, Watch>();

/** The stopwatch of a visit: since when the tip works, and since when it rests. */
export function useStopwatch(visitId: string) {
  const [watch, setWatch] = useState<Watch>(() => watches.get(visitId) ?? {});
  const now = useTenths(watch.since !== undefined || watch.stopped !== undefined);
  const keep = (next: Watch) => {
    watches.set(visitId, next);
    setWatch(next);
  };
  return {
    runs: watch.since !== undefined,
    seconds: watch.since === undefined ? undefined : secondsBetween(watch.since, now),
    rested: watch.stopped === undefined || watch.since !== undefined ? undefined : secondsBetween(watch.stopped, now),
    /** Gives the pause since the last burst; nothing where this window did not see it end. */
    start: (): number | undefined => {
      const at = Date.now();
      keep({ ...watch, since: at });
      return watch.stopped === undefined ? undefined : secondsBetween(watch.stopped, at);
    },
    /** Gives how long the tip worked. */
    stop: (): number => {
      const at = Date.now();
      keep({ stopped: at });
      return secondsBetween(watch.since ?? at, at);
    },
    /** A burst was written by hand: it is not known when it ended. */
    forget: () => keep({}),
  };
}

/** To a tenth of a second, and never nothing. */
export const secondsBetween = (from: number, to: number): number => Math.max(0.1, Math.round((to - from) / 100) / 10);

function useTenths(ticks: boolean): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (!ticks) return undefined;
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), 200);
    return () => clearInterval(timer);
  }, [ticks]);
  return now;
}
