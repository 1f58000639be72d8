import { notToldOf, type SizedInstrument, sizedInstrument } from "../../record/instrument-as-told.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import type { PartOf } from "../../record/parts.ts";

/** The instrument that broke with its place in the record, or why there is none to ask with. */
export type InstrumentThatBroke =
  | { readonly geometry: SizedInstrument; readonly record: string }
  | { readonly why: string; readonly inputPaths: readonly InputPath[] };

/** The instrument of a mishap; without size or taper what to supply; undefined where none was part of it. */
export function instrumentThatBroke({ id, body }: PartOf<"mishap">): InstrumentThatBroke | undefined {
  const { instrument } = body;
  if (instrument === undefined) return undefined;
  const record = `${id}/instrument`;
  const geometry = sizedInstrument(instrument);
  if (geometry !== undefined) return { geometry, record };
  const missing = notToldOf(instrument).filter((field) => field === "size" || field === "taper");
  return {
    why: `the ${missing.join(" and the ")} of the instrument that broke ${missing.length > 1 ? "are" : "is"} not told; say in the mishap which instrument it was`,
    inputPaths: [{ input: "instrument", record }],
  };
}
