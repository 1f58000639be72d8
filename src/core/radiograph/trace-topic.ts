import dijkstra from "../../../data/dijkstra-1959/source.json" with { type: "json" };
import mortensen from "../../../data/mortensen-barrett-1998/source.json" with { type: "json" };
import sato from "../../../data/sato-1998/source.json" with { type: "json" };
import { type Basis, sourcesOf } from "../basis.ts";
import { type Fault, Refusal } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { type ImagePoint, px } from "../units.ts";
import { type TraceInput, type TraceOutput, traceInput, traceOutput } from "./trace/trace-input.ts";
import { type TracedCourse, tracedCourse } from "./trace/traced-course.ts";

const sources = sourcesOf([mortensen, dijkstra, sato]);

/**
 * The course between marked places along a dark or bright line of a film, as the least-cost path over a picture of costs.
 * @throws Refusal `input.impossible` for places outside the picture, places in one pixel, or sizes that disagree.
 * @source Mortensen and Barrett 1998, Dijkstra 1959 (memory); docs/methods/trace.md
 */
export const traceTopic = defineTopic({
  name: "trace",
  version: 2,
  summary: "The course between marked places along a dark or bright line of a film.",
  asked: "onTheShell",
  input: traceInput,
  output: traceOutput,
  sources,
  compute: trace,
});

function trace(input: TraceInput): TraceOutput {
  const { cost, columns, rows } = input;
  const faults = faultsOf(input);
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot trace: the places or the picture don't fit together", {}, faults);
  const course = tracedCourse({ cost, columns, rows }, [input.from, ...input.via, input.to].map(placeOf));
  return {
    points: course.points.map(pairOf),
    path: course.path.map(pairOf),
    cost: course.cost,
    basis,
    cautions: cautionsOf(course),
    notComputed: [],
  };
}

const placeOf = ([u, v]: readonly [number, number]): ImagePoint => ({ column: px(u), row: px(v) });
const pairOf = ({ column, row }: ImagePoint): [number, number] => [column, row];

function faultsOf({ cost, columns, rows, from, to, via }: TraceInput): Fault[] {
  if (cost.length !== columns * rows)
    return [
      { path: "cost", says: `holds ${cost.length} numbers; ${columns} columns of ${rows} rows need ${columns * rows}` },
    ];
  const named: [string, readonly [number, number]][] = [
    ["from", from],
    ...via.map((place, index): [string, readonly [number, number]] => [`via[${index}]`, place]),
    ["to", to],
  ];
  const isOn = ([u, v]: readonly [number, number]) => u >= -0.5 && v >= -0.5 && u < columns - 0.5 && v < rows - 0.5;
  const outside = named.flatMap(([path, place]): Fault[] =>
    isOn(place) ? [] : [{ path, says: `[${place}] is outside the film of ${columns} x ${rows} px` }],
  );
  const pixels = new Set(named.map(([, [u, v]]) => `${Math.round(u)} ${Math.round(v)}`));
  if (outside.length > 0 || pixels.size > 1) return outside;
  return [{ path: "to", says: `[${to}] is in the same pixel as from; two places are needed` }];
}

/** A path that costs more than this for each pixel of its way lies beside every line more than on one. */
const besideLines = 0.9;

function cautionsOf({ path, cost }: TracedCourse): string[] {
  const length = path.slice(1).reduce((sum, { column, row }, index) => {
    const before = path[index];
    return before === undefined ? sum : sum + Math.hypot(column - before.column, row - before.row);
  }, 0);
  if (cost <= besideLines * length) return [];
  return ["For much of its way the course follows no line that stands out; look at it and mark places between."];
}

const basis: Basis = {
  formula: "Least-cost path over eight neighbours, smoothed by two means over seventeen pixels",
  assumptions: [
    "The canal is the line that stands out between the places; the course is a proposal for a person to judge, and it finds no anatomy by itself.",
    "A course passes each place exactly; between them it may be off by a pixel or two.",
  ],
  sources: sources.map(({ id }) => id),
};
