import type { StockOf } from "./stock-offered.ts";
import type { Visit } from "./use-visit.ts";

/** What a material that stays in the tooth is there for. */
type FillingAs = StockOf<"filling">["body"]["holds"]["as"];

/** What a material that stays is there for, in words. */
export const fillingAsWords: Readonly<Record<FillingAs, string>> = {
  core: "core of the filling",
  sealer: "sealer",
  barrier: "barrier at the orifice",
  buildUp: "build-up",
};

/**
 * The visit with a material where it belongs: core and sealer at the canals that are named, a barrier at the orifice, a build-up.
 * What stands there already stays, the new one after it.
 */
export function withFilling(visit: Visit, material: string, as: FillingAs, canals: readonly string[]): Visit {
  if (as === "barrier") return { ...visit, orificeBarrier: joined(visit.orificeBarrier, material) };
  if (as === "buildUp") return { ...visit, buildUp: joined(visit.buildUp, material) };
  const rows = visit.canals.map((row) =>
    canals.includes(row.canal) ? { ...row, filledWith: joined(row.filledWith, material) } : row,
  );
  return { ...visit, canals: rows };
}

function joined(now: string | undefined, more: string): string {
  const stands = (now ?? "").trim();
  if (stands === "") return more;
  return stands.split(", ").includes(more) ? stands : `${stands}, ${more}`.slice(0, 300);
}
