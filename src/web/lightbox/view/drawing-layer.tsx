import type { ImagePoint } from "../../../core/units.ts";
import { pointsOfCourse } from "../kernels/course-segments.ts";
import type { AxisState } from "../tools/axis-tool.ts";
import type { OutlineState } from "../tools/outline-tool.ts";
import type { ToolState } from "../tools/tools.ts";
import type { TraceState } from "../tools/trace-tool.ts";
import { Crosshair } from "./crosshair.tsx";
import type { Asking } from "./light-box.ts";
import { Knob, Line, ShapeOfMark } from "./marks-layer.tsx";

interface DrawingLayerOptions {
  readonly state: ToolState;
  readonly asking: Asking | undefined;
  readonly crosshair: ImagePoint | undefined;
  readonly unit: number;
}

/** What the hand is drawing and is not recorded yet. */
export const DrawingLayer = ({ state, asking, crosshair, unit }: DrawingLayerOptions) => (
  <g className="drawing">
    {(state.tool === "trace" || state.tool === "fragment") && <TraceDrawing state={state} unit={unit} />}
    {state.tool === "outline" && <OutlineDrawing state={state} unit={unit} />}
    {state.tool === "crownRoot" && <AxisDrawing state={state} unit={unit} />}
    {(state.tool === "known" || state.tool === "distance" || state.tool === "wall") && state.from && state.to && (
      <TwoPoints from={state.from} to={state.to} unit={unit} />
    )}
    {asking?.what === "length" && <TwoPoints from={asking.from} to={asking.to} unit={unit} />}
    {asking?.what === "owner" && <ShapeOfMark body={asking.body} unit={unit} />}
    {crosshair !== undefined && <Crosshair at={crosshair} unit={unit} />}
  </g>
);

function TraceDrawing({ state: { course, ahead, pointer }, unit }: { state: TraceState; unit: number }) {
  const last = course.anchors.at(-1);
  const leading = ahead?.points ?? (last && pointer ? [last, pointer] : []);
  return (
    <>
      {course.anchors.length > 1 && <Line points={pointsOfCourse(course)} />}
      {leading.length > 1 && <Line points={leading} className={ahead?.points ? "" : "mark-waiting"} />}
      {course.anchors.map((at) => (
        <Knob key={`${at.column} ${at.row}`} at={at} unit={unit} />
      ))}
    </>
  );
}

/** An outline being drawn, with the line to the pointer. */
export function OutlineDrawing({ state: { points, pointer, sweeping }, unit }: { state: OutlineState; unit: number }) {
  const line = pointer === undefined || sweeping ? points : [...points, pointer];
  const first = points[0];
  return (
    <>
      {line.length > 1 && points.length > 0 && <Line points={line} />}
      {first !== undefined && <Knob at={first} unit={unit} isChosen={points.length >= 3} />}
    </>
  );
}

/** Cusp, level and apex as far as they are marked, and the line to the pointer. */
function AxisDrawing({ state: { places, pointer }, unit }: { state: AxisState; unit: number }) {
  const line = pointer === undefined || places.length === 0 ? places : [...places, pointer];
  return (
    <>
      {line.length > 1 && <Line points={line} />}
      {places.map((at) => (
        <Knob key={`${at.column} ${at.row}`} at={at} unit={unit} />
      ))}
    </>
  );
}

const TwoPoints = ({ from, to, unit }: { from: ImagePoint; to: ImagePoint; unit: number }) => (
  <>
    <Line points={[from, to]} />
    <Knob at={from} unit={unit} />
    <Knob at={to} unit={unit} />
  </>
);
