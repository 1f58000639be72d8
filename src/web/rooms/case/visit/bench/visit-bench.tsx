import { visitStanding } from "../../../../../record/chairside/visit-standing.ts";
import { ClinicOfVisit } from "./clinic-of-visit.tsx";
import { StandingChips } from "./standing-chips.tsx";
import { StepsOfVisit } from "./steps-of-visit.tsx";
import { TimelineOfVisit } from "./timeline-of-visit.tsx";
import { useBench, useToothOfCase } from "./use-bench.ts";
import { VisitClockFace } from "./visit-clock-face.tsx";
import { VisitTiles } from "./visit-tiles.tsx";

/** What is in reach of a gloved hand: the clock, which tooth, what is open, and a large target for everything that is noted. */
export function VisitBench() {
  const { visit, readOnly } = useBench("Visit");
  const { twoDigit, written, name } = useToothOfCase();
  return (
    <>
      <section className="bench" aria-label="At the chair" data-ended={visit.endedAt !== undefined}>
        <div className="bench-head">
          <VisitClockFace />
          {twoDigit !== "" && (
            <p className="bench-tooth">
              <strong>{written}</strong> <span>{name}</span>
            </p>
          )}
        </div>
        {!readOnly && <VisitTiles />}
      </section>
      <StandingChips standing={visitStanding(visit)} readOnly={readOnly} />
      <ClinicOfVisit />
      <StepsOfVisit />
      <TimelineOfVisit />
    </>
  );
}
