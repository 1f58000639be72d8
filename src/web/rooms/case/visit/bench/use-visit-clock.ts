import { useEffect, useState } from "react";
import { type VisitClock, visitClock } from "../../../../../record/chairside/visit-clock.ts";
import type { Visit } from "../materials/use-visit.ts";

/** How the visit's clock stands, looked at once a second while it runs. */
export function useVisitClock(visit: Visit): VisitClock {
  const [now, setNow] = useState(() => Date.now());
  const runs = visit.startedAt !== undefined && visit.endedAt === undefined;
  useEffect(() => {
    if (!runs) return undefined;
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(timer);
  }, [runs]);
  return visitClock(visit, Math.max(now, Date.parse(visit.startedAt ?? "1970-01-01")));
}
