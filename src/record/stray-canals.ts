import { canalNames } from "../core/tooth/canal-root.ts";
import { type Part, type PartKind, thePart } from "./parts.ts";

/** A canal that something names and no root of the tooth holds. */
export interface StrayCanal {
  readonly canal: string;
  /** Parts that name it, by their kind. */
  readonly namedBy: readonly { readonly kind: PartKind; readonly count: number }[];
}

/**
 * Canals that parts of a case name and no root holds, as after a canal was renamed or joined away.
 * Takes the parts of a case; gives them in the order in which they are named, and nothing while no roots are recorded.
 */
export function strayCanals(parts: readonly Part[]): readonly StrayCanal[] {
  const roots = thePart(parts, "anatomy")?.body.roots;
  if (roots === undefined) return [];
  const held = new Set(roots.flatMap((root) => canalNames(root)));
  const found = new Map<string, Map<PartKind, number>>();
  for (const part of parts)
    for (const canal of new Set(canalsNamedBy(part)))
      if (!held.has(canal)) {
        const kinds = found.get(canal) ?? new Map<PartKind, number>();
        found.set(canal, kinds.set(part.kind, (kinds.get(part.kind) ?? 0) + 1));
      }
  return [...found].map(([canal, kinds]) => ({
    canal,
    namedBy: [...kinds].map(([kind, count]) => ({ kind, count })),
  }));
}

function canalsNamedBy({ kind, body }: Part): readonly string[] {
  if (kind === "anatomy") return body.filledBefore ?? [];
  if (kind === "visit") return body.canals.map(({ canal }) => canal);
  if (kind === "findings") return (body.existing ?? []).map(({ canal }) => canal);
  if (kind === "mishap" || kind === "pairing") return body.canal === undefined ? [] : [body.canal];
  if (kind !== "mark" || !("canal" in body) || body.canal === undefined) return [];
  return [body.canal];
}
