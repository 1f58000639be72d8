import type { BodyOf } from "./parts.ts";
import { probingSites } from "./words/test-words.ts";

type Depths = BodyOf<"findings">["teeth"][number]["probingMm"];
/** One of the six places of a probing. */
export type ProbingSite = (typeof probingSites)[number];
/** deep: beyond a shallow pocket; narrow: deep with both neighbours round the tooth taken and shallow. */
export type ProbingStanding = "deep" | "narrow";

/** From here a pocket is called deep, in mm: one to three are usual round a sound tooth (common practice). */
const deepFromMm = 4;

/** The six places in the order in which one comes to them round the tooth. */
const roundTheTooth: readonly ProbingSite[] = [
  ...(["mesiobuccal", "buccal", "distobuccal"] as const),
  ...(["distolingual", "lingual", "mesiolingual"] as const),
];

/**
 * The places of a probing that stand out, each as deep or as narrow: a deep place between two shallow ones.
 * Takes depths in mm; a place that was not taken neither stands out nor makes its neighbour narrow.
 * @source common practice
 */
export function probingStanding(depths: Depths): Readonly<Partial<Record<ProbingSite, ProbingStanding>>> {
  const standing = roundTheTooth.flatMap((site, at) => {
    const depth = depths[site];
    if (depth === undefined || depth < deepFromMm) return [];
    const beside = [at - 1, at + 1].map((place) => depths[roundTheTooth.at(place % roundTheTooth.length) ?? site]);
    const narrow = beside.every((one) => one !== undefined && one < deepFromMm);
    return [[site, narrow ? "narrow" : "deep"] as const];
  });
  return Object.fromEntries(standing);
}

/**
 * What stands out in a probing, as `buccal 7 mm, narrow`; empty where nothing does.
 * Takes depths in mm.
 */
export function standingInWords(depths: Depths): readonly string[] {
  const standing = probingStanding(depths);
  return probingSites.flatMap((site) =>
    standing[site] === undefined ? [] : [`${site} ${depths[site]} mm${standing[site] === "narrow" ? ", narrow" : ""}`],
  );
}
