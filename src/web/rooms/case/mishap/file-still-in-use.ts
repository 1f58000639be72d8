import type { CabinetItem, CabinetItemOf } from "../../../../record/cabinet/cabinet-item.ts";
import { filesOf } from "../../../../record/cabinet/items-of-cabinet.ts";
import type { Mishap } from "./with-kind.ts";

/** The counted file of a broken instrument, as long as the cabinet still offers it for the next canal. */
export function fileStillInUse(
  { separated }: Pick<Mishap, "separated">,
  items: readonly CabinetItem[],
): CabinetItemOf<"file"> | undefined {
  const named = separated?.file?.id;
  return filesOf(items).find(({ id, body }) => id === named && body.discarded === undefined);
}
