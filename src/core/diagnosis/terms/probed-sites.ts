import lee from "../../../../data/lee-2023/source.json" with { type: "json" };
import { anyOf, type Truth } from "./fact.ts";

/** The six sites in their order round the tooth. */
const ring = ["mesiobuccal", "buccal", "distobuccal", "distolingual", "lingual", "mesiolingual"] as const;
/** One of the six sites of a probing. */
export type ProbingSite = (typeof ring)[number];
/** Depths in mm; a site that was not taken is left out. */
export type ProbingDepths = Readonly<Partial<Record<ProbingSite, number | undefined>>>;

/** Round a sound tooth a probe goes in so far, in mm, and beyond it a pocket is called deep (common practice). */
const shallowToMm = 3;

/** A site that was taken, or whose standing stays unknown because it was not. */
export interface ProbedSite {
  readonly site: ProbingSite;
  /** mm; absent where it was not taken. */
  readonly depth?: number;
  /** Beyond a shallow pocket. */
  readonly deep: Truth;
  /** Deep alone: unknown where a neighbour that would tell was not taken. */
  readonly narrow: Truth;
}

/**
 * The six sites of a probing, each with how it stands beside both its neighbours round the tooth.
 * Takes depths in mm.
 * @source Lee K et al., J Endod, 2023, 1617-1624 (seen) for 5 mm; common practice for 3 mm; docs/methods/diagnosis, C8
 */
export function probedSites(depths: ProbingDepths): readonly ProbedSite[] {
  return ring.map((site, at) => {
    const depth = depths[site];
    if (depth === undefined) return { site, deep: "unknown", narrow: "unknown" };
    const beside = [at - 1, at + 1].map((place) => depths[ring.at(place % ring.length) ?? site]);
    return { site, depth, deep: depth > shallowToMm ? "yes" : "no", narrow: narrowOf(depth, beside) };
  });
}

function narrowOf(depth: number, beside: readonly (number | undefined)[]): Truth {
  if (depth < lee.isolatedFromMm) return "no";
  if (beside.some((one) => one !== undefined && one > shallowToMm)) return "no";
  return beside.includes(undefined) ? "unknown" : "yes";
}

/**
 * Whether a narrow deep defect was probed round a tooth: one site is enough, and all six are needed to say no.
 * Takes depths in mm.
 * @source as {@link probedSites}
 */
export const narrowDefectIs = (depths: ProbingDepths): Truth => anyOf(probedSites(depths).map(({ narrow }) => narrow));
