import { memo } from "react";
import { distancesAlong, pointAt } from "../../../core/geometry/course-of-path.ts";
import type { ImagePoint } from "../../../core/units.ts";
import type { FilmMeasure } from "../../../figures/film-measure.ts";
import { measureLines } from "../../../figures/measure-lines.ts";
import { handlesOf, lineOf, type Mark, measureOfBody } from "../kernels/mark-shape.ts";
import type { Choice, PlaceOnCourse } from "./light-box.ts";

interface MarksLayerOptions {
  readonly marks: readonly Mark[];
  readonly chosen: Choice | undefined;
  readonly place: PlaceOnCourse | undefined;
  /** Film pixels that one pixel of the screen covers. */
  readonly unit: number;
}

/** All that is marked on the film, in the film's own pixels; lines keep their width on the screen. */
export const MarksLayer = memo(function MarksLayer({ marks, chosen, place, unit }: MarksLayerOptions) {
  return (
    <>
      {marks.map((mark) => (
        <MarkOnFilm key={mark.id} mark={mark} chosen={mark.id === chosen?.markId ? chosen : undefined} unit={unit} />
      ))}
      <PlaceMark marks={marks} place={place} unit={unit} />
    </>
  );
});

function MarkOnFilm({ mark, chosen, unit }: { mark: Mark; chosen: Choice | undefined; unit: number }) {
  const { body } = mark;
  return (
    <g className="mark" data-shape={body.shape} data-chosen={chosen !== undefined}>
      <ShapeOfMark body={body} unit={unit} />
      {chosen !== undefined &&
        handlesOf(body).map((at, index) => (
          <Knob key={`${at.column} ${at.row}`} at={at} unit={unit} isChosen={index === chosen.handle} />
        ))}
    </g>
  );
}

/** A mark as it lies on the film, each shape by its own lines: the same that a document draws. */
export function ShapeOfMark({ body, unit }: { readonly body: Mark["body"]; readonly unit: number }) {
  const measure = measureOfBody(body);
  return measure && <MeasureOnFilm measure={measure} unit={unit} />;
}

/** A measure's lines over their dark rims; the two ends of a course differ in shape. */
export function MeasureOnFilm({ measure, unit }: { readonly measure: FilmMeasure; readonly unit: number }) {
  const { main, ends, thin, disc } = measureLines(measure, unit);
  return (
    <>
      {thin !== "" && <path className="mark-rim mark-thin" d={thin} />}
      <path className="mark-rim" d={main + ends} />
      {thin !== "" && <path className="mark-line mark-thin" d={thin} />}
      {main !== "" && <path className="mark-line" d={main} />}
      {ends !== "" && <path className="mark-line mark-tick" d={ends} />}
      {disc && <circle className="mark-disc" cx={disc.x} cy={disc.y} r={3.5 * unit} />}
    </>
  );
}

/** A line over a dark rim, so that it stands on bright and on dark places of a film. */
export const Line = ({
  points,
  className = "",
}: {
  readonly points: readonly ImagePoint[];
  readonly className?: string;
}) => {
  const d = pathOf(points);
  return (
    <>
      <path className="mark-rim" d={d} />
      <path className={`mark-line ${className}`} d={d} />
    </>
  );
};

const pathOf = (points: readonly ImagePoint[]): string =>
  points.map(({ column, row }, index) => `${index === 0 ? "M" : "L"}${column} ${row}`).join("");

/** A place that can be taken hold of. */
export const Knob = ({ at, unit, isChosen = false }: { at: ImagePoint; unit: number; isChosen?: boolean }) => (
  <circle className="mark-knob" data-chosen={isChosen} cx={at.column} cy={at.row} r={(isChosen ? 6 : 4.5) * unit} />
);

/** The place on a course that the pointer names, here or on the graph beside the film. */
function PlaceMark({ marks, place, unit }: { marks: readonly Mark[]; place: PlaceOnCourse | undefined; unit: number }) {
  const mark = marks.find(({ id }) => id === place?.markId);
  if (mark === undefined || place === undefined) return null;
  const line = lineOf(mark.body);
  const along = distancesAlong(line);
  const at = pointAt(line, along, (along.at(-1) ?? 0) * place.share);
  return <circle className="mark-place" cx={at.column} cy={at.row} r={6 * unit} />;
}
