import { faultsOf } from "../../../core/faults-of.ts";
import type { Fault } from "../../../core/refusal.ts";
import { type CabinetItemOf, cabinetKinds } from "../../../record/cabinet/cabinet-item.ts";
import { stockInWords } from "../../../record/words/stock-words.ts";
import { valueAt, withValueAt } from "../../record/body-path.ts";

type StockBody = CabinetItemOf<"stock">["body"];

/** Chosen where a solution holds no vasoconstrictor: a silence is not taken for it. */
export const plain = "plain";

/**
 * A material that can be recorded from what was told of it, or what is still needed; paths are places of the draft. Without a name of its own
 * it is called by its kind and strength.
 */
export function stockOfDraft(draft: unknown): { readonly body: StockBody } | { readonly faults: readonly Fault[] } {
  const faults = neededOf(draft);
  const isPlain = valueAt(draft, "holds.vasoconstrictor.name") === plain;
  const raw = isPlain ? withValueAt(draft, "holds.vasoconstrictor", undefined) : draft;
  const named = String(valueAt(draft, "name") ?? "").trim() !== "";
  const parsed = cabinetKinds.stock.safeParse(named ? raw : withValueAt(raw, "name", "not told"));
  if (!parsed.success) return { faults: [...faults, ...faultsOf(parsed.error, raw).map(inWords)] };
  if (faults.length > 0) return { faults };
  return { body: named ? parsed.data : { ...parsed.data, name: stockInWords(parsed.data.holds) } };
}

const inWords = ({ path, says }: Fault): Fault => ({ path, says: says.startsWith("nothing ") ? "is needed" : says });

/** What the form lets be absent and a person has to say all the same. */
function neededOf(draft: unknown): Fault[] {
  const told = (at: string): unknown => valueAt(draft, `holds.${at}`);
  const needs = (at: string, says: string): Fault[] => (told(at) === undefined ? [{ path: `holds.${at}`, says }] : []);
  if (told("kind") === "anaesthetic") {
    const name = told("vasoconstrictor.name");
    if (name === plain) return [];
    if (name === undefined)
      return [{ path: "holds.vasoconstrictor.name", says: "with which? plain where there is none" }];
    return name === "felypressin"
      ? needs("vasoconstrictor.iuPerMl", "units a ml are needed, as 0.03")
      : needs("vasoconstrictor.ratio", "the ratio is needed; 1:100000 is written 100000");
  }
  if (told("solution") === "other") return needs("named", "what is it? its clashes are not known");
  if (told("solvent") === "other")
    return needs("own.name", "its own numbers are needed, as its safety data sheet prints them");
  return [];
}
