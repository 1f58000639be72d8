import { type Frame, turnedFrame } from "../../geometry/frame.ts";
import { angleBetween, dot, minus, mix, unit, type Vector } from "../../geometry/vector.ts";
import { type Family, isOpen } from "./family.ts";
import { onLine, type Trace } from "./trace.ts";

/**
 * Starting parameters of a family for a trace: a fixed net of places where its bends may lie, each with the turns that
 * the line through the points shows there.
 * Gives parameter sets in the order of `parameterKinds`; always the same for the same trace.
 */
export function startsOf(family: Family, trace: Trace): Float64Array[] {
  const length = trace.lengthMm;
  return edgesToTry(family).map((edges) =>
    startWith(
      family,
      trace,
      edges.map(([from, to]) => [from * length, to * length]),
    ),
  );
}

type Edges = readonly (readonly [number, number])[];

const middles = [0.2, 0.35, 0.5, 0.65, 0.8, 0.92];
const lengths = [0.12, 0.25, 0.5];
const pairs = [
  [0.2, 0.5],
  [0.25, 0.8],
  [0.35, 0.65],
  [0.5, 0.8],
  [0.6, 0.9],
  [0.75, 0.92],
] as const;
const triples = [
  [0.05, 0.5, 0.95],
  [0.1, 0.3, 0.6],
  [0.2, 0.4, 0.7],
  [0.3, 0.6, 0.9],
  [0.45, 0.65, 0.85],
  [0.55, 0.8, 0.95],
] as const;

function edgesToTry(family: Family): Edges[] {
  const closeEnds = ([from, to]: readonly [number, number]): readonly [number, number] => [
    family.straightStart ? from : 0,
    family.straightEnd ? to : 1,
  ];
  if (family.bends === 0) return [[]];
  if (family.bends === 1) return oneBend(family);
  if (family.touching)
    return triples.map(([from, knot, to]) => [
      [family.straightStart ? from : 0, knot],
      [knot, family.straightEnd ? to : 1],
    ]);
  return pairs.flatMap(([first, second]) =>
    [0.07, 0.14].map((half): Edges => {
      const before = Math.min(first + half, (first + second) / 2 - 0.01);
      const after = Math.max(second - half, (first + second) / 2 + 0.01);
      const outer = closeEnds([Math.max(0.01, first - half), Math.min(0.99, second + half)]);
      return [
        [outer[0], before],
        [after, outer[1]],
      ];
    }),
  );
}

function oneBend(family: Family): Edges[] {
  if (!family.straightStart && !family.straightEnd) return [[[0, 1]]];
  if (!family.straightEnd) return middles.map((from) => [[from, 1]]);
  if (!family.straightStart) return middles.map((to) => [[0, to]]);
  return middles
    .flatMap((middle) => lengths.map((length) => [middle - length / 2, middle + length / 2] as const))
    .filter(([from, to]) => from > 0 && to < 1)
    .map((edges) => [edges]);
}

function startWith(family: Family, trace: Trace, edges: Edges): Float64Array {
  const { across, frame } = trace.anchor;
  const length = trace.lengthMm;
  const cuts = [0, ...edges.flat(), length];
  const directions = edges.length === 0 ? [heading(trace, 0, length)] : [];
  for (let at = 0; at + 1 < cuts.length && edges.length > 0; at += 2)
    directions.push(heading(trace, cuts[at] ?? 0, cuts[at + 1] ?? length));
  const first = directions[0] ?? frame.tangent;
  const slopes = slopesOf(frame, first, across);
  const turns = turnsOf(frame, directions, across);
  const vectors = turns.map((turn, index) => {
    const [from, to] = edges[index] ?? [0, length];
    return isOpen(family, index) ? turn.map((part) => part / (to - from)) : turn;
  });
  const share = family.ramped ? [0.3] : [];
  return Float64Array.from([
    ...slopes.map(() => 0),
    ...slopes,
    ...positionsOf(family, edges),
    ...vectors.flat(),
    ...share,
  ]);
}

/** The direction of the line through the points between two distances; of a short piece around them where they are close. */
function heading(trace: Trace, from: number, to: number): Vector {
  const least = 0.06 * trace.lengthMm;
  const middle = (from + to) / 2;
  const half = Math.max(to - from, least) / 2;
  const low = Math.max(0, Math.min(middle - half, trace.lengthMm - least));
  const high = Math.min(trace.lengthMm, Math.max(middle + half, least));
  return unit(minus(onLine(trace, high), onLine(trace, low)));
}

function slopesOf(frame: Frame, direction: Vector, across: 1 | 2): number[] {
  const forward = Math.max(dot(direction, frame.tangent), 0.3);
  const parts = [dot(direction, frame.first) / forward, dot(direction, frame.second) / forward];
  return parts.slice(0, across);
}

/** Between one direction and the next, the turn as parts across the course. */
function turnsOf(anchor: Frame, directions: readonly Vector[], across: 1 | 2): number[][] {
  let frame = anchor;
  const [first] = directions;
  if (first !== undefined) frame = turnedTo(frame, first);
  return directions.slice(1).map((direction) => {
    const angle = angleBetween(frame.tangent, direction);
    const lateral = [dot(direction, frame.first), dot(direction, frame.second)].slice(0, across);
    const size = Math.hypot(...lateral);
    frame = turnedTo(frame, direction);
    return lateral.map((part) => (size === 0 ? 0 : (angle * part) / size));
  });
}

function turnedTo(frame: Frame, direction: Vector): Frame {
  const angle = angleBetween(frame.tangent, direction);
  const along = dot(direction, frame.tangent);
  const towards = unit(mix(1, direction, -along, frame.tangent));
  return angle < 1e-12 ? frame : turnedFrame(frame, towards, angle);
}

function positionsOf(family: Family, edges: Edges): number[] {
  const [one, two] = edges;
  if (one === undefined) return [];
  const closed = ([from, to]: readonly [number, number]): number[] => [(from + to) / 2, to - from];
  if (two === undefined) {
    if (family.straightStart && family.straightEnd) return closed(one);
    return [...(family.straightStart ? [one[0]] : []), ...(family.straightEnd ? [one[1]] : [])];
  }
  if (family.touching)
    return [...(family.straightStart ? [one[0]] : []), one[1], ...(family.straightEnd ? [two[1]] : [])];
  return [...(family.straightStart ? closed(one) : [one[1]]), ...(family.straightEnd ? closed(two) : [two[0]])];
}
