import type { ToothFacts } from "../teeth.ts";

/** What can hide: canals and roots that a tooth may have beside its usual ones. */
export const features = [
  "secondMesiobuccal",
  "thirdRoot",
  "middleMesial",
  "secondDistal",
  "cShaped",
  "lingualCanal",
] as const;
/** One of {@link features}. */
export type Feature = (typeof features)[number];

/** A feature in words, and the teeth that can have it at all. */
interface FeatureFacts {
  readonly is: string;
  readonly arch: ToothFacts["arch"];
  readonly types: readonly ToothFacts["type"][];
  readonly of: string;
}

const lowerMolars = { arch: "lower", types: ["molar"], of: "lower molars" } as const;

/** Each feature in words and the kinds of tooth that can have it. @source common practice; docs/methods/missed-canal, C1 */
export const featureFacts: Readonly<Record<Feature, FeatureFacts>> = {
  secondMesiobuccal: {
    is: "a second canal in the mesiobuccal root",
    arch: "upper",
    types: ["molar"],
    of: "upper molars",
  },
  thirdRoot: { is: "a third root on the lingual side", ...lowerMolars },
  middleMesial: { is: "a middle mesial canal", ...lowerMolars },
  secondDistal: { is: "a second distal canal", ...lowerMolars },
  cShaped: { is: "a C-shaped canal", ...lowerMolars },
  lingualCanal: {
    is: "a second, lingual canal",
    arch: "lower",
    types: ["incisor", "canine", "premolar"],
    of: "lower front teeth and premolars",
  },
};

/** Whether a tooth is of a kind that can have a feature. */
export const canHave = ({ arch, type }: ToothFacts, feature: Feature): boolean =>
  featureFacts[feature].arch === arch && featureFacts[feature].types.includes(type);
