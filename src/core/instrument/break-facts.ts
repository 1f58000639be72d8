import type { AssumptionName, Ranges, Values } from "./fracture-assumed.ts";
import { type ExplanationName, explanationNames, type FractureInput, type OfEach } from "./fracture-input.ts";

/** A fact of a break that weighs, whatever the assumptions are. */
export interface BreakFact {
  readonly name: string;
  readonly says: string;
  /** The assumptions that its weight rests on. */
  readonly by: readonly AssumptionName[];
  /** How likely it is under each explanation, up to one factor for all. */
  readonly likelihood: (values: Values) => OfEach;
}

type Told = Pick<FractureInput, "signs" | "tipBound" | "stoppedAtTorqueLimit">;

/**
 * The facts of a break other than its place, each with its likelihoods.
 * Takes what was seen and told; what is not known gives no fact, and never counts as its opposite.
 * @source assumptions with ranges, docs/methods/fracture.md C7 to C9
 */
export const breakFacts = (told: Told): BreakFact[] => [...flutes(told), ...handling(told), ...face(told)];

const each = (bendingFatigue: number, torsionalOverload: number, flawOrJoint: number): OfEach => ({
  bendingFatigue,
  torsionalOverload,
  flawOrJoint,
});

function flutes({ signs }: Told): BreakFact[] {
  const by = ["deformedInTorsion", "deformedInFatigue"] as const;
  const deformed = signs.includes("flutesUnwound") || signs.includes("flutesWoundTighter");
  const seen = (values: Values): OfEach =>
    each(values("deformedInFatigue"), values("deformedInTorsion"), values("deformedInFatigue"));
  if (deformed)
    return [{ name: "deformedFlutes", says: "The flutes are unwound or wound tighter.", by, likelihood: seen }];
  if (!signs.includes("noneVisible")) return [];
  const likelihood = (values: Values): OfEach => ofEach((name) => 1 - seen(values)[name]);
  return [{ name: "noDeformation", says: "No deformation is visible.", by, likelihood }];
}

function handling({ tipBound, stoppedAtTorqueLimit: stopped }: Told): BreakFact[] {
  const torsion = (name: AssumptionName, says: string): BreakFact => one(name, says, "torsionalOverload");
  return [
    ...(tipBound === true ? [torsion("bound", "The tip was bound.")] : []),
    ...(tipBound === false ? [torsion("notBound", "The tip was not bound.")] : []),
    ...(stopped === true ? [torsion("stopped", "The motor stopped at its torque limit.")] : []),
    ...(stopped === false ? [torsion("notStopped", "The motor did not stop at its torque limit.")] : []),
  ];
}

const ofFace = {
  striations: ["bendingFatigue", "The fracture face shows striations."],
  severalOrigins: ["bendingFatigue", "The crack began at several origins."],
  dimples: ["torsionalOverload", "The fracture face shows dimples."],
  circularAbrasion: ["torsionalOverload", "The fracture face shows circular marks of abrasion."],
  inclusionOrPore: ["flawOrJoint", "An inclusion or a pore lies at the origin."],
} as const;

function face({ signs }: Told): BreakFact[] {
  const names = ["striations", "severalOrigins", "dimples", "circularAbrasion", "inclusionOrPore"] as const;
  return names.flatMap((name) => (signs.includes(name) ? [one(name, ofFace[name][1], ofFace[name][0])] : []));
}

const one = (name: AssumptionName, says: string, favoured: ExplanationName): BreakFact => ({
  name,
  says,
  by: [name],
  likelihood: (values) => ofEach((explanation) => (explanation === favoured ? values(name) : 1)),
});

/** A number of each explanation. */
export const ofEach = (give: (name: ExplanationName) => number): OfEach =>
  each(give(explanationNames[0]), give(explanationNames[1]), give(explanationNames[2]));

/** Likelihoods so that the largest is 1. */
export function relative(likelihood: OfEach): OfEach {
  const most = Math.max(...explanationNames.map((name) => likelihood[name]));
  return most > 0 ? ofEach((name) => likelihood[name] / most) : ofEach(() => 1);
}

/** Where the weight of a fact comes from, in a few words with its range. */
export function sourceOfFact({ by }: Pick<BreakFact, "by">, ranges: Ranges): string {
  return by
    .map((name) => {
      const { low, high, source } = ranges(name);
      return `${source}: ${name} ${written(low)} to ${written(high)}`;
    })
    .join("; ");
}

/** A number to three digits, as it is read. */
export const written = (value: number): string => String(Number(value.toPrecision(3)));
