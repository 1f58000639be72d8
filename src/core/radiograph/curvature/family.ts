/**
 * One shape that a canal may have: how many bends, whether it is straight at its ends, whether two bends touch, and
 * whether the curvature of a bend comes and goes in ramps (clothoids) or at once (an arc).
 */
export interface Family {
  readonly name: string;
  readonly bends: 0 | 1 | 2;
  /** Straight before the first bend; otherwise the bend has begun before the orifice. */
  readonly straightStart: boolean;
  /** Straight after the last bend; otherwise the bend goes on through the foramen. */
  readonly straightEnd: boolean;
  /** Two bends without a straight part between them. */
  readonly touching: boolean;
  /** Curvature that comes and goes in ramps. */
  readonly ramped: boolean;
}

const family = (name: string, bends: 0 | 1 | 2, ends: string, kind = ""): Family => ({
  name,
  bends,
  straightStart: ends.startsWith("straight"),
  straightEnd: ends.endsWith("straight"),
  touching: kind === "touching",
  ramped: kind === "ramped",
});

/**
 * Every family that is tried, the simpler ones first.
 * @source plane geometry, docs/methods/curvature.md C3
 */
export const families: readonly Family[] = [
  family("straight", 0, "straight"),
  family("arc", 1, "bent"),
  family("straight-arc", 1, "straight, bent"),
  family("arc-straight", 1, "bent, straight"),
  family("straight-arc-straight", 1, "straight, straight"),
  family("straight-ramped bend-straight", 1, "straight, straight", "ramped"),
  family("arc-arc", 2, "bent", "touching"),
  family("straight-arc-arc", 2, "straight, bent", "touching"),
  family("arc-arc-straight", 2, "bent, straight", "touching"),
  family("straight-arc-arc-straight", 2, "straight, straight", "touching"),
  family("arc-straight-arc", 2, "bent"),
  family("straight-arc-straight-arc", 2, "straight, bent"),
  family("arc-straight-arc-straight", 2, "bent, straight"),
  family("straight-arc-straight-arc-straight", 2, "straight, straight"),
];

/** What one parameter of a family is: its size in the course's own length decides the step of a derivative. */
export type ParameterKind = "offset" | "slope" | "position" | "turn" | "curvature" | "share";

/**
 * The parameters of a family in their order: across-offset and slope of the start, positions of the bends, their turns
 * (or curvatures, where a bend has no end), and the share of a ramp.
 * Takes the family and the directions across the course: 1 in a plane, 2 in space.
 */
export function parameterKinds(shape: Family, across: 1 | 2): ParameterKind[] {
  const each = (kind: ParameterKind): ParameterKind[] => Array<ParameterKind>(across).fill(kind);
  const bends = Array.from({ length: shape.bends }, (_, index) => each(isOpen(shape, index) ? "curvature" : "turn"));
  const positions = Array<ParameterKind>(positionCount(shape)).fill("position");
  return [
    ...each("offset"),
    ...each("slope"),
    ...positions,
    ...bends.flat(),
    ...(shape.ramped ? ["share" as const] : []),
  ];
}

/** Whether a bend of a family has no beginning or no end inside the trace. */
export const isOpen = (shape: Family, index: number): boolean =>
  (index === 0 && !shape.straightStart) || (index === shape.bends - 1 && !shape.straightEnd);

function positionCount(shape: Family): number {
  if (shape.bends === 0) return 0;
  const edges = (shape.straightStart ? 1 : 0) + (shape.straightEnd ? 1 : 0);
  if (shape.bends === 1) return edges;
  return edges + (shape.touching ? 1 : 2);
}
