import { bendTopic } from "../../core/instrument/bend-topic.ts";
import type { SizedInstrument } from "../../record/instrument-as-told.ts";
import { instrumentsByName } from "../../record/instrument-name.ts";
import type { PartOf } from "../../record/parts.ts";
import { partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { type NoSeat, type SeatInCanal, seatInCanal } from "../course-of-canal-for-instrument/seat-in-canal.ts";
import { brokenInstruments, seatAtBreak } from "../instruments-used/broken-instrument.ts";
import { instrumentAsked, instrumentPaths } from "../instruments-used/instrument-asked.ts";
import { instrumentThatBroke } from "../instruments-used/instrument-that-broke.ts";
import { type RowUsed, rowsOfVisit, tipOfRow } from "../instruments-used/rows-used.ts";

/** How much each instrument was bent where it went deepest in a canal at a visit, and the one that broke where it did. */
export const bendBinding: Binding = {
  topic: bendTopic,
  ask: (context) => [
    ...partsOf(context.parts, "visit").flatMap((visit) => bendsOfVisit(visit, context)),
    ...brokenInstruments(context.parts).flatMap((mishap) => {
      const broke = instrumentThatBroke(mishap);
      if (broke === undefined) return [];
      if ("why" in broke) return [{ subject: `bend of ${mishap.id}`, ...broke }];
      return [bendOf(mishap.id, broke, seatAtBreak(mishap, context))];
    }),
  ],
};

function bendsOfVisit(visit: PartOf<"visit">, context: BindingContext): (Question | Gap)[] {
  const used = rowsOfVisit(visit);
  return instrumentsByName(visit.body.instruments).flatMap(({ name, geometry, rows }) => {
    const own = rows.flatMap((index) => used[index] ?? []);
    const canals = [...new Set(own.flatMap(({ row }) => row.canal ?? []))];
    return canals.flatMap((canal) => {
      const deepest = deepestOf(own.filter(({ row }) => row.canal === canal));
      if (deepest === undefined) return [];
      const seat = seatInCanal({ canal, on: visit.body.on, tip: tipOfRow(deepest) }, context);
      return [bendOf(`${visit.id} ${canal} ${name}`, { geometry, record: deepest.record }, seat)];
    });
  });
}

const deepestOf = (rows: readonly RowUsed[]): RowUsed | undefined =>
  rows.toSorted((a, b) => (b.row.depthMm ?? 0) - (a.row.depthMm ?? 0))[0];

interface Described {
  readonly geometry: SizedInstrument;
  readonly record: string;
}

function bendOf(about: string, { geometry, record }: Described, seat: SeatInCanal | NoSeat): Question | Gap {
  const subject = `bend of ${about}`;
  const paths = instrumentPaths(geometry, record);
  if ("why" in seat) return { subject, why: seat.why, inputPaths: paths };
  const { course, tipDepthMm } = seat;
  return {
    subject,
    input: {
      instrument: instrumentAsked(geometry),
      course: { points: course.points, sigmaMm: course.sigmaMm },
      ...(course.startsAt === "orifice" ? {} : { courseStarts: course.startsAt }),
      tipDepthMm,
      view: course.view,
    },
    inputPaths: [...paths, ...seat.paths],
  };
}
