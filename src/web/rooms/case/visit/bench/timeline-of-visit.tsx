import { useEffect, useMemo, useRef, useState } from "react";
import { visitTimeline } from "../../../../../figures/visit-timeline.ts";
import { visitTimelineOf } from "../../../../../record/chairside/visit-timeline.ts";
import { FigureView } from "../../../../parts/figure-view.tsx";
import { useBench } from "./use-bench.ts";
import { useVisitClock } from "./use-visit-clock.ts";

/** The visit over its minutes, as wide as the page. */
export function TimelineOfVisit() {
  const { visit } = useBench("Visit");
  const { stands, minutes } = useVisitClock(visit);
  const nowMin = stands === "runs" ? minutes : undefined;
  const place = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(place);
  const timeline = useMemo(() => visitTimelineOf(visit), [visit]);
  const figure = useMemo(
    () => visitTimeline({ ...timeline, nowMin, theme: "paper", widthPx }),
    [timeline, nowMin, widthPx],
  );
  const isEmpty = timeline.lanes.length === 0 && timeline.withoutMinute.length === 0;
  return (
    <section className="form-part bench-timeline" aria-labelledby="visit-timeline">
      <h2 id="visit-timeline">By the clock</h2>
      <div ref={place}>
        {isEmpty ? (
          <p className="quiet">Nothing is noted yet. What is noted while the clock runs stands here at its minute.</p>
        ) : (
          <FigureView figure={figure} />
        )}
      </div>
    </section>
  );
}

function useWidth(place: { readonly current: HTMLElement | null }): number {
  const [width, setWidth] = useState(700);
  useEffect(() => {
    const element = place.current;
    if (element === null) return undefined;
    const watch = new ResizeObserver(([entry]) => setWidth(Math.max(300, Math.floor(entry?.contentRect.width ?? 700))));
    watch.observe(element);
    return () => watch.disconnect();
  }, [place]);
  return width;
}
