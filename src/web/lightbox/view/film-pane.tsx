import "./film.css";
import type { ComponentProps, ReactNode } from "react";
import type { Mark } from "../kernels/mark-shape.ts";
import type { MeasuredMark } from "../kernels/measured-marks.ts";
import { FilmCanvas } from "./film-canvas.tsx";
import type { Choice, PlaceOnCourse } from "./light-box.ts";
import { MarksLayer } from "./marks-layer.tsx";
import { MeasuresLayer } from "./measures-layer.tsx";
import { NamesLayer } from "./names-layer.tsx";
import type { FilmView } from "./use-film-view.ts";
import type { PlacementUse } from "./use-placement.ts";

interface FilmPaneOptions {
  readonly view: FilmView;
  readonly marks?: readonly Mark[] | undefined;
  readonly chosen?: Choice | undefined;
  /** What was measured of the marks. */
  readonly measured?: readonly MeasuredMark[] | undefined;
  readonly place?: PlaceOnCourse | undefined;
  /** What is drawn under the marks, in the film's own pixels. */
  readonly beneath?: ((placing: PlacementUse) => ReactNode) | undefined;
  /** What more is drawn over the film, in the film's own pixels; `unit` is how many of them a pixel of the screen covers. */
  readonly drawing?: ((placing: PlacementUse, unit: number) => ReactNode) | undefined;
  /** What is drawn above all that, in pixels of the pane. */
  readonly above?: ((placing: PlacementUse) => ReactNode) | undefined;
  /** What the pane is and does: role, name, keys, pointer. */
  readonly stage: Omit<ComponentProps<"div">, "ref" | "className" | "children"> & { readonly "data-tool"?: string };
  /** Words in the pane, as what its keys do. */
  readonly children?: ReactNode;
}

const noMarks: readonly Mark[] = [];
const noneMeasured: readonly MeasuredMark[] = [];

/** A film in a pane: its pixels, what is marked on it, and what else is drawn over it. It can stand several times on one screen. */
export function FilmPane({ view, stage, children, ...over }: FilmPaneOptions) {
  return (
    <div {...stage} ref={view.pane.element} className="film-stage">
      {children}
      <OnThePane view={view} {...over} />
    </div>
  );
}

function OnThePane({
  view,
  marks = noMarks,
  chosen,
  measured = noneMeasured,
  place,
  beneath,
  drawing,
  above,
}: Omit<FilmPaneOptions, "stage" | "children">) {
  const { pixels, placing } = view;
  if (pixels.is === "loading") return <p className="film-waiting">Opening the film</p>;
  if (pixels.is === "refused") return <p className="film-refused">{pixels.says}</p>;
  if (placing === undefined) return null;
  const { matrix, placement, pane } = placing;
  const unit = 1 / placement.zoom;
  return (
    <>
      <FilmCanvas
        {...{ film: pixels.film, line: pixels.line, matrix }}
        {...{ window: view.window, look: view.look, isMoving: view.isMoving }}
      />
      <svg className="film-overlay" width={pane.width} height={pane.height} aria-hidden="true">
        <g transform={`matrix(${matrix.join(" ")})`}>
          {beneath?.(placing)}
          <MeasuresLayer measured={measured} chosen={chosen?.markId} unit={unit} />
          <MarksLayer marks={marks} chosen={chosen} place={place} unit={unit} />
          {drawing?.(placing, unit)}
        </g>
        <NamesLayer {...{ marks, measured, placing }} chosen={chosen?.markId} />
        {above?.(placing)}
      </svg>
    </>
  );
}
