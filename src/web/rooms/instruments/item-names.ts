import type { CabinetItem, CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import { instrumentsOf } from "../../../record/cabinet/items-of-cabinet.ts";
import { instrumentName } from "../../../record/instrument-name.ts";
import { cabinetKindWords } from "../../../record/words/cabinet-words.ts";
import { alloyWords, movementWords } from "../../../record/words/visit-words.ts";

/** What an item is called: by its own name, else by its kind. */
export function nameOfItem(item: CabinetItem): string {
  const name = item.kind === "file" ? item.body.label : item.body.name;
  return name === "" ? cabinetKindWords[item.kind] : name;
}

/** What the gestures on an item begin with, as `Counted file L3`. */
export const titleOfItem = (item: CabinetItem): string => {
  const [name, kind] = [nameOfItem(item), cabinetKindWords[item.kind]];
  return name.startsWith(kind) ? name : `${kind} ${name}`.slice(0, 60);
};

/** Geometry, alloy and movement on a line: `25/.06, nickel-titanium, continuous`. */
export const geometryInWords = (body: CabinetItemOf<"instrument">["body"]): string =>
  [instrumentName(body), alloyWords[body.alloy], movementWords[body.movement]].join(", ");

/** The name of an instrument by its id; of one that does not stand, that it does not. */
export function nameOfInstrument(items: readonly CabinetItem[], id: string): string {
  const found = instrumentsOf(items).find((one) => one.id === id);
  return found === undefined ? "not in the cabinet" : nameOfItem(found);
}

/** The instruments as the answers of a choice: name and geometry by id. */
export const instrumentChoices = (items: readonly CabinetItem[]): Readonly<Record<string, string>> =>
  Object.fromEntries(instrumentsOf(items).map((item) => [item.id, choiceOf(item)]));

const choiceOf = (item: CabinetItemOf<"instrument">): string => [nameOfItem(item), ...sizeNotTold(item)].join(", ");

/** Size and taper of an instrument whose name does not tell them, as `25/.06`; at most one. */
export function sizeNotTold({ body }: CabinetItemOf<"instrument">): readonly string[] {
  const size = instrumentName(body);
  return size.split("/").every((figure) => body.name.includes(figure)) ? [] : [size];
}
