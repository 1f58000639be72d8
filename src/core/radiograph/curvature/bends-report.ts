import { degreesOf } from "../../units.ts";
import type { MeasuredBend } from "./course-measures.ts";
import { publishedHeadline, straightToDeg } from "./headline.ts";

/** To which side a bend turns; the words are explained at the output's field `side`. */
export type BendSide = "left" | "right" | "reference" | "same" | "opposite" | "across";

/**
 * Each bend by itself in the units of the output, from the orifice on.
 * Takes the measured bends and the directions across the course: 1 in a plane, 2 in space.
 * @source docs/methods/curvature.md C6
 */
export function bendsReport(bends: readonly MeasuredBend[], across: 1 | 2) {
  const [first] = bends;
  return bends.map((bend) => {
    const plane = across === 2 && first !== undefined ? angleOfPlanes(first, bend) : undefined;
    const { pruettRadiusMm: radius, ...published } = publishedHeadline(bend.measures);
    const curved = radius !== undefined && degreesOf(bend.turn) > straightToDeg;
    return {
      angleDeg: degreesOf(bend.turn),
      ...(curved ? { radiusMm: radius, pruettRadiusMm: radius } : {}),
      fromMm: bend.from,
      toMm: bend.to,
      side: plane === undefined ? sideInPlane(bend) : sideInSpace(bend === first, plane),
      ...(plane === undefined ? {} : { planeFromFirstDeg: plane }),
      ...published,
    };
  });
}

const sideInPlane = (bend: MeasuredBend): BendSide => (bend.signedTurn < 0 ? "left" : "right");

function sideInSpace(isFirst: boolean, planeDeg: number): BendSide {
  if (isFirst) return "reference";
  if (planeDeg <= 45) return "same";
  return planeDeg >= 135 ? "opposite" : "across";
}

/** The angle between the sides of two bends, carried along the canal without twisting. */
function angleOfPlanes(a: MeasuredBend, b: MeasuredBend): number {
  const cosine = a.towards.first * b.towards.first + a.towards.second * b.towards.second;
  return (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI;
}
