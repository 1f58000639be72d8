import burklein from "../../../data/burklein-2021/source.json" with { type: "json" };
import { deg, radiansOf } from "../units.ts";
import type { Seated } from "./bending-strain.ts";
import { canalBending } from "./canal-bending.ts";
import type { InstrumentShape } from "./instrument-shape.ts";

/** Length of the reference canal, mm: longer than its bend needs. */
const lengthMm = 16;

/**
 * An instrument seated to the end of the usual test canal: 60 degrees on 5 mm, the middle of its bend 5 mm from the tip.
 * @source S. Burklein and others, Appl Sci 2021;11:4950 (seen); docs/methods/life-used C5
 */
export function inReferenceCanal(shape: InstrumentShape): Seated {
  const { turnDeg, radiusMm, centreFromTipMm } = burklein.usualCanal;
  const startMm = lengthMm - centreFromTipMm - (radiusMm * radiansOf(deg(turnDeg))) / 2;
  const bending = canalBending({ radiusMm, turnDeg, startMm, lengthMm }, "reference");
  return { shape, bending, tipDepthMm: lengthMm, convention: "neutral" };
}
