import type { PartKind } from "../../../../record/parts.ts";
import { type StrayCanal, strayCanals } from "../../../../record/stray-canals.ts";
import { countOf } from "../../../parts/figures-in-words.ts";
import { useCaseNow } from "../case-now.ts";

const kindWords: Partial<Readonly<Record<PartKind, readonly [one: string, more: string]>>> = {
  visit: ["visit", "visits"],
  findings: ["examination", "examinations"],
  mishap: ["mishap", "mishaps"],
  mark: ["mark on a film", "marks on films"],
  pairing: ["course in space", "courses in space"],
};

/** Names of canals that the case speaks of and no root holds: they are not lost, but the drawing can't show them. */
export function StrayNames() {
  const { parts } = useCaseNow();
  const stray = strayCanals(parts);
  if (stray.length === 0) return null;
  return (
    <ul className="look stray-names" aria-label="Names that no root holds">
      {stray.map((one) => (
        <li key={one.canal}>
          {one.canal} is named by {namedBy(one)}, and no root holds it: name a canal so here, or change the name there.
        </li>
      ))}
    </ul>
  );
}

const namedBy = ({ namedBy: kinds }: StrayCanal): string =>
  kinds
    .map(({ kind, count }) => {
      const [one, more] = kindWords[kind] ?? [];
      return one === undefined ? "what came filled" : countOf(count, one, more);
    })
    .join(" and ");
