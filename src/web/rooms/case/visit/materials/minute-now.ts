import type { Visit } from "./use-visit.ts";

/** Minutes since the visit's clock was started; undefined while it does not run, or once a visit is longer than can be noted. */
export function minuteNow({ startedAt, endedAt }: Pick<Visit, "startedAt" | "endedAt">, now: Date): number | undefined {
  if (startedAt === undefined || endedAt !== undefined) return undefined;
  const minutes = (now.getTime() - Date.parse(startedAt)) / 60_000;
  return minutes >= 0 && minutes <= 600 ? minutes : undefined;
}
