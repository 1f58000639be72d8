import type { CabinetItem, CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import { stockOf, templatesOf } from "../../../record/cabinet/items-of-cabinet.ts";

/** Whether the package of a material is past its day; on the day itself it is not. */
export const isPast = ({ body }: CabinetItemOf<"stock">, on: string): boolean =>
  body.expires !== undefined && body.expires < on;

/** The materials as the answers of a choice, without those that are named already: name by id. */
export const stockChoices = (
  items: readonly CabinetItem[],
  named: readonly string[] = [],
): Readonly<Record<string, string>> =>
  Object.fromEntries(stockOf(items).flatMap(({ id, body }) => (named.includes(id) ? [] : [[id, body.name] as const])));

/** The names of the templates that offer a material first. */
export const templatesNaming = (items: readonly CabinetItem[], id: string): readonly string[] =>
  templatesOf(items).flatMap(({ body }) => (body.stock.includes(id) ? [body.name] : []));
