import { z } from "zod";
import { intervalSchema } from "../../core/basis.ts";
import type { DifficultyCanal, DifficultyInput } from "../../core/diagnosis/difficulty/difficulty-input.ts";
import { canalNames } from "../../core/tooth/canal-root.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { partsOf, thePart } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { twoViewBinding } from "../bindings/two-view.ts";
import { startOfTrace } from "../course-on-film.ts";
import { earlierRead } from "../earlier-read.ts";
import type { FactTold } from "../fact-told.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";

type Measure = keyof DifficultyCanal;
type Known = { readonly [Field in Measure]?: { readonly value: DifficultyCanal[Field]; readonly record: string } };

/** Each canal that is named or traced, with its bend in space or else on the film that shows it most, and its length. */
export function canalFacts(context: BindingContext): FactTold<keyof DifficultyInput>[] {
  const canals = namesIn(context).map((name) => ({ name, known: knownOf(name, context) }));
  if (canals.length === 0) return [];
  const value = canals.map(({ name, known }) => ({
    name,
    ...Object.fromEntries(Object.entries(known).map(([field, one]) => [field, one.value])),
  }));
  const paths = canals.flatMap(({ known }, index) =>
    Object.entries(known).map(([field, { record }]): InputPath => ({ input: `canals[${index}].${field}`, record })),
  );
  return [{ field: "canals", value, paths }];
}

/** The topic takes ten; no tooth is known to have more. */
const mostCanals = 10;

function namesIn({ parts }: BindingContext): string[] {
  const named = (thePart(parts, "anatomy")?.body.roots ?? []).flatMap(canalNames);
  const traced = tracesIn(parts).flatMap(({ body }) => body.canal ?? []);
  return [...new Set([...named, ...traced])].slice(0, mostCanals);
}

/** Courses along the canal itself; one along a filling shows what was made of it. */
const tracesIn = (parts: BindingContext["parts"]): MarkOf<"trace">[] =>
  partsOf(parts, "film")
    .flatMap(({ id }) => marksOn(parts, id, "trace"))
    .filter(({ body }) => body.kind === undefined || body.kind === "canal" || body.kind === "instrument");

const knownOf = (canal: string, context: BindingContext): Known => ({
  ...(bendInSpace(canal, context) ?? bendOnFilm(canal, context)),
  ...lengthOf(canal, context),
});

const bend = z.looseObject({ angleDeg: z.number(), side: z.string() });
const curvature = z.looseObject({
  pruettDeg: z.number(),
  pruettRadiusMm: z.number().optional(),
  bends: z.array(bend),
  intervals: z.record(z.string(), intervalSchema),
});
const inSpace = z.looseObject({ curvature });

/** The course that films at several angles give together. */
function bendInSpace(canal: string, context: BindingContext): Known | undefined {
  const subjects = twoViewBinding.ask(context).map(({ subject }) => subject);
  const own = subjects.filter((subject) => subject.startsWith(`twoView of ${canal} `));
  const [found] = earlierRead(context, inSpace, own);
  if (found === undefined) return undefined;
  return bendIn(found.read.curvature, (field) => found.record(`curvature.${field}`), false);
}

/** Of the films that show the canal, the one on which it turns most: the true bend is at least that. */
function bendOnFilm(canal: string, context: BindingContext): Known | undefined {
  const own = tracesIn(context.parts).filter(({ body }) => body.canal === canal);
  const seen = earlierRead(context, curvature, own.map(curvatureOf));
  const [most] = seen.sort((a, b) => b.read.pruettDeg - a.read.pruettDeg);
  return most === undefined ? undefined : bendIn(most.read, most.record, true);
}

const curvatureOf = ({ id }: MarkOf<"trace">): string => `curvature of ${id}`;

function bendIn(read: z.infer<typeof curvature>, at: (field: string) => string, fromOneFilm: boolean): Known {
  const { pruettDeg, pruettRadiusMm, intervals } = read;
  const at95 = (field: string) => {
    const interval = intervals[field];
    return interval === undefined ? undefined : { value: interval, record: at(`intervals.${field}`) };
  };
  const [angle, radius] = [at95("pruettDeg"), at95("pruettRadiusMm")];
  const twice = turnsTwice(read);
  return {
    deflectionDeg: { value: pruettDeg, record: at("pruettDeg") },
    ...(angle === undefined ? {} : { deflectionInterval: angle }),
    ...(pruettRadiusMm === undefined ? {} : { radiusMm: { value: pruettRadiusMm, record: at("pruettRadiusMm") } }),
    ...(pruettRadiusMm === undefined || radius === undefined ? {} : { radiusInterval: radius }),
    // One film may hide a second bend; that it shows none says nothing.
    ...(twice || !fromOneFilm ? { sCurve: { value: twice, record: at("bends") } } : {}),
    fromOneFilm: { value: fromOneFilm, record: at("pruettDeg") },
  };
}

/** A turn up to this is called straight (Schneider 1971, memory). */
const straightToDeg = 5;

function turnsTwice({ bends }: z.infer<typeof curvature>): boolean {
  const sides = bends.filter(({ angleDeg }) => angleDeg > straightToDeg).map(({ side }) => side);
  return sides.includes("opposite") || (sides.includes("left") && sides.includes("right"));
}

const length = z.looseObject({ lengthMm: z.number(), intervals: z.record(z.string(), intervalSchema) });

/**
 * The length by the last film that shows the canal from its reference point, else the working length of the last visit
 * that has one. It is that of the course itself: a working length also hangs on where a person means to stop.
 */
function lengthOf(canal: string, context: BindingContext): Known {
  const { parts } = context;
  const own = tracesIn(parts).filter(
    (trace) => trace.body.canal === canal && startOfTrace(trace, parts) === "referencePoint",
  );
  const last = earlierRead(context, length, own.map(curvatureOf)).at(-1);
  if (last !== undefined) {
    const { read, record } = last;
    const interval = read.intervals.lengthMm;
    return {
      lengthMm: { value: read.lengthMm, record: record("lengthMm") },
      ...(interval === undefined ? {} : { lengthInterval: { value: interval, record: record("intervals.lengthMm") } }),
    };
  }
  const worked = partsOf(parts, "visit").flatMap(({ id, body }) =>
    body.canals.flatMap((row, index) =>
      row.canal === canal && row.workingLengthMm !== undefined
        ? [{ value: row.workingLengthMm, record: `${id}/canals/${index}/workingLengthMm`, on: body.on }]
        : [],
    ),
  );
  const [latest] = worked.sort((a, b) => (a.on < b.on ? 1 : -1));
  return latest === undefined ? {} : { lengthMm: { value: latest.value, record: latest.record } };
}
