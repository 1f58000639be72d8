import type { CabinetItem, CabinetItemOf, CabinetKind } from "../../../record/cabinet/cabinet-item.ts";
import { filesOf, instrumentsOf, sequencesOf, templatesOf } from "../../../record/cabinet/items-of-cabinet.ts";

/**
 * The body of a new item: an instrument as many are, to be changed; a counted file or a sequence of the instrument that
 * is named, or that a named file is of; a template without a step. Gives nothing for a file or a sequence of no instrument, nor for a material:
 * the person is asked.
 */
export function newItemBody(
  kind: CabinetKind,
  items: readonly CabinetItem[],
  { on, of }: { readonly on: string; readonly of?: string | undefined },
): CabinetItem["body"] | undefined {
  if (kind === "instrument") return newInstrument(instrumentsOf(items).length + 1);
  if (kind === "template") return { name: `Template ${templatesOf(items).length + 1}`, steps: [], stock: [] };
  if (kind === "stock") return undefined;
  const instrument = instrumentOf(items, of);
  if (instrument === undefined) return undefined;
  if (kind === "sequence")
    return { name: `Sequence ${sequencesOf(items).length + 1}`, steps: [{ instrument: instrument.id }] };
  return { instrument: instrument.id, label: freeLabel(items), since: on, sterilisedOn: [] };
}

const newInstrument = (count: number): CabinetItemOf<"instrument">["body"] => ({
  ...{ name: `Instrument ${count}`, size: 25, taper: 0.04, alloy: "nickelTitanium", movement: "continuous" },
});

/** The instrument that is named, or that a named file is of; never another one. */
function instrumentOf(items: readonly CabinetItem[], named: string | undefined) {
  const at = items.find(({ id }) => id === named);
  const id = at?.kind === "file" ? at.body.instrument : named;
  return instrumentsOf(items).find((one) => one.id === id);
}

/** The first number that no file is called by. */
function freeLabel(items: readonly CabinetItem[]): string {
  const taken = new Set(filesOf(items).map(({ body }) => body.label));
  for (let number = 1; ; number += 1) if (!taken.has(`File ${number}`)) return `File ${number}`;
}
