import type { Basis } from "../basis.ts";
import { written } from "./break-facts.ts";
import { type BreakSign, signsOfFace, signsOfFlutes } from "./break-signs.ts";
import type { BrokenPlace, PlaceReading } from "./broken-place.ts";
import type { UsedInstrument } from "./fatigue-places.ts";
import type { Ranges } from "./fracture-assumed.ts";
import type { FractureInput, FractureOutput } from "./fracture-input.ts";
import { fractureSources } from "./fracture-sources.ts";

/** What a break was explained from, as its words need it. */
export interface Explained {
  readonly input: FractureInput;
  readonly reading: PlaceReading;
  readonly used: UsedInstrument;
  readonly ranges: Ranges;
  /** Whether anything bends the instrument. */
  readonly bent: boolean;
}

/** How the explanation of a break came about. */
export function fractureBasis({ input, used, ranges }: Explained): Basis {
  const flaw = ranges("flawPrior");
  return {
    formula:
      "Bayes: prior times the likelihood of the break's place and of each fact, over the three; fatigue where (sum of turns (e / e0)^(1 / |c|))^k is most, torsion as far from the tip as published",
    assumptions: [
      "One of the three alone broke it; breaks of two mechanisms are told as the nearer one.",
      `${written(flaw.low)} to ${written(flaw.high)} of all breaks come from a flaw or a joint: an assumption, no series counted them.`,
      "The published series are weighed alike, though they conflict and are of other instruments.",
      input.uses === undefined
        ? "Without its uses, fatigue is taken to come from this canal at this depth."
        : "Wear adds over the stated uses, whatever came before; none is left out.",
      `An instrument breaks where it is weakest: the chance of a section is its wear to the power of the Weibull shape, its life scattering by ${written(ranges("lifeScatter").high)}.`,
      `The instrument ends ${written(used.endMm)} mm from its tip.`,
      "Facts weigh independently of each other; what is not known weighs nothing.",
    ],
    sources: fractureSources.map(({ id }) => id),
  };
}

/** What a reader must know beside the explanation of a break. */
export function fractureCautions({ input, reading, bent, used }: Explained): string[] {
  const { signs, instrument } = input;
  const faces = signs.filter((sign) => isOf(signsOfFace, sign));
  return [
    "Consistent with, no more: the place and the signs of one break fit several explanations.",
    "Published shares of torsional breaks conflict: 44 of 79 and 36 of 58, but 107 of 358 (memory).",
    ...(faces.length === 0 ? ["A view from the side misclassifies breaks; the fracture face is needed."] : []),
    ...(isMixed(signs)
      ? [
          "The fracture face shows signs of more than one explanation: twisting, bending or a flaw may have acted together.",
        ]
      : []),
    ...(reading.place === undefined
      ? ["Nothing was measured of the piece: its place along the instrument can't weigh."]
      : []),
    ...contradiction(reading.place),
    ...widthAlone(reading.place),
    ...together(input),
    ...(instrument.alloy === "stainlessSteel"
      ? ["The published shares and lengths are of nickel-titanium instruments; for stainless steel they are assumed."]
      : []),
    ...(bent ? [] : [unbent(used)]),
    ...(signs.includes("bent") ? ["That the piece is bent is not weighed: it speaks for none of the three."] : []),
    ...(instrument.lengthMm === undefined
      ? [`The instrument's length is not stated; it is taken to end at ${written(used.endMm)} mm.`]
      : []),
  ];
}

const unbent = ({ uses }: UsedInstrument): string =>
  uses.length === 0
    ? "Neither uses nor course and depth are known: fatigue is taken to break it anywhere that it works, which says little."
    : "The stated canals do not bend it: fatigue is taken to be unlikely, and to break it anywhere that it was seated. One film does not show a bend along its beam.";

function contradiction(place: BrokenPlace | undefined): string[] {
  if (place === undefined || place.agree >= 0.05) return [];
  const lengths = place.measures.map(({ name, value }) => `${value.toFixed(2)} mm by ${name}`).join(", ");
  return [
    `The measures of the piece contradict each other (${lengths}); their mean is taken as less sure. Measure again.`,
  ];
}

/** A length that is less sure than this decides little between places that lie 1 or 2 mm apart, mm. */
const unsureMm = 0.5;

function widthAlone(place: BrokenPlace | undefined): string[] {
  const [only, ...more] = place?.measures ?? [];
  if (only?.name !== "brokenEndDiameterMm" || more.length > 0 || only.sigma <= unsureMm) return [];
  return [
    `The length follows from the width alone, to ${only.sigma.toFixed(1)} mm (one standard deviation) at this taper: measure the length itself.`,
  ];
}

/** What comes together, and is weighed as if it did not. */
function together({ signs, tipBound, stoppedAtTorqueLimit }: FractureInput): string[] {
  const told = [
    ...(signs.some((sign) => sign === "flutesUnwound" || sign === "flutesWoundTighter") ? ["deformed flutes"] : []),
    ...(tipBound === true ? ["a bound tip"] : []),
    ...(stoppedAtTorqueLimit === true ? ["a stop at the torque limit"] : []),
  ];
  if (told.length < 2) return [];
  return [
    `Often found together: ${told.join(", ")}. Each is weighed as if it stood alone, so that the chance of torsional overload is surer here than it should be.`,
  ];
}

const isOf = (list: readonly BreakSign[], sign: BreakSign): boolean => list.includes(sign);

/** Findings of the fracture face by what they are consistent with. */
const faceOf = [
  {
    signs: ["dimples", "circularAbrasion"],
    words: ["dimples over all of it", "circular marks of abrasion"],
    of: "torsional overload",
  },
  { signs: ["striations", "severalOrigins"], words: ["striations", "several origins"], of: "bending fatigue" },
  { signs: ["inclusionOrPore"], words: ["an inclusion or a pore at the origin"], of: "a flaw" },
] as const;

function isMixed(signs: readonly BreakSign[]): boolean {
  // Dimples are where the rest gave way at last, whatever began the break.
  const telling = signs.filter((sign) => sign !== "dimples");
  return faceOf.filter((one) => telling.some((sign) => isOf(one.signs, sign))).length > 1;
}

/**
 * What examination would decide, what is told already left out.
 * Takes what a break was explained from.
 * @source common practice; docs/methods/fracture.md C15
 */
export function wouldDecide({ input, reading, used }: Explained): string[] {
  const { signs } = input;
  const open = faceOf.flatMap(({ signs: of, words, of: consistentWith }) => {
    const left = words.filter((_, index) => !signs.some((sign) => sign === of[index]));
    return left.length === 0 ? [] : [`${left.join(" and ")} would be consistent with ${consistentWith}`];
  });
  return [
    ...(open.length === 0 ? [] : [`A microscope of the fracture face: ${open.join("; ")}.`]),
    ...(signs.some((sign) => isOf(signsOfFlutes, sign) && sign !== "bent")
      ? []
      : ["The flutes from the side, magnified: unwound or wound tighter speaks for torsional overload."]),
    ...(reading.place === undefined ? ["The length of the piece, or of what is left of the instrument."] : []),
    ...(used.uses.length === 0 ? ["The course of the canal with the depth of the tip, or the instrument's uses."] : []),
  ];
}

/** What could not be computed, with the reason. */
export function fractureNotComputed({ input, reading, bent, used }: Explained): FractureOutput["notComputed"] {
  const { place } = reading;
  const none = "nothing was measured of the piece";
  const { section, torqueLimitNmm } = input.instrument;
  const simple = section === "circle" || section === "square" || section === "triangle";
  const depth = "the depth of the tip at the break is not known";
  const otherStart = "the course begins at the reference point, and where the orifice lies on it is not known";
  const unknown = place === undefined ? none : input.tipDepthMm === undefined ? depth : undefined;
  const why = unknown ?? (input.courseStarts === "referencePoint" ? otherStart : undefined);
  return [
    ...(place === undefined ? ["fragmentLength", "twist"].map((name) => ({ name, why: none })) : []),
    ...(why === undefined ? [] : [{ name: "breakFromOrificeMm", why }]),
    ...reading.unused.map(({ name, why }) => ({ name: `fragmentLength by ${name}`, why })),
    ...(bent
      ? []
      : [
          {
            name: "explanations.bendingFatigue.predictedFromTipMm",
            why:
              used.uses.length === 0 ? "neither uses nor course and depth are known" : "nothing bends the instrument",
          },
        ]),
    { name: "explanations.flawOrJoint.predictedFromTipMm", why: "a flaw may lie anywhere" },
    ...(place !== undefined && !simple
      ? [{ name: "twist.perNmmMPa", why: "of this cross-section no simple law of its stress is known" }]
      : []),
    ...(place !== undefined && simple && torqueLimitNmm === undefined
      ? [{ name: "twist.atLimitMPa", why: "the motor's limit is not known" }]
      : []),
  ];
}
