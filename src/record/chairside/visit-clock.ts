import type { BodyOf } from "../parts.ts";

type Visit = BodyOf<"visit">;

/** The longest that a visit is taken to last; a clock that ran on was forgotten. */
const longestMin = 600;

/** How a visit's clock stands at a moment. */
export interface VisitClock {
  readonly stands: "notStarted" | "runs" | "forgotten" | "ended";
  /** Whole minutes since it was started, up to now or to its end; 0 where it was not. */
  readonly minutes: number;
}

/**
 * How a visit's clock stands.
 * Takes the visit and the moment that is now (milliseconds since 1970).
 * Gives `forgotten` where it has run for more than 10 hours: its minutes then say nothing of the visit.
 */
export function visitClock({ startedAt, endedAt }: Pick<Visit, "startedAt" | "endedAt">, now: number): VisitClock {
  if (startedAt === undefined) return { stands: "notStarted", minutes: 0 };
  const until = endedAt === undefined ? now : Date.parse(endedAt);
  const minutes = Math.max(0, Math.floor((until - Date.parse(startedAt)) / 60_000));
  if (endedAt !== undefined) return { stands: "ended", minutes };
  return { stands: minutes > longestMin ? "forgotten" : "runs", minutes };
}

/** The minute at which something is noted now; absent while the clock does not run, so that no minute is made up. */
export function minuteNow(visit: Pick<Visit, "startedAt" | "endedAt">, now: number): number | undefined {
  const { stands, minutes } = visitClock(visit, now);
  return stands === "runs" ? minutes : undefined;
}

/** The visit with its clock started at a moment, or going on from its start after it was stopped. */
export function withClockStarted(visit: Visit, now: Date): Visit {
  const { endedAt: _stopped, ...running } = visit;
  return { ...running, startedAt: visit.startedAt ?? now.toISOString() };
}

/**
 * The visit with its clock stopped, and its minutes by it, at least one.
 * A forgotten clock is stopped without writing minutes: they are the person's to say.
 */
export function withClockStopped(visit: Visit, now: Date): Visit {
  const ended = { ...visit, endedAt: now.toISOString() };
  const { stands, minutes } = visitClock(visit, now.getTime());
  return stands === "runs" ? { ...ended, minutes: Math.max(1, minutes) } : ended;
}
