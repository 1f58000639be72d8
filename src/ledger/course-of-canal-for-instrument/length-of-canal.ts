import { z } from "zod";
import { partsOf } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { startOfTrace } from "../course-on-film.ts";
import { earlierRead } from "../earlier-read.ts";
import { marksOn } from "../marks-on.ts";

/** A canal's working length from its reference point, how far short of the canal's end it stops, and where both stand. */
export interface LengthOfCanal {
  readonly workingMm: number;
  readonly stopShortMm: number;
  readonly records: readonly string[];
}

/**
 * The working length of a canal on a day: that of the visits' tables of canals, the nearest day first, else that of the
 * nearest film; undefined where neither says any.
 */
export const lengthOfCanal = (canal: string, on: string, context: BindingContext): LengthOfCanal | undefined =>
  lengthInTable(canal, on, context) ?? lengthByFilm(canal, on, context);

const days = (one: string, other: string): number => Math.abs(Date.parse(one) - Date.parse(other));

function lengthInTable(canal: string, on: string, { parts, settings }: BindingContext): LengthOfCanal | undefined {
  const rows = partsOf(parts, "visit").flatMap(({ id, body }) =>
    body.canals.flatMap((row, index) =>
      row.canal === canal && row.workingLengthMm !== undefined
        ? [{ workingMm: row.workingLengthMm, record: `${id}/canals/${index}/workingLengthMm`, off: days(body.on, on) }]
        : [],
    ),
  );
  const [nearest] = rows.sort((a, b) => a.off - b.off);
  if (nearest === undefined) return undefined;
  const records = [nearest.record, "settings/stopShortMm"];
  return { workingMm: nearest.workingMm, stopShortMm: settings.stopShortMm, records };
}

const byFilm = z.looseObject({ recommendedMm: z.number(), stopShortMm: z.number() });

function lengthByFilm(canal: string, on: string, context: BindingContext): LengthOfCanal | undefined {
  const { parts } = context;
  const traced = partsOf(parts, "film").flatMap(({ id, body }) =>
    marksOn(parts, id, "trace")
      .filter((trace) => trace.body.canal === canal && startOfTrace(trace, parts) === "referencePoint")
      .map((trace) => ({ subject: `workingLength of ${trace.id}`, off: days(body.takenOn, on) })),
  );
  const subjects = traced.sort((a, b) => a.off - b.off).map(({ subject }) => subject);
  const [found] = earlierRead(context, byFilm, subjects);
  if (found === undefined) return undefined;
  const { recommendedMm: workingMm, stopShortMm } = found.read;
  return { workingMm, stopShortMm, records: [found.record("recommendedMm"), found.record("stopShortMm")] };
}
