import { numberInWords, withUnit } from "../../parts/figures-in-words.ts";

/** To which side the tube was moved from straight on. */
export type TubeSide = "mesial" | "distal";

/** The size of a horizontal angle and its side; the record writes the side as the sign, above 0 to mesial. */
export const tubeSide = (angleDeg: number): TubeSide => (angleDeg < 0 ? "distal" : "mesial");

/** A horizontal angle from its size and side. */
export const signedAngle = (sizeDeg: number, side: TubeSide): number =>
  sizeDeg === 0 ? 0 : side === "distal" ? -Math.abs(sizeDeg) : Math.abs(sizeDeg);

/** A horizontal angle as one says it: `20° from mesial`, `straight on`. */
export function tubeAngleInWords(angleDeg: number): string {
  if (angleDeg === 0) return "straight on";
  const size = Math.abs(angleDeg);
  return `${withUnit(numberInWords(size, Number.isInteger(size) ? 0 : 1), "°")} from ${tubeSide(angleDeg)}`;
}
