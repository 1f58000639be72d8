import { ofEach } from "./break-facts.ts";
import type { UsedInstrument } from "./fatigue-places.ts";
import type { Values } from "./fracture-assumed.ts";
import type { ExplanationName, OfEach } from "./fracture-input.ts";
import type { Measured } from "./measured.ts";
import { anywhereUpTo, boundElsewhere, flawPlaces, torsionPlaces } from "./other-places.ts";
import { evenDensity, likelihoodOf, mixed, type PlaceDensity } from "./place-density.ts";

/** What each explanation expects, in two parts: where it is expected and elsewhere; of a flaw below and high. */
export type Parts<Of> = Readonly<Record<ExplanationName, readonly [Of, Of]>>;

/** What is expected of one instrument, whatever is assumed; fatigue is put in as it is looked at. */
export type PartsWith = (fatigue: PlaceDensity | undefined) => Parts<PlaceDensity>;

/**
 * Where each explanation expects the break of an instrument.
 * Takes the used instrument. Gives its parts for a stated fatigue; without one, as where nothing bends it, fatigue may
 * break it anywhere that it was seated.
 * @source docs/methods/fracture.md C3 to C6
 */
export function expectedPlaces({ shape, uses, endMm }: UsedInstrument): PartsWith {
  const deepest = Math.max(0, ...uses.map(({ tipDepthMm }) => tipDepthMm));
  const seatedMm = Math.min(endMm, deepest > 0 ? deepest : shape.workingMm);
  const even = evenDensity(endMm);
  const seated = anywhereUpTo(seatedMm, endMm);
  const torsion = [torsionPlaces(endMm), boundElsewhere(shape, endMm)] as const;
  const flaw = flawPlaces(endMm);
  return (fatigue) => ({
    bendingFatigue: [fatigue ?? seated, even],
    torsionalOverload: torsion,
    flawOrJoint: flaw,
  });
}

/** How likely a measured place is under each part, per mm; 1 where nothing was measured. */
export function chancesOf(parts: Parts<PlaceDensity>, place: Measured | undefined): Parts<number> {
  const chance = (of: PlaceDensity): number => (place === undefined ? 1 : likelihoodOf(of, place));
  const both = (name: ExplanationName) => [chance(parts[name][0]), chance(parts[name][1])] as const;
  return {
    bendingFatigue: both("bendingFatigue"),
    torsionalOverload: both("torsionalOverload"),
    flawOrJoint: both("flawOrJoint"),
  };
}

/** The share of the second part of an explanation. */
const secondShare = (name: ExplanationName, values: Values): number =>
  values(name === "flawOrJoint" ? "flawHigh" : "elsewhere");

/** The likelihood of the place under each explanation, its parts by their shares. */
export const likelihoodOfPlace = (chances: Parts<number>, values: Values): OfEach =>
  ofEach((name) => {
    const share = secondShare(name, values);
    return (1 - share) * chances[name][0] + share * chances[name][1];
  });

/** The density of one explanation, its parts by their shares. */
export function densityWith(parts: Parts<PlaceDensity>, name: ExplanationName, values: Values): PlaceDensity {
  const share = secondShare(name, values);
  return mixed([
    { of: parts[name][0], share: 1 - share },
    { of: parts[name][1], share },
  ]);
}
