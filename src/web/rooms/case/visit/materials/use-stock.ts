import { dayInWords } from "../../../../parts/days-in-words.ts";
import { useCabinet } from "../../../../record/cabinet.ts";
import type { Offer } from "./offers.tsx";
import { isExpired, type Stock, type StockOf, stockOffered } from "./stock-offered.ts";
import type { Visit } from "./use-visit.ts";

/** The clinic's stock of one kind, as it is offered at a visit. */
export function useStock<Kind extends Stock["body"]["holds"]["kind"]>(
  kind: Kind,
  visit: Visit,
): readonly StockOf<Kind>[] {
  const { view } = useCabinet();
  return stockOffered(view?.items ?? [], kind, visit.template?.id);
}

/** Stock as something to choose; that a package is past its day is said loudly. */
export const offerOf = (item: Stock, says: string, on: string): Offer => ({
  ...{ id: item.id, name: item.body.name, says: [says, ...(item.body.demo === true ? ["demo"] : [])].join(", ") },
  ...(isExpired(item, on) && item.body.expires !== undefined
    ? { look: `expired ${dayInWords(item.body.expires)}` }
    : {}),
});

/** The minute of the clock as it stands in a field; empty while no clock runs. */
export const minuteTyped = (atMin: number | undefined): string =>
  atMin === undefined ? "" : String(Math.floor(atMin));

/** Says of an amount that stands as the clinic's usual that it is. */
export const usualFrom = (usual: number | undefined, typed: string | undefined): string | undefined =>
  usual !== undefined && typed === String(usual) ? "the clinic's usual" : undefined;
