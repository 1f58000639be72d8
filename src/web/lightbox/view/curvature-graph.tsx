import { useMemo, useRef, useState } from "react";
import { curvatureProfile } from "../../../figures/curvature-profile.ts";
import { FigureView } from "../../parts/figure-view.tsx";
import { quantityInWords } from "../../parts/figures-in-words.ts";
import { type CourseStart, startWords } from "../kernels/course-start.ts";
import { type measuredCourse, sampleAt, withoutSide } from "../kernels/ledger-reading.ts";
import type { LightBox } from "./light-box.ts";

interface CurvatureGraphOptions {
  readonly box: LightBox;
  readonly markId: string;
  readonly course: NonNullable<ReturnType<typeof measuredCourse>>;
  readonly start: CourseStart;
}

/** Where the curve of the graph begins and ends across, as shares of its width. */
interface Span {
  readonly from: number;
  readonly to: number;
}

/** The graph of curvature along the canal; the place under the pointer is shown here and on the film. */
export function CurvatureGraph({ box, markId, course, start }: CurvatureGraphOptions) {
  const element = useRef<HTMLDivElement>(null);
  const [span, setSpan] = useState<Span>();
  const { profile, atMm, maxCurvaturePerMm } = course;
  const figure = useMemo(
    () =>
      curvatureProfile({
        samples: withoutSide(profile),
        ...(atMm === undefined ? {} : { tightest: { sMm: atMm, curvaturePerMm: maxCurvaturePerMm } }),
        ...{ theme: "dark", widthPx: 380, beginsAt: startWords[start] },
      }),
    [profile, atMm, maxCurvaturePerMm, start],
  );
  const share = box.place?.markId === markId ? box.place.share : undefined;
  const sample = share === undefined ? undefined : sampleAt(profile, share);
  const point = (event: React.PointerEvent) => {
    const found = spanOfCurve(element.current);
    if (found === undefined) return;
    setSpan(found.span);
    const along = (event.clientX - found.left) / found.width;
    box.setPlace({ markId, share: Math.min(1, Math.max(0, along)) });
  };
  const key = (event: React.KeyboardEvent) => {
    const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    setSpan(spanOfCurve(element.current)?.span);
    box.setPlace({ markId, share: Math.min(1, Math.max(0, (share ?? 0) + step / (profile.length - 1))) });
  };
  const at = span ?? spanOfCurve(element.current)?.span;
  return (
    <div className="curvature-graph">
      <div
        ref={element}
        className="curvature-graph-plot"
        role="slider"
        tabIndex={0}
        aria-label="Place along the canal"
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={Math.round((share ?? 0) * 100)}
        aria-valuetext={sample === undefined ? "none" : placeInWords(sample, start)}
        onPointerMove={point}
        onPointerLeave={() => box.setPlace(undefined)}
        onKeyDown={key}
        onBlur={() => box.setPlace(undefined)}
      >
        <FigureView figure={figure} />
        {share !== undefined && at !== undefined && (
          <span className="curvature-graph-place" style={{ left: `${(at.from + (at.to - at.from) * share) * 100}%` }} />
        )}
      </div>
      <p className="quiet curvature-graph-words">
        {sample === undefined
          ? "Point at the graph or at the course: each shows its place on the other."
          : placeInWords(sample, start)}
      </p>
    </div>
  );
}

const placeInWords = ({ sMm, curvaturePerMm }: { sMm: number; curvaturePerMm: number }, start: CourseStart): string =>
  `${quantityInWords(sMm, "mm")} from ${startWords[start]}: curvature ${quantityInWords(Math.abs(curvaturePerMm), "per mm")}`;

/** The drawing knows its own scale; the curve in it begins at the orifice and ends at the apex. */
function spanOfCurve(element: HTMLElement | null) {
  const curve = element?.querySelector('[data-part="curve"]')?.getBoundingClientRect();
  const whole = element?.getBoundingClientRect();
  if (curve === undefined || whole === undefined || curve.width === 0) return undefined;
  const span = { from: (curve.left - whole.left) / whole.width, to: (curve.right - whole.left) / whole.width };
  return { left: curve.left, width: curve.width, span };
}
