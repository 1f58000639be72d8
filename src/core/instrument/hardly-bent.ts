import { peakStrain } from "./bending-strain.ts";
import type { BreakFact } from "./break-facts.ts";
import type { UsedInstrument } from "./fatigue-places.ts";

/** Below the first strain an instrument is hardly bent, from the second on it is bent; assumed, as a fraction. */
const [hardly, bent] = [0.003, 0.01];

/**
 * That the stated canals hardly bend the instrument: a fact against bending fatigue, whatever its place.
 * Takes the used instrument; gives no fact where neither uses nor course are known, or where something bends it.
 * Between both strains the weight grows along their logarithm. It is never nil: one film does not show a bend along its
 * beam, and not every use may be told.
 * @source assumption with its range, docs/methods/fracture.md C16
 */
export function hardlyBent({ shape, uses }: UsedInstrument): BreakFact[] {
  if (uses.length === 0) return [];
  const strain = Math.max(
    ...uses.map(({ bending, tipDepthMm }) => peakStrain({ shape, bending, tipDepthMm, convention: "neutral" }).strain),
  );
  const share = Math.min(1, Math.log(bent / strain) / Math.log(bent / hardly));
  if (share <= 0) return [];
  const says =
    strain === 0
      ? "The stated canals do not bend it."
      : `The stated canals bend it by ${(100 * strain).toFixed(2)} % at most, which is little.`;
  return [
    {
      ...{ name: "hardlyBent", says, by: ["hardlyBent"] as const },
      likelihood: (values) => ({
        bendingFatigue: values("hardlyBent") ** share,
        torsionalOverload: 1,
        flawOrJoint: 1,
      }),
    },
  ];
}
