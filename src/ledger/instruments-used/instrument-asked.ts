import type { Instrument } from "../../core/instrument/instrument-fields.ts";
import { type SizedInstrument, sizedInstrument } from "../../record/instrument-as-told.ts";
import type { InputPath } from "../../record/ledger-entry.ts";

/** An instrument as the topics ask for it: the stations of a variable taper stand in place of the taper. */
export function instrumentAsked(described: SizedInstrument): Instrument {
  // Without what a row says of its use.
  const { taper, profile, ...others } = sizedInstrument(described) ?? described;
  return { ...others, ...(profile === undefined ? { taper } : { profile }) };
}

/** Where each value of such an instrument stands; takes the place of its description in the record and in the input. */
export const instrumentPaths = (described: SizedInstrument, record: string, input = "instrument"): InputPath[] =>
  Object.keys(instrumentAsked(described)).map((field) => ({
    input: input === "" ? field : `${input}.${field}`,
    record: `${record}/${field}`,
  }));
