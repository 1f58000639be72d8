import { type Frame, tiltedFrame } from "../../geometry/frame.ts";
import { plus, type Vector } from "../../geometry/vector.ts";
import { type Course, layOut, type Piece } from "./course.ts";
import { type Family, isOpen } from "./family.ts";

/** One bend of a course, by distances from the start; an open bend runs beyond the trace on that side. */
export interface BendShape {
  /** Where it begins; minus infinity for a bend that has begun before the orifice. */
  readonly from: number;
  /** Where it ends; infinity for a bend that goes on through the foramen. */
  readonly to: number;
  /** The largest curvature in it, in 1/mm; in a plane negative for a bend to the left. */
  readonly curvature: number;
  readonly towards: { readonly first: number; readonly second: number };
  /** The share of its length that each of its two ramps takes: 0 for an arc. */
  readonly rampShare: number;
}

/** Where a trace starts and how it is looked at: the place and frame from which parameters are counted. */
export interface Anchor {
  readonly place: Vector;
  readonly frame: Frame;
  readonly across: 1 | 2;
}

/** The bends that the parameters of a family describe, from orifice to foramen. */
export function bendsOf(shape: Family, across: 1 | 2, parameters: ArrayLike<number>): BendShape[] {
  const edges = edgesOf(shape, parameters, 2 * across);
  const vectorsAt = parameters.length - (shape.ramped ? 1 : 0) - shape.bends * across;
  const rampShare = shape.ramped ? at(parameters, parameters.length - 1) : 0;
  return edges.map(([from, to], index) => {
    const first = at(parameters, vectorsAt + index * across);
    const second = across === 2 ? at(parameters, vectorsAt + index * across + 1) : 0;
    const divisor = isOpen(shape, index) ? 1 : (to - from) * (1 - rampShare);
    if (across === 1) return { from, to, rampShare, curvature: first / divisor, towards: { first: 1, second: 0 } };
    const size = Math.hypot(first, second);
    const towards = size === 0 ? { first: 1, second: 0 } : { first: first / size, second: second / size };
    return { from, to, rampShare, curvature: size / divisor, towards };
  });
}

/** Beginning and end of each bend: middle and length for a bend with straight neighbours, else the edges themselves. */
function edgesOf(shape: Family, parameters: ArrayLike<number>, firstAt: number): [number, number][] {
  let next = firstAt;
  const take = (): number => at(parameters, next++);
  const begin = (): number => (shape.straightStart ? take() : Number.NEGATIVE_INFINITY);
  const end = (): number => (shape.straightEnd ? take() : Number.POSITIVE_INFINITY);
  const closed = (): [number, number] => {
    const middle = take();
    const half = take() / 2;
    return [middle - half, middle + half];
  };
  if (shape.bends === 0) return [];
  if (shape.bends === 1) return shape.straightStart && shape.straightEnd ? [closed()] : [[begin(), end()]];
  if (shape.touching) {
    const from = begin();
    const knot = take();
    return [
      [from, knot],
      [knot, end()],
    ];
  }
  const first: [number, number] = shape.straightStart ? closed() : [Number.NEGATIVE_INFINITY, take()];
  const second: [number, number] = shape.straightEnd ? closed() : [take(), Number.POSITIVE_INFINITY];
  return [first, second];
}

/** The course that the parameters of a family describe from an anchor. */
export function courseOf(shape: Family, anchor: Anchor, parameters: ArrayLike<number>): Course {
  const { across, frame } = anchor;
  const second = across === 2;
  const aside = plus(anchor.place, frame.first, at(parameters, 0));
  const start = second ? plus(aside, frame.second, at(parameters, 1)) : aside;
  const tilted = tiltedFrame(frame, at(parameters, across), second ? at(parameters, 3) : 0);
  return layOut(start, tilted, piecesOf(bendsOf(shape, across, parameters)));
}

function piecesOf(bends: readonly BendShape[]): Piece[] {
  const pieces: Piece[] = [];
  let reached = 0;
  for (const bend of bends) {
    if (bend.from > reached) pieces.push(straight(bend.from - reached));
    const from = Math.max(bend.from, reached);
    pieces.push(...piecesOfBend(bend, bend.to - from));
    reached = bend.to;
  }
  if (reached !== Number.POSITIVE_INFINITY) pieces.push(straight(Number.POSITIVE_INFINITY));
  return pieces;
}

const straight = (length: number): Piece => ({ length, curvature: 0, rate: 0, towards: { first: 1, second: 0 } });

/** An arc is one piece; a ramped bend is a clothoid in, an arc, and a clothoid out. */
function piecesOfBend(bend: BendShape, length: number): Piece[] {
  const { curvature, towards, rampShare } = bend;
  const arc: Piece = { length: length * (1 - 2 * rampShare), curvature, rate: 0, towards };
  if (rampShare === 0) return [arc];
  const ramp = length * rampShare;
  const rate = curvature / ramp;
  return [{ length: ramp, curvature: 0, rate, towards }, arc, { length: ramp, curvature, rate: -rate, towards }];
}

const at = (values: ArrayLike<number>, index: number): number => values[index] ?? 0;
