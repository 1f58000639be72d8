import type { Fault } from "../../../../core/refusal.ts";
import type { InputPath, LedgerEntry } from "../../../../record/ledger-entry.ts";
import { placeOfFault } from "../../../record/body-path.ts";

/** What the ledger refused in a part, each fault at the place of the part's body that it came from. */
export function faultsAtPlaces(ledger: readonly LedgerEntry[], partId: string): readonly Fault[] {
  return ledger.flatMap(({ refused = [], inputPaths }) =>
    refused.flatMap((line) => {
      const [, at = "", says = ""] = /^([\w.[\]]+): (.*)$/s.exec(line) ?? [];
      const place = placeInPart(at, inputPaths, partId);
      return place === undefined ? [] : [{ path: place, says }];
    }),
  );
}

/** The place in the part that an input's path leads to, by the longest input that it begins with. */
function placeInPart(at: string, inputPaths: readonly InputPath[], partId: string): string | undefined {
  const [closest] = inputPaths
    .filter(({ input }) => at === input || at.startsWith(`${input}.`) || at.startsWith(`${input}[`))
    .sort((a, b) => b.input.length - a.input.length);
  const [part, ...rest] = closest?.record.split("/") ?? [];
  if (closest === undefined || part !== partId) return undefined;
  return placeOfFault([...rest, at.slice(closest.input.length)].join(".").replaceAll(/\.+(?=[.[]|$)/g, ""));
}
