import { type BentPlace, bentPlace } from "../../geometry/bent-line.ts";
import { type Frame, turnedFrame } from "../../geometry/frame.ts";
import { mix, plus, type Vector } from "../../geometry/vector.ts";

/** A stretch of one law of curvature: straight (0, 0), an arc (rate 0), or a ramp; it bends towards `first` and `second` of the frame. */
export interface Piece {
  readonly length: number;
  readonly curvature: number;
  readonly rate: number;
  /** The side to which it bends, as the two parts of a direction of length 1 across the course. */
  readonly towards: { readonly first: number; readonly second: number };
}

interface PlacedPiece extends Piece {
  readonly from: number;
  readonly origin: Vector;
  readonly tangent: Vector;
  readonly normal: Vector;
}

/** A course laid out in the plane or in space: pieces that follow on each other with one common tangent. */
export interface Course {
  readonly pieces: readonly PlacedPiece[];
}

/**
 * The course that starts at a place, along a frame, and follows the pieces.
 * Gives a course that goes on beyond both ends: its first and its last piece never stop.
 * @source plane geometry, docs/methods/curvature.md C3
 */
export function layOut(start: Vector, along: Frame, pieces: readonly Piece[]): Course {
  let frame = along;
  let origin = start;
  let from = 0;
  const placed = pieces.map((piece) => {
    const normal = mix(piece.towards.first, frame.first, piece.towards.second, frame.second);
    const here: PlacedPiece = { ...piece, from, origin, tangent: frame.tangent, normal };
    if (piece.length === Number.POSITIVE_INFINITY) return here;
    const end = bentPlace(piece.curvature, piece.rate, piece.length);
    origin = offset(here, end);
    if (end.turned !== 0) frame = turnedFrame(frame, normal, end.turned);
    from += piece.length;
    return here;
  });
  return { pieces: placed };
}

/** The place on a course at a distance from its start. */
export function placeAt(course: Course, s: number): Vector {
  const piece = pieceAt(course, s);
  return offset(piece, bentPlace(piece.curvature, piece.rate, s - piece.from));
}

/** Place, direction, and the direction and amount of bending at a distance from the start. */
export function stateAt(
  course: Course,
  s: number,
): { place: Vector; tangent: Vector; normal: Vector; curvature: number } {
  const piece = pieceAt(course, s);
  const distance = s - piece.from;
  const local = bentPlace(piece.curvature, piece.rate, distance);
  const cosine = Math.cos(local.turned);
  const sine = Math.sin(local.turned);
  return {
    place: offset(piece, local),
    tangent: mix(cosine, piece.tangent, sine, piece.normal),
    normal: mix(cosine, piece.normal, -sine, piece.tangent),
    curvature: piece.curvature + piece.rate * distance,
  };
}

function pieceAt(course: Course, s: number): PlacedPiece {
  const { pieces } = course;
  let index = pieces.length - 1;
  while (index > 0 && (pieces[index]?.from ?? 0) > s) index--;
  const piece = pieces[index];
  if (piece === undefined) throw new RangeError("a course has at least one piece");
  return piece;
}

const offset = (piece: PlacedPiece, local: BentPlace): Vector =>
  plus(plus(piece.origin, piece.tangent, local.along), piece.normal, local.aside);
