import { z } from "zod";
import { workingLengthTopic } from "../../core/radiograph/working-length-topic.ts";
import { dayOf } from "../../record/day-of.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type Part, type PartOf, partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { startOfTrace } from "../course-on-film.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";

/** The working length that a canal's course from its reference point gives, with the apex locator's reading of that canal beside it. */
export const workingLengthBinding: Binding = {
  topic: workingLengthTopic,
  ask: (context) =>
    partsOf(context.parts, "film").flatMap((film) =>
      marksOn(context.parts, film.id, "trace")
        .filter(({ body }) => body.canal !== undefined && body.kind !== "filledCanal" && body.kind !== "other")
        // A working length is counted from the reference point; a course from the orifice says nothing about it.
        .filter((trace) => startOfTrace(trace, context.parts) === "referencePoint")
        .map((trace) => lengthOf(trace, film, context)),
    ),
};

const scale = z.object({ used: z.string() });

/** Whether the film's scale came from a known length marked on it, and where that stands. */
function scaleOf(film: string, { earlier }: BindingContext): { byKnown: boolean; record: string } {
  const found = earlier(`calibrate of ${film}`);
  if (found === undefined) return { byKnown: false, record: film };
  return { byKnown: scale.parse(found.output).used === "knownLength", record: `ledger/${found.entryId}/used` };
}

const course = z.object({
  lengthMm: z.number().optional(),
  pruettDeg: z.number().optional(),
  intervals: z.record(z.string(), z.object({ low: z.number(), high: z.number() })),
});
/** A normal interval of 95 % is this many standard deviations wide. */
const deviationsIn95 = 2 * 1.959964;
/** A turn above this is called a curved canal here, as Schneider's classes do above "straight" (1971, below 5 degrees). */
const straightBelowDeg = 5;

function lengthOf({ id, body }: MarkOf<"trace">, film: PartOf<"film">, context: BindingContext): Question | Gap {
  const subject = `workingLength of ${id}`;
  const found = context.earlier(`curvature of ${id}`);
  const measured = found === undefined ? undefined : course.parse(found.output);
  if (found === undefined || measured?.lengthMm === undefined)
    return {
      subject,
      why: "the course of this canal has no length yet",
      inputPaths: [{ input: "canalOnFilmMm", record: `${id}/points` }],
    };
  const spread = measured.intervals.lengthMm;
  const locator = locatorOf(context.parts, body.canal, film);
  const apex = apexOf(context.parts);
  const filmScale = scaleOf(film.id, context);
  const fromCourse = (field: string): string => `ledger/${found.entryId}/${field}`;
  return {
    subject,
    input: {
      canalOnFilmMm: measured.lengthMm,
      ...(spread === undefined ? {} : { sigmaMm: (spread.high - spread.low) / deviationsIn95 }),
      ...(apex.open ? {} : { stopShortMm: context.settings.stopShortMm }),
      scaledByKnown: filmScale.byKnown,
      traced: true,
      curved: (measured.pruettDeg ?? 0) >= straightBelowDeg,
      openApex: apex.open,
      ...(locator === undefined ? {} : { locatorMm: locator.mm }),
    },
    inputPaths: [
      { input: "canalOnFilmMm", record: fromCourse("lengthMm") },
      { input: "sigmaMm", record: fromCourse("intervals.lengthMm") },
      { input: "curved", record: fromCourse("pruettDeg") },
      { input: "scaledByKnown", record: filmScale.record },
      { input: "traced", record: `${id}/shape` },
      ...(apex.open ? [] : [{ input: "stopShortMm", record: "settings/stopShortMm" }]),
      ...apex.paths,
      ...(locator === undefined ? [] : [{ input: "locatorMm", record: locator.record }]),
    ],
  };
}

/** The locator's reading of a canal at the visit nearest in days to the film. */
function locatorOf(
  parts: readonly Part[],
  canal: string | undefined,
  film: PartOf<"film">,
): { mm: number; record: string } | undefined {
  const readings = partsOf(parts, "visit").flatMap((visit) =>
    visit.body.canals.flatMap((row, index) =>
      row.canal === canal && row.locatorMm !== undefined
        ? [
            {
              mm: row.locatorMm,
              record: `${visit.id}/canals/${index}/locatorMm`,
              days: daysBetween(visit.body.on, film.body.takenOn),
            },
          ]
        : [],
    ),
  );
  return readings.sort((a, b) => a.days - b.days)[0];
}

const daysBetween = (a: string, b: string): number => Math.abs(Date.parse(a) - Date.parse(b)) / 86_400_000;

/** Whether the latest findings call the apex open. */
function apexOf(parts: readonly Part[]): { open: boolean; paths: InputPath[] } {
  const read = partsOf(parts, "findings").filter((findings) => findings.body.onFilm.apex !== "notDone");
  const last = read.sort((a, b) => ((dayOf(a) ?? "") < (dayOf(b) ?? "") ? -1 : 1)).at(-1);
  if (last === undefined) return { open: false, paths: [] };
  return { open: last.body.onFilm.apex === "open", paths: [{ input: "openApex", record: `${last.id}/onFilm/apex` }] };
}
