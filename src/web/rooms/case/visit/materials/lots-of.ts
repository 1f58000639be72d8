import { expiredAsked } from "../../../../../record/unusual-amounts.ts";
import type { Typed } from "./read-typed.ts";
import type { Stock } from "./stock-offered.ts";
import type { Visit } from "./use-visit.ts";

type Lot = Visit["lots"][number];

/** Lot and expiry of a package, as they stand in the fields. */
export const lotTyped = (item: Stock | undefined): Typed => ({
  lot: item?.body.lot ?? "",
  expires: item?.body.expires ?? "",
});

/** The lot row of something that stays in the tooth; none where neither lot nor expiry is told. */
export function lotOf(material: string, typed: Typed): Lot | undefined {
  const lot = (typed.lot ?? "").trim();
  const expires = typed.expires ?? "";
  if (lot === "" && expires === "") return undefined;
  return { material, lot, ...(expires === "" ? {} : { expires }), stays: true };
}

/** The lots of a visit with one more; a row that stands there already is not written twice. */
export function withLot(lots: Visit["lots"], lot: Lot | undefined): Visit["lots"] {
  if (lot === undefined) return lots;
  const isSame = (one: Lot): boolean =>
    one.material === lot.material && one.lot === lot.lot && one.expires === lot.expires;
  return lots.some(isSame) ? lots.map((one) => (isSame(one) ? { ...one, stays: true } : one)) : [...lots, lot];
}

/** What is asked of a package past its day. */
export const askedOfLot = (material: string, typed: Typed, on: string) =>
  expiredAsked(material, typed.expires === "" ? undefined : typed.expires, on);

interface Package {
  /** What it holds, by kind. */
  readonly material: string;
  readonly typed: Typed;
  /** What was asked of it, as `askedOfLot` gave it. */
  readonly asked: readonly unknown[];
  readonly atMin: number | undefined;
}

/** A visit with the lot of a package that was used, noted in its log where it was past its day; and what the gesture adds then. */
export function withPackage(
  visit: Visit,
  { material, typed, asked, atMin }: Package,
): { next: Visit; expired: string } {
  const expired = expiredSays(asked, typed);
  const held = { ...visit, lots: withLot(visit.lots, lotOf(material, typed)) };
  return { next: withExpiredNoted(held, expired === "" ? "" : `${material}${expired}`, atMin), expired };
}

/** What a gesture adds where a package past its day was used all the same. */
const expiredSays = (asked: readonly unknown[], typed: Typed): string =>
  asked.length === 0 ? "" : `, expired ${typed.expires}, confirmed by ${(typed.confirmedBy ?? "").trim()}`;

/** The log with a line on a package past its day; a visit without a clock has none to write it in. */
export function withExpiredNoted(visit: Visit, says: string, atMin: number | undefined): Visit {
  if (says === "" || atMin === undefined) return visit;
  return { ...visit, log: [...(visit.log ?? []), { atMin: Math.floor(atMin), says: says.slice(0, 300) }] };
}
