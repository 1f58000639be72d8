import epinephrine from "../../../../data/epinephrine-limits/source.json" with { type: "json" };
import recalled from "../../../../data/malamed-2013-recalled/source.json" with { type: "json" };
import type { AnaestheticInput, VasoconstrictorName } from "./anaesthetic-input.ts";

/** How much of a vasoconstrictor a visit may hold, in the unit it is told in. */
export interface VasoconstrictorLimit {
  readonly limit: number;
  readonly source: string;
  readonly mark: "seen" | "memory" | "own";
}

type Asked = Pick<AnaestheticInput, "cardiacRisk" | "vasoconstrictorLimits">;

/**
 * The limit of a vasoconstrictor in a visit; undefined where no source that was read has one.
 * @source teaching documents for epinephrine (seen), Malamed 2013 for levonordefrin (memory); docs/methods/anaesthetic.md C6
 */
export function vasoconstrictorLimit(name: VasoconstrictorName, asked: Asked): VasoconstrictorLimit | undefined {
  const own = asked.vasoconstrictorLimits?.find((one) => one.name === name);
  if (own !== undefined) return { limit: own.limit, source: own.source, mark: "own" };
  if (name === "levonordefrin") return { limit: recalled.levonordefrinMicrograms, source: recalled.id, mark: "memory" };
  if (name === "felypressin") return undefined;
  const limit = asked.cardiacRisk === true ? epinephrine.cardiacMicrograms : epinephrine.healthyMicrograms;
  return { limit, source: epinephrine.id, mark: "seen" };
}
