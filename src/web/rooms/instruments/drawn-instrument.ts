import type { ScaledInstrument } from "../../../figures/instrument-to-scale.ts";
import type { CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import type { CabinetView } from "../../../server/api.ts";
import { geometryInWords, nameOfItem } from "./item-names.ts";
import { measuresOf } from "./measures-of.ts";

/** An instrument as it is drawn, by what is computed of it; nothing while that is not known. */
export function drawnInstrument(
  item: CabinetItemOf<"instrument">,
  shown: CabinetView["shown"],
): ScaledInstrument | undefined {
  const told = measuresOf(shown[item.id]);
  if (told === undefined) return undefined;
  const { profile, colour } = told;
  return { name: nameOfItem(item), says: geometryInWords(item.body), profile, lengthMm: item.body.lengthMm, colour };
}
