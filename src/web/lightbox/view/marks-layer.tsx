import { memo } from "react";
import { distancesAlong, pointAt } from "../../../core/geometry/course-of-path.ts";
import type { ImagePoint } from "../../../core/units.ts";
import { handlesOf, lineOf, type Mark } from "../kernels/mark-shape.ts";
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
  const line = lineOf(body);
  return (
    <g className="mark" data-shape={body.shape} data-chosen={chosen !== undefined}>
      {line.length > 1 && <Line points={line} />}
      <Ends mark={mark} unit={unit} />
      {chosen !== undefined &&
        handlesOf(body).map((at, index) => (
          <Knob key={`${at.column} ${at.row}`} at={at} unit={unit} isChosen={index === chosen.handle} />
        ))}
    </g>
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

/** The two ends of a course differ in shape: a ring at the orifice, a disc at the apex. Lengths end in ticks. */
function Ends({ mark: { body }, unit }: { mark: Mark; unit: number }) {
  const line = lineOf(body);
  const [first, last] = [line[0], line.at(-1)];
  if (first === undefined || last === undefined) return null;
  if (body.shape === "trace")
    return (
      <>
        <circle className="mark-ring" cx={first.column} cy={first.row} r={5 * unit} />
        <circle className="mark-disc" cx={last.column} cy={last.row} r={3.5 * unit} />
      </>
    );
  if (body.shape === "spot") return <Cross at={first} unit={unit} />;
  if (body.shape === "outline") return null;
  return <path className="mark-line mark-tick" d={ticksOf(first, last, 6 * unit)} />;
}

const Cross = ({ at: { column, row }, unit }: { at: ImagePoint; unit: number }) => {
  const arm = 8 * unit;
  const d = `M${column - arm} ${row}h${2 * arm}M${column} ${row - arm}v${2 * arm}`;
  return (
    <>
      <path className="mark-rim" d={d} />
      <path className="mark-line mark-tick" d={d} />
    </>
  );
};

/** A tick across each end of a length. */
function ticksOf(from: ImagePoint, to: ImagePoint, half: number): string {
  const length = Math.hypot(to.column - from.column, to.row - from.row) || 1;
  const [across, down] = [(-(to.row - from.row) / length) * half, ((to.column - from.column) / length) * half];
  return [from, to]
    .map(({ column, row }) => `M${column - across} ${row - down}L${column + across} ${row + down}`)
    .join("");
}

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
