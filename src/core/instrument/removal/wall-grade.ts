import type { z } from "zod";
import caputo from "../../../../data/caputo-standlee-1976/source.json" with { type: "json" };
import lim from "../../../../data/lim-stock-1987/source.json" with { type: "json" };
import type { gradeSchema } from "../removal-output.ts";

/** The published limits of dentine that is left, the lower first; both from memory. */
export const wallLimits = [lim, caputo].map(({ id, limitMm }) => ({ source: id, limitMm, mark: "memory" as const }));

/** Whether a wall is below a limit; one that equals it but for the digits of a double is not. */
export const isBelow = (wallMm: number, limitMm: number): boolean => wallMm < limitMm - 1e-9;

/** How much dentine is left by the published limits. @source Lim and Stock 1987, Caputo and Standlee 1976 (memory); docs/methods/removal.md C5 */
export function wallGrade(wallLeftMm: number): z.infer<typeof gradeSchema> {
  if (wallLeftMm <= 0) return "through";
  if (isBelow(wallLeftMm, lim.limitMm)) return "critical";
  return isBelow(wallLeftMm, caputo.limitMm) ? "thin" : "recommended";
}
