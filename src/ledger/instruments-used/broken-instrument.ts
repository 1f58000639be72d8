import { z } from "zod";
import { intervalSchema } from "../../core/basis.ts";
import type { Measured } from "../../core/instrument/measured.ts";
import { reach95 } from "../../core/radiograph/interval-around.ts";
import { sizedInstrument } from "../../record/instrument-as-told.ts";
import { isSameInstrument } from "../../record/instrument-name.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type Part, type PartOf, partsOf } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { type NoSeat, type SeatInCanal, seatInCanal } from "../course-of-canal-for-instrument/seat-in-canal.ts";
import { type EarlierRead, earlierRead } from "../earlier-read.ts";
import { marksOn } from "../marks-on.ts";
import { type RowUsed, rowsUsed } from "./rows-used.ts";

type Mishap = PartOf<"mishap">;

/** The mishaps in which an instrument broke. */
export const brokenInstruments = (parts: readonly Part[]): Mishap[] =>
  partsOf(parts, "mishap").filter(({ body }) => body.what === "separatedInstrument");

/** The instrument that broke, seated in its canal as it was then; or what is missing. */
export function seatAtBreak({ id, body }: Mishap, context: BindingContext): SeatInCanal | NoSeat {
  const { tipDepthMm: depthMm, depthFrom = "referencePoint" } = body.separated ?? {};
  const tip = depthMm === undefined ? undefined : { depthMm, depthFrom, record: `${id}/separated/tipDepthMm` };
  return seatInCanal({ canal: body.canal, on: body.on, tip }, context);
}

/**
 * The uses of the instrument that broke, the one in which it broke last: those of the same counted file in this case up to
 * then, else those of the same geometry in the visit of the break, up to its canal.
 */
export function usesUntilBreak({ body }: Mishap, parts: readonly Part[]): RowUsed[] {
  const { separated, canal } = body;
  const instrument = sizedInstrument(body.instrument);
  if (instrument === undefined) return [];
  const file = separated?.file?.id;
  const inVisit = (used: RowUsed): boolean =>
    body.visit === undefined ? used.visit.body.on === body.on : used.visit.id === body.visit;
  const own = rowsUsed(parts).filter((used) =>
    file === undefined
      ? inVisit(used) && isSameInstrument(used.row, instrument)
      : used.row.file?.id === file && used.visit.body.on <= body.on,
  );
  const last = own.findLastIndex((used) => inVisit(used) && used.row.canal === canal);
  return last < 0 ? own : own.slice(0, last + 1);
}

const onFilm = z.looseObject({
  lengthMm: z.number(),
  topDepthMm: z.number().optional(),
  startsAt: z.string().optional(),
  thirds: z.looseObject({ top: z.looseObject({ third: z.enum(["coronal", "middle", "apical"]) }) }).optional(),
  intervals: z.record(z.string(), intervalSchema),
});
/** A piece as an entry of the ledger has it from a film. */
export type PieceOnFilm = EarlierRead<z.infer<typeof onFilm>>;

/** The piece as it is drawn on a film of its canal, on the day nearest the break. */
export function pieceOnFilm({ body }: Mishap, context: BindingContext): PieceOnFilm | undefined {
  const off = (day: string): number => Math.abs(Date.parse(day) - Date.parse(body.on));
  const drawn = partsOf(context.parts, "film").flatMap((film) =>
    marksOn(context.parts, film.id, "fragment")
      .filter((mark) => mark.body.canal === body.canal)
      .map(({ id }) => ({ subject: `fragmentOnFilm of ${id}`, off: off(film.body.takenOn) })),
  );
  const subjects = drawn.sort((a, b) => a.off - b.off).map(({ subject }) => subject);
  return earlierRead(context, onFilm, subjects)[0];
}

/** A measure of the piece by the name that the topics have for it. */
export type MeasureName = "lengthMm" | "brokenEndDiameterMm" | "remainingLengthMm" | "tipDiameterMm";
/** The measures of a piece, and where they come from. */
export interface PieceMeasures {
  readonly fragment: Readonly<Partial<Record<MeasureName, Measured>>>;
  readonly paths: readonly InputPath[];
}

/** What was measured on a piece: as the record says, its length by the film where it says none. */
export function pieceMeasures(mishap: Mishap, names: readonly MeasureName[], context: BindingContext): PieceMeasures {
  const found = names.flatMap((name) => {
    const value = mishap.body.separated?.[name];
    if (value !== undefined) return [{ name, value, record: `${mishap.id}/separated/${name}` }];
    const seen = name === "lengthMm" ? lengthOnFilm(pieceOnFilm(mishap, context)) : undefined;
    return seen === undefined ? [] : [{ name, ...seen }];
  });
  return {
    fragment: Object.fromEntries(found.map(({ name, value }) => [name, value])),
    paths: found.map(({ name, record }) => ({ input: `fragment.${name}`, record })),
  };
}

function lengthOnFilm(piece: PieceOnFilm | undefined): { value: Measured; record: string } | undefined {
  const interval = piece?.read.intervals.lengthMm;
  if (piece === undefined || interval === undefined) return undefined;
  const sigma = (interval.high - interval.low) / (2 * reach95);
  return sigma > 0 ? { value: { value: piece.read.lengthMm, sigma }, record: piece.record("lengthMm") } : undefined;
}
