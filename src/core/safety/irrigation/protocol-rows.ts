import type { ProtocolLine } from "./irrigation-input.ts";
import type { ProtocolRow, Total } from "./irrigation-output.ts";
import { nameOf } from "./solution-kinds.ts";

/**
 * How the totals stand to the clinic's own protocol; a solution that was not used counts as 0.
 * @source docs/methods/irrigation.md C8
 */
export const protocolRows = (protocol: readonly ProtocolLine[], totals: readonly Total[]): ProtocolRow[] =>
  protocol.flatMap((line): ProtocolRow[] => {
    const name = nameOf(line.solution);
    const { minutes = 0, volumeMl = 0 } = totals.find(({ solution }) => solution === name) ?? {};
    return (["minutesAtLeast", "minutesAtMost", "volumeMlAtLeast"] as const).flatMap((what): ProtocolRow[] => {
      const wanted = line[what];
      if (wanted === undefined) return [];
      const found = what === "volumeMlAtLeast" ? volumeMl : minutes;
      const stands = found < wanted ? "below" : found > wanted ? "above" : "at";
      const met = stands !== (what === "minutesAtMost" ? "above" : "below");
      return [{ solution: name, what, wanted, found, stands, met }];
    });
  });
