import molarSeparation from "../../../../data/molar-separation/source.json" with { type: "json" };
import { publishedLook } from "./accuracy-of-look.ts";
import { afterLook, chancesOf } from "./after-look.ts";
import type { Feature } from "./feature.ts";
import { type LookKind, lookFacts, lookKinds } from "./look.ts";
import type { MissedCanalInput } from "./missed-canal-input.ts";
import type { NextLook } from "./missed-canal-output.ts";

/**
 * What is left to look at, best first: by class of harm, inside a class by how much uncertainty a look is expected to
 * take away; looks without published figures come after those of their class.
 * Takes the input and the chance as it stands; nothing is offered where that is 0 or 1, nor what was done already.
 * @source docs/methods/missed-canal, C7-C8
 */
export function nextLooks(input: MissedCanalInput, chance: number): NextLook[] {
  if (chance <= 0 || chance >= 1) return [];
  const done = new Set<LookKind>(input.evidence.map(({ kind }) => kind));
  const looks = lookKinds
    .filter((kind) => !done.has(kind) && applies(kind, input))
    .map((kind) => nextLook(kind, input, chance));
  const fall = fallAmong(looks);
  return looks.sort((a, b) => a.harm - b.harm || fall(b) - fall(a) || Number(isAngled(b)) - Number(isAngled(a)));
}

const isAngled = ({ kind }: NextLook): boolean => kind === "angledFilm";

/** What a look is ranked by: an angled film without published figures shows no less than a straight one (common practice). */
function fallAmong(looks: readonly NextLook[]): (look: NextLook) => number {
  const straight = looks.find(({ kind }) => kind === "straightFilm")?.expectedFallBits ?? -1;
  return (look) => look.expectedFallBits ?? (isAngled(look) ? straight : -1);
}

/** Ids of the published sources that a ranking rests on. */
export const sourcesOfLooks = (looks: readonly NextLook[], { tooth, feature }: MissedCanalInput): string[] =>
  looks.flatMap(({ kind, says }) => [
    ...publishedLook(kind, tooth, feature).sources,
    ...(says.includes(molarSeparation.id) ? [molarSeparation.id] : []),
  ]);

/** A root or a C is no orifice to trough for, nor does an instrument lie off its centre. */
const wholeRoots: ReadonlySet<Feature> = new Set(["thirdRoot", "cShaped"]);
const applies = (kind: LookKind, { feature }: MissedCanalInput): boolean =>
  !(wholeRoots.has(feature) && (kind === "troughing" || kind === "offCentreInstrument"));

function nextLook(kind: LookKind, input: MissedCanalInput, chance: number): NextLook {
  const { harm, says } = lookFacts[kind];
  const { sensitivity, specificity } = publishedLook(kind, input.tooth, input.feature);
  const known = sensitivity !== undefined && specificity !== undefined;
  const needs = needsOf(kind, input);
  return {
    ...{ kind, harm, says: `${says}${kind === "angledFilm" ? angleText(input.feature) : ""}` },
    ...(known
      ? { expectedFallBits: expectedFall(chance, sensitivity, specificity) }
      : { missing: ["sensitivity", "specificity"] }),
    ...(needs === undefined ? {} : { needs }),
  };
}

function needsOf(kind: LookKind, { lessWasNotEnough = "", wallKnownMm }: MissedCanalInput): string | undefined {
  if (kind === "cbct" && lessWasNotEnough === "") return "a written reason why less was not enough";
  if (kind === "troughing")
    return wallKnownMm === undefined
      ? "only with the wall known"
      : `a trough that the wall of ${wallKnownMm} mm allows`;
  return undefined;
}

/** By how much the entropy of the chance is expected to fall; never below 0, though rounding may say so. */
function expectedFall(chance: number, sensitivity: number, specificity: number): number {
  const left = (["seen", "notSeen"] as const).map((result) => {
    const chances = chancesOf(result, sensitivity, specificity);
    const weight = chance * chances.present + (1 - chance) * chances.absent;
    return weight * entropyBits(afterLook(chance, chances) ?? 0);
  });
  return Math.max(
    0,
    left.reduce((fall, one) => fall - one, entropyBits(chance)),
  );
}

const entropyBits = (chance: number): number =>
  chance <= 0 || chance >= 1 ? 0 : -(chance * Math.log2(chance) + (1 - chance) * Math.log2(1 - chance));

const canalsTold: Partial<Record<Feature, string>> = {
  middleMesial: "mesial canals of lower molars",
  secondDistal: "distal canals of lower molars",
};

function angleText(feature: Feature): string {
  const rows = molarSeparation.separated.filter(({ canals }) => canals === canalsTold[feature]);
  const told = rows.map(({ atLeastPercent, angleDeg }) => `${angleDeg} degrees part them in ${atLeastPercent} %`);
  return told.length === 0 ? "" : ` Of ${canalsTold[feature]}, ${told.join(", ")} (${molarSeparation.id}).`;
}
