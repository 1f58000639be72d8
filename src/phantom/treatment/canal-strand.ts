import type { Canal } from "../anatomy/canal.ts";
import type { PlacedTooth } from "../anatomy/placed-tooth.ts";
import type { Ball } from "../exposure/ball-chain.ts";
import type { Strand } from "../jaw-segment.ts";
import { type Shaping, shapedRadiusMm } from "./shaping.ts";

/** Steps between neighbouring balls: small against any radius, so that the tube's wall is smooth. */
const ballStepMm = 0.04;

/** Balls along a canal between two lengths from its orifice, with a radius for each length. */
export function ballsAlong(
  canal: Canal,
  part: { readonly fromMm: number; readonly toMm: number },
  radius: (alongMm: number) => { readonly mesiodistal: number; readonly buccolingual: number },
): Ball[] {
  const balls: Ball[] = [];
  const { points, stepMm } = canal.course;
  const every = Math.max(1, Math.round(ballStepMm / stepMm));
  for (let i = Math.ceil(part.fromMm / stepMm); i < points.length && i * stepMm <= part.toMm; i += every) {
    const middle = points[i];
    if (middle === undefined) continue;
    const { mesiodistal, buccolingual } = radius(i * stepMm);
    balls.push({ middle, rx: mesiodistal, ry: buccolingual, rz: mesiodistal });
  }
  return balls;
}

/** The canal itself, from the chamber on: soft tissue where there would be dentine. */
export function canalStrand(canal: Canal, placed: PlacedTooth, shaping?: Shaping): Strand {
  const whole = ballsAlong(canal, { fromMm: 0, toMm: canal.course.lengthMm }, (along) =>
    shapedRadiusMm(canal, shaping, along),
  );
  // A chamber that narrows into its canal needs the canal's first part; one with a floor ends where the canal begins.
  const inChamber = placed.tooth.roots.length === 1 ? -0.25 : 0.1;
  const balls = whole.filter(({ middle, rx }) => placed.tooth.chamber(middle.x, middle.y, middle.z) > rx * inChamber);
  return {
    chain: { balls: balls.map((ball) => ({ ...ball, middle: placed.fromOwn(ball.middle) })) },
    material: "soft",
    replaces: "mineral",
  };
}
