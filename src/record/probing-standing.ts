import { type ProbingDepths, type ProbingSite, probedSites } from "../core/diagnosis/terms/probed-sites.ts";
import { probingSites } from "./words/test-words.ts";

/** deep: beyond a shallow pocket; narrow: a deeper one alone, both its neighbours round the tooth taken and shallow. */
export type ProbingStanding = "deep" | "narrow";

/**
 * The places of a probing that stand out, each as deep or as narrow.
 * Takes depths in mm; a place that was not taken neither stands out nor makes its neighbour narrow.
 * @source docs/methods/diagnosis, C8
 */
export function probingStanding(depths: ProbingDepths): Readonly<Partial<Record<ProbingSite, ProbingStanding>>> {
  const standing = probedSites(depths).flatMap(({ site, deep, narrow }) =>
    deep === "yes" ? [[site, narrow === "yes" ? "narrow" : "deep"] as const] : [],
  );
  return Object.fromEntries(standing);
}

/**
 * What stands out in a probing, as `buccal 7 mm, narrow`; empty where nothing does.
 * Takes depths in mm.
 */
export function standingInWords(depths: ProbingDepths): readonly string[] {
  const standing = probingStanding(depths);
  return probingSites.flatMap((site) =>
    standing[site] === undefined ? [] : [`${site} ${depths[site]} mm${standing[site] === "narrow" ? ", narrow" : ""}`],
  );
}
