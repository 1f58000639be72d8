import { cross, dot, mix, plus, unit, type Vector, vector } from "./vector.ts";

/** Three directions at right angles: along a course, and two across it. */
export interface Frame {
  readonly tangent: Vector;
  readonly first: Vector;
  readonly second: Vector;
}

/**
 * The frame of a direction that runs in the x-y plane or in space.
 * Gives in the plane: `first` to the right of the direction as seen with y up (towards +x where the direction is +y).
 * @source plane geometry, docs/methods/curvature.md C2
 */
export function frameAlong(direction: Vector): Frame {
  const tangent = unit(direction);
  const flat = vector(tangent.y, -tangent.x);
  const first = Math.hypot(flat.x, flat.y) > 1e-6 ? unit(flat) : vector(1, 0, 0);
  return { tangent, first, second: cross(tangent, first) };
}

/** The frame tilted by two small slopes: its tangent leans by `first` and by `second` across the old one. */
export function tiltedFrame(frame: Frame, firstSlope: number, secondSlope: number): Frame {
  const lean = mix(firstSlope, frame.first, secondSlope, frame.second);
  const tangent = unit(mix(1, frame.tangent, 1, lean));
  const first = unit(plus(frame.first, tangent, -dot(frame.first, tangent)));
  return { tangent, first, second: cross(tangent, first) };
}

/** The frame turned by an angle in the plane of its tangent and the direction `towards` (at right angles to it). */
export function turnedFrame(frame: Frame, towards: Vector, angle: number): Frame {
  const axis = cross(frame.tangent, towards);
  const turned = (v: Vector): Vector => rotated(v, axis, angle);
  return { tangent: turned(frame.tangent), first: turned(frame.first), second: turned(frame.second) };
}

/** A vector turned about an axis of length 1 by an angle in radians (Rodrigues' formula). */
export function rotated(v: Vector, axis: Vector, angle: number): Vector {
  const cosine = Math.cos(angle);
  const along = dot(axis, v) * (1 - cosine);
  const side = mix(cosine, v, Math.sin(angle), cross(axis, v));
  return plus(side, axis, along);
}
