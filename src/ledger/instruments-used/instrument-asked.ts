import type { Instrument } from "../../core/instrument/instrument-fields.ts";
import { geometryOf, type InstrumentGeometry } from "../../record/instrument-name.ts";
import type { InputPath } from "../../record/ledger-entry.ts";

/** An instrument as the topics ask for it: the stations of a variable taper stand in place of the taper. */
export function instrumentAsked(described: InstrumentGeometry): Instrument {
  const { taper, profile, ...others } = geometryOf(described);
  return { ...others, ...(profile === undefined ? { taper } : { profile }) };
}

/** Where each value of such an instrument stands; takes the place of its description in the record and in the input. */
export const instrumentPaths = (described: InstrumentGeometry, record: string, input = "instrument"): InputPath[] =>
  Object.keys(instrumentAsked(described)).map((field) => ({
    input: input === "" ? field : `${input}.${field}`,
    record: `${record}/${field}`,
  }));
