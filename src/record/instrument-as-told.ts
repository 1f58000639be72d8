import { z } from "zod";
import { instrumentAsTold, instrumentGeometry } from "./instrument-geometry.ts";

const told = z.object(instrumentAsTold);
const sized = told.extend({ size: instrumentGeometry.size, taper: instrumentGeometry.taper });
/** An instrument as far as it was told afterwards. */
export type InstrumentAsTold = z.infer<typeof told>;
/** One of which at least size and taper were told: it has a shape. */
export type SizedInstrument = z.infer<typeof sized>;

/**
 * The instrument where its size and taper were told, without what a row says of its use.
 * Takes what was told, or nothing. Gives undefined where there is no size or no taper: nothing stands in for them.
 */
export const sizedInstrument = (one: InstrumentAsTold | undefined): SizedInstrument | undefined =>
  sized.safeParse(one).data;

const asked = ["size", "taper", "alloy", "movement"] as const;
/** What an instrument is told by. */
export type ToldBy = (typeof asked)[number];

/** Which of size, taper, alloy and movement were not told, in this order. */
export const notToldOf = (one: InstrumentAsTold): readonly ToldBy[] =>
  asked.filter((field) => one[field] === undefined);
