import type { CabinetItem } from "../../../../record/cabinet/cabinet-item.ts";
import { nameOfItem, sizeNotTold } from "../../instruments/item-names.ts";

/** Up to so many choices are seen at one look; more can be narrowed by what is typed. */
export const choicesAtOneLook = 10;

/** The choices whose name or geometry holds every word that is typed, in their order; all of them for no word. */
export function choicesMatching<Item extends CabinetItem>(choices: readonly Item[], typed: string): Item[] {
  const words = typed.toLowerCase().split(/\s+/);
  return choices.filter((item) => {
    const geometry = item.kind === "instrument" ? sizeNotTold(item) : [];
    const text = [nameOfItem(item), ...geometry].join(" ").toLowerCase();
    return words.every((word) => text.includes(word));
  });
}
