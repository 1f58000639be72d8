import duncan from "../../../../data/duncan-2023/source.json" with { type: "json" };
import type { Facts } from "./facts-of.ts";

/** The European terms of a pair, and what could not be said of it. */
interface EuropeanTerms {
  readonly terms: { pulpal?: string; apical?: string };
  readonly notComputed: { name: string; why: string }[];
}

/**
 * The terms of the European guideline where they differ: it parts pulpitis by spontaneous pain, and speaks of apical
 * periodontitis without parting it by symptoms.
 * @source Duncan HF et al., Int Endod J, 2023, 238-295 (memory); docs/methods/diagnosis, C12
 */
export function europeanTerms({ pulpal, apical }: { pulpal: string; apical: string }, facts: Facts): EuropeanTerms {
  const apicalTerm = apical.endsWith("apical periodontitis") ? { apical: duncan.terms.apical } : {};
  if (!pulpal.endsWith("pulpitis")) return { terms: apicalTerm, notComputed: [] };
  const spontaneous = facts.spontaneous?.is;
  if (spontaneous === "yes") return { terms: { pulpal: duncan.terms.spontaneous, ...apicalTerm }, notComputed: [] };
  if (spontaneous === "no") return { terms: { pulpal: duncan.terms.notSpontaneous, ...apicalTerm }, notComputed: [] };
  const why = "the European guideline parts pulpitis by spontaneous pain, which was not asked for";
  return { terms: apicalTerm, notComputed: [{ name: "european.pulpal", why }] };
}
