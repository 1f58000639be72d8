import type { RemovalInput } from "../../core/instrument/removal-input.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import type { PartOf } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { type FactTold, factTold } from "../fact-told.ts";
import { pieceMeasures, pieceOnFilm, seatAtBreak } from "./broken-instrument.ts";

/** A piece where it lies, as the weighing of its removal asks. */
export interface PieceInCanal {
  readonly fragment: RemovalInput["fragment"];
  readonly paths: readonly InputPath[];
  /** Of the canal, by the film; none where no film tells it. */
  readonly third: FactTold<"third">[];
}

interface Found {
  readonly mm: number;
  readonly records: readonly string[];
}

/**
 * Length, depth of its head and width of its head. The head's depth is the one that the removal's part says; else the depth
 * of the tip at the break less the length; else that on the film, where its canal is traced from the orifice.
 */
export function pieceInCanal(
  mishap: PartOf<"mishap">,
  { id, body }: PartOf<"removal">,
  context: BindingContext,
): PieceInCanal {
  const { fragment: measured, paths } = pieceMeasures(mishap, ["lengthMm", "brokenEndDiameterMm"], context);
  const onFilm = pieceOnFilm(mishap, context);
  const length = of(measured.lengthMm?.value, ...recordsOf(paths, "lengthMm"));
  const head = of(body.headDepthMm, `${id}/headDepthMm`) ?? belowTip(mishap, length, context) ?? topOnFilm(onFilm);
  const width =
    of(body.headDiameterMm, `${id}/headDiameterMm`) ??
    of(measured.brokenEndDiameterMm?.value, ...recordsOf(paths, "brokenEndDiameterMm"));
  const found = Object.entries({ lengthMm: length, headDepthMm: head, headDiameterMm: width });
  const third = onFilm?.read.thirds?.top.third;
  return {
    fragment: Object.fromEntries(found.flatMap(([field, one]) => (one === undefined ? [] : [[field, one.mm]]))),
    paths: found.flatMap(([field, one]) =>
      (one?.records ?? []).map((record) => ({ input: `fragment.${field}`, record })),
    ),
    third: onFilm === undefined ? [] : factTold("third", third, onFilm.record("thirds.top.third")),
  };
}

const of = (mm: number | undefined, ...records: readonly string[]): Found | undefined =>
  mm === undefined ? undefined : { mm, records };

const recordsOf = (paths: readonly InputPath[], field: string): string[] =>
  paths.filter(({ input }) => input === `fragment.${field}`).map(({ record }) => record);

function belowTip(mishap: PartOf<"mishap">, length: Found | undefined, context: BindingContext): Found | undefined {
  const seat = seatAtBreak(mishap, context);
  if (length === undefined || "why" in seat || seat.course.startsAt !== "orifice") return undefined;
  const mm = seat.tipDepthMm - length.mm;
  const records = seat.paths.filter(({ input }) => input === "tipDepthMm").map(({ record }) => record);
  return mm > 0 ? { mm, records: [...records, ...length.records] } : undefined;
}

function topOnFilm(piece: ReturnType<typeof pieceOnFilm>): Found | undefined {
  const { topDepthMm, startsAt } = piece?.read ?? {};
  if (piece === undefined || startsAt !== "orifice" || topDepthMm === undefined || topDepthMm <= 0) return undefined;
  return { mm: topDepthMm, records: [piece.record("topDepthMm")] };
}
