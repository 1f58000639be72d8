import type { Solution, Vasoconstrictor, VasoconstrictorName } from "./anaesthetic-input.ts";

/** Decimals of the input are exact to far more digits than they have noise: 14.400000000000002 is 14.4. */
const withoutNoise = (value: number): number => Number(value.toPrecision(12));

/** Whole parts of an amount that was given: never less than it is. */
const roundedUp = (value: number): number => Math.ceil(withoutNoise(value));

/** Whole parts of a limit: never more than it is. */
export const roundedDown = (value: number): number => Math.floor(withoutNoise(value));

/**
 * Whole micrograms of agent in so many cartridges: percent x 10 mg/ml.
 * @source docs/methods/anaesthetic.md C1
 */
export const agentMicrograms = ({ percent, cartridgeMl }: Solution, cartridges = 1): number =>
  roundedUp(percent * 10_000 * cartridgeMl * cartridges);

/** Parts that a vasoconstrictor is counted in, for each unit that it is told in: a microgram has 1000, an IU a million. */
export const partsIn = (name: VasoconstrictorName): number => (name === "felypressin" ? 1_000_000 : 1_000);

/** The unit that a vasoconstrictor is told in. */
export const unitOf = (name: VasoconstrictorName): "micrograms" | "IU" =>
  name === "felypressin" ? "IU" : "micrograms";

/**
 * Whole parts of vasoconstrictor in so many cartridges: 1:n is 1 g in n ml.
 * @source docs/methods/anaesthetic.md C2
 */
export function vasoconstrictorParts(
  { ratio, iuPerMl, name }: Vasoconstrictor,
  cartridgeMl: number,
  cartridges = 1,
): number {
  const unitsPerMl = ratio === undefined ? (iuPerMl ?? 0) : 1_000_000 / ratio;
  return roundedUp(unitsPerMl * partsIn(name) * cartridgeMl * cartridges);
}
