import { useMemo, useRef, useState } from "react";
import { bendShown } from "../../../../figures/bend-shown.ts";
import type { CourseRead } from "../../../../ledger/course-in-space.ts";
import { sampleAt } from "../../../lightbox/kernels/ledger-reading.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import { numberInWords, quantityInWords, withUnit } from "../../../parts/figures-in-words.ts";
import { useTwoView } from "./two-view-work.ts";

/** True against apparent bend along the canal; the place under the pointer is shown here, on the films and in space. */
export function BendGraph({ course }: { readonly course: CourseRead }) {
  const { films, place, setPlace } = useTwoView();
  const element = useRef<HTMLDivElement>(null);
  const [span, setSpan] = useState<Span>();
  const { turn, seen } = course;
  const figure = useMemo(
    () =>
      bendShown({
        turn,
        films: seen.map(({ profile }, index) => ({ name: films[index]?.name ?? `film ${index + 1}`, profile })),
        ...{ theme: "dark", widthPx: 400 },
      }),
    [turn, seen, films],
  );
  const show = (share: number) => {
    setSpan(spanOfCurve(element.current));
    setPlace(Math.min(1, Math.max(0, share)));
  };
  const words = place === undefined ? undefined : wordsAt(course, films, place);
  return (
    <div className="bend-graph">
      <h2>True and apparent bend</h2>
      <div
        ref={element}
        className="curvature-graph-plot"
        role="slider"
        tabIndex={0}
        aria-label="Place along the canal"
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={Math.round((place ?? 0) * 100)}
        aria-valuetext={words ?? "none"}
        onPointerMove={(event) => {
          const found = spanOfCurve(element.current);
          if (found !== undefined) show((event.clientX - found.leftPx) / found.widthPx);
        }}
        onPointerLeave={() => setPlace(undefined)}
        onKeyDown={(event) => {
          const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
          if (step === undefined) return;
          event.preventDefault();
          show((place ?? 0) + (step * (event.shiftKey ? 10 : 2)) / 100);
        }}
        onBlur={() => setPlace(undefined)}
      >
        <FigureView figure={figure} />
        {place !== undefined && span !== undefined && (
          <span
            className="curvature-graph-place"
            style={{ left: `${(span.from + (span.to - span.from) * place) * 100}%` }}
          />
        )}
      </div>
      <p className="quiet curvature-graph-words">
        {words ?? "Point at the graph or beside a trace: the place shows on the films and in space."}
      </p>
    </div>
  );
}

/** How far the canal has turned at a place, in space and on each film. */
function wordsAt({ turn, seen }: CourseRead, films: readonly { readonly name: string }[], place: number): string {
  const at = sampleAt(turn, place);
  if (at === undefined) return "";
  const degrees = (value: number) => withUnit(numberInWords(value, 0), "°");
  const onFilms = seen.map(
    ({ profile }, index) => `${degrees(sampleAt(profile, place)?.turnDeg ?? 0)} on ${films[index]?.name ?? "a film"}`,
  );
  return `${quantityInWords(at.sMm, "mm")} from the orifice: turned by ${degrees(at.turnDeg)} in space, ${onFilms.join(", ")}`;
}

interface Span {
  readonly from: number;
  readonly to: number;
  readonly leftPx: number;
  readonly widthPx: number;
}

/** The drawing knows its own scale; its curve begins at the orifice and ends at the foramen. */
function spanOfCurve(element: HTMLElement | null): Span | undefined {
  const curve = element?.querySelector('[data-part="curve"]')?.getBoundingClientRect();
  const whole = element?.getBoundingClientRect();
  if (curve === undefined || whole === undefined || curve.width === 0) return undefined;
  return {
    ...{ from: (curve.left - whole.left) / whole.width, to: (curve.right - whole.left) / whole.width },
    ...{ leftPx: curve.left, widthPx: curve.width },
  };
}
