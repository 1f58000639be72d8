import type { CabinetItem, CabinetItemOf } from "../../../../../record/cabinet/cabinet-item.ts";

/** Something of the clinic's that a visit uses. */
export type Stock = CabinetItemOf<"stock">;
type Holds = Stock["body"]["holds"];
/** Stock that holds one kind of material. */
export type StockOf<Kind extends Holds["kind"]> = Stock & {
  readonly body: { readonly holds: Extract<Holds, { readonly kind: Kind }> };
};

/**
 * The clinic's stock of one kind in the order in which it is offered: what the visit's template names first, in its order,
 * then the rest as the cabinet has it.
 */
export function stockOffered<Kind extends Holds["kind"]>(
  items: readonly CabinetItem[],
  kind: Kind,
  templateId: string | undefined,
): readonly StockOf<Kind>[] {
  const ofKind = items.filter((item): item is StockOf<Kind> & CabinetItem => isStockOf(item, kind));
  const template = items.find((item) => item.kind === "template" && item.id === templateId);
  const first = template?.kind === "template" ? template.body.stock : [];
  const named = first.flatMap((id) => ofKind.filter((item) => item.id === id));
  return [...named, ...ofKind.filter((item) => !named.includes(item))];
}

const isStockOf = (item: CabinetItem, kind: Holds["kind"]): boolean =>
  item.kind === "stock" && item.body.holds.kind === kind;

/** Whether a package is past its day on a day. */
export const isExpired = ({ body }: Stock, on: string): boolean => body.expires !== undefined && body.expires < on;
