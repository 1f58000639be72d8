import { type VisitClock, withClockStarted, withClockStopped } from "../../../../../record/chairside/visit-clock.ts";
import { Button } from "../../../../parts/button.tsx";
import { timeInWords } from "../../../../parts/days-in-words.ts";
import { useShortcut } from "../../../../parts/shortcuts.ts";
import type { Visit } from "../materials/use-visit.ts";
import { useBench } from "./use-bench.ts";
import { useVisitClock } from "./use-visit-clock.ts";

/** The running clock of a visit: its start stands in the record, so that a closed window loses nothing. */
export function VisitClockFace() {
  const { visit, record, readOnly } = useBench("Clock");
  const clock = useVisitClock(visit);
  const runs = clock.stands === "runs" || clock.stands === "forgotten";
  const press = () => {
    if (readOnly) return false;
    const now = new Date();
    if (runs)
      record(
        withClockStopped(visit, now),
        clock.stands === "forgotten" ? "stopped" : `stopped at ${clock.minutes} min`,
      );
    else record(withClockStarted(visit, now), clock.stands === "ended" ? "goes on" : `started at ${timeInWords(now)}`);
    return true;
  };
  useShortcut("k", "Visit", "Start or stop the visit's clock", press);
  return (
    <div className="bench-clock" data-runs={clock.stands === "runs"}>
      <span className="bench-clock-time" role="timer" aria-label="Minutes of the visit">
        {clock.stands === "notStarted" && visit.minutes !== undefined ? visit.minutes : clock.minutes}
        <small> min</small>
      </span>
      {!readOnly && (
        <Button weight={clock.stands === "notStarted" ? "strong" : "plain"} hint="k" onClick={press}>
          {runs ? "Stop the clock" : clock.stands === "ended" ? "Let it go on" : "Start the clock"}
        </Button>
      )}
      <span className="quiet">{faceSays(visit, clock.stands)}</span>
    </div>
  );
}

function faceSays({ startedAt, endedAt, minutes }: Visit, stands: VisitClock["stands"]): string {
  if (startedAt === undefined) return minutes === undefined ? "not started" : "as it was written";
  const since = timeInWords(new Date(startedAt));
  if (endedAt !== undefined) return `${since} to ${timeInWords(new Date(endedAt))}`;
  return stands === "forgotten" ? `runs since ${since}, for over 10 hours: was it forgotten?` : `since ${since}`;
}
