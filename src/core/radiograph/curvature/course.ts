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

interface PlacedPiece {
  readonly from: number;
  readonly curvature: number;
  readonly rate: number;
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
  const placed: PlacedPiece[] = [];
  for (const { length, curvature, rate, towards } of pieces) {
    const normal = mix(towards.first, frame.first, towards.second, frame.second);
    const here: PlacedPiece = { from, curvature, rate, origin, tangent: frame.tangent, normal };
    placed.push(here);
    if (length === Number.POSITIVE_INFINITY) break;
    const end = bentPlace(curvature, rate, length);
    origin = offset(here, end);
    if (end.turned !== 0) frame = turnedFrame(frame, normal, end.turned);
    from += length;
  }
  return { pieces: placed };
}

/** The place on a course at a distance from its start. */
export function placeAt(course: Course, s: number): Vector {
  const piece = pieceAt(course, s);
  if (isStraight(piece)) return plus(piece.origin, piece.tangent, s - piece.from);
  return offset(piece, bentPlace(piece.curvature, piece.rate, s - piece.from));
}

/** Place, direction, and the direction and amount of bending at a distance from the start. */
export function stateAt(
  course: Course,
  s: number,
): { place: Vector; tangent: Vector; normal: Vector; curvature: number } {
  const piece = pieceAt(course, s);
  const distance = s - piece.from;
  if (isStraight(piece)) {
    const { origin, tangent, normal } = piece;
    return { place: plus(origin, tangent, distance), tangent, normal, curvature: 0 };
  }
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

const isStraight = (piece: PlacedPiece): boolean => piece.curvature === 0 && piece.rate === 0;

function offset({ origin, tangent, normal }: PlacedPiece, { along, aside }: BentPlace): Vector {
  return {
    x: origin.x + along * tangent.x + aside * normal.x,
    y: origin.y + along * tangent.y + aside * normal.y,
    z: origin.z + along * tangent.z + aside * normal.z,
  };
}
