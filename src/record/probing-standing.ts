import type { BodyOf } from "./parts.ts";
import { probingSites } from "./words/test-words.ts";

type Depths = BodyOf<"findings">["teeth"][number]["probingMm"];
/** One of the six places of a probing. */
export type ProbingSite = (typeof probingSites)[number];
/** deep: beyond a shallow pocket; narrow: a deeper one alone, both its neighbours round the tooth taken and shallow. */
export type ProbingStanding = "deep" | "narrow";

/** Round a sound tooth a probe goes in so far, in mm, and beyond it a pocket is called deep (common practice). */
const shallowToMm = 3;
/** From here a place that stands alone is called a narrow defect, in mm. */
const narrowFromMm = 5;

/** The six places in the order in which one comes to them round the tooth. */
const roundTheTooth: readonly ProbingSite[] = [
  ...(["mesiobuccal", "buccal", "distobuccal"] as const),
  ...(["distolingual", "lingual", "mesiolingual"] as const),
];

/**
 * The places of a probing that stand out, each as deep or as narrow.
 * Takes depths in mm; a place that was not taken neither stands out nor makes its neighbour narrow.
 * @source Lee K et al., J Endod, 2023, 1617-1624 (seen) for 5 mm of a narrow defect; common practice for 3 mm
 */
export function probingStanding(depths: Depths): Readonly<Partial<Record<ProbingSite, ProbingStanding>>> {
  const standing = roundTheTooth.flatMap((site, at) => {
    const depth = depths[site];
    if (depth === undefined || depth <= shallowToMm) return [];
    const beside = [at - 1, at + 1].map((place) => depths[roundTheTooth.at(place % roundTheTooth.length) ?? site]);
    const isAlone = beside.every((one) => one !== undefined && one <= shallowToMm);
    return [[site, isAlone && depth >= narrowFromMm ? "narrow" : "deep"] as const];
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
