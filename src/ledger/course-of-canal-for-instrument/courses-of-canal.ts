import { z } from "zod";
import { intervalSchema } from "../../core/basis.ts";
import type { TracedCourse } from "../../core/instrument/course-fields.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import type { BindingContext, Gap, Question } from "../binding.ts";
import { twoViewBinding } from "../bindings/two-view.ts";
import { tracesOf } from "../course-in-space.ts";
import { startOfTrace } from "../course-on-film.ts";
import { earlierRead } from "../earlier-read.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";
import { measuredOnFilm } from "../measured-on-film.ts";

/** Where a course begins. */
export type CourseStart = "orifice" | "referencePoint";

/** One course of a canal in mm that an instrument can be seated in. */
export interface CourseOfCanal {
  readonly canal: string;
  readonly points: TracedCourse["points"];
  readonly sigmaMm: number;
  readonly lengthMm: number;
  readonly startsAt: CourseStart;
  /** Whether it runs to the canal's end; one along a filling ends where the filling does. */
  readonly reachesEnd: boolean;
  /** How it was seen, as the topic `bend` asks. */
  readonly view: { readonly films: "one" | "space"; readonly longAxis?: "parallel"; readonly turnAtMostDeg?: number };
  /** Where its length stands, as an input path names it. */
  readonly lengthRecord: string;
  /** Largest bend, where it was measured, with its place in the ledger. */
  readonly bend?: { readonly deg: number; readonly record: string };
  /** Paths of the course's values, under `course`. */
  readonly paths: readonly InputPath[];
  /** The film that it was traced on; absent for one in space. */
  readonly film?: string;
}

/**
 * The courses of a canal, the one to seat an instrument in first: in space where two films give that, else films from before
 * the filling before later ones, the canal itself before an instrument in it or a filling, and the day nearest the use.
 */
export function coursesOfCanal(canal: string, on: string, context: BindingContext): readonly CourseOfCanal[] {
  const found = read.get(context) ?? new Map<string, readonly CourseOfCanal[]>();
  read.set(context, found);
  const asked = `${canal} ${on}`;
  const known = found.get(asked) ?? coursesRead(canal, on, context);
  found.set(asked, known);
  return known;
}

/** Read once for all instruments of a canal; a context is one reading of one case. */
const read = new WeakMap<BindingContext, Map<string, readonly CourseOfCanal[]>>();

function coursesRead(canal: string, on: string, context: BindingContext): CourseOfCanal[] {
  const inSpace = coursesInSpace(canal, context);
  const turnAtMostDeg = inSpace[0]?.turnAtMostDeg;
  return [...inSpace.map(({ course }) => course), ...coursesOnFilms(canal, on, { context, turnAtMostDeg })];
}

const triple = z.tuple([z.number(), z.number(), z.number()]);
const spaceOutput = z.looseObject({
  course: z.array(triple).min(4),
  sigma: z.array(triple).min(1),
  lengthMm: z.number(),
  curvature: z.looseObject({ pruettDeg: z.number() }).optional(),
  turn: z.array(z.looseObject({ highDeg: z.number() })).default([]),
});

interface InSpace {
  readonly course: CourseOfCanal;
  readonly turnAtMostDeg: number | undefined;
}

function coursesInSpace(canal: string, context: BindingContext): InSpace[] {
  const asked = twoViewBinding.ask(context).filter(({ subject }) => subject.startsWith(`twoView of ${canal} `));
  return asked.flatMap((one) => courseInSpace(canal, one, context));
}

function courseInSpace(canal: string, asked: Question | Gap, context: BindingContext): InSpace[] {
  const [found] = earlierRead(context, spaceOutput, [asked.subject]);
  const starts = startsOf(tracesOf(asked), context);
  const [startsAt] = starts;
  // Traces that begin at different places give a course whose own beginning is neither.
  if (found === undefined || startsAt === undefined || starts.length > 1) return [];
  const { course: points, sigma, lengthMm, curvature, turn } = found.read;
  const course: CourseOfCanal = {
    ...{ canal, points, lengthMm, startsAt, reachesEnd: true, view: { films: "space" } },
    sigmaMm: leastSure(sigma),
    lengthRecord: found.record("lengthMm"),
    ...(curvature === undefined
      ? {}
      : { bend: { deg: curvature.pruettDeg, record: found.record("curvature.pruettDeg") } }),
    paths: [
      { input: "course.points", record: found.record("course") },
      { input: "course.sigmaMm", record: found.record("sigma") },
    ],
  };
  const highest = turn.at(-1)?.highDeg;
  return [{ course, turnAtMostDeg: highest === undefined ? undefined : Math.min(180, highest) }];
}

const startsOf = (traces: readonly string[], { parts }: BindingContext): CourseStart[] => {
  const marks = partsOf(parts, "film").flatMap(({ id }) => marksOn(parts, id, "trace"));
  const own = marks.filter(({ id }) => traces.includes(id));
  return [...new Set(own.map((trace) => startOfTrace(trace, parts)))];
};

/** The standard deviation along the axis in which the places are known worst; a course bends in any of the three. */
const leastSure = (sigma: readonly (readonly number[])[]): number =>
  Math.max(
    ...[0, 1, 2].map((axis) => Math.sqrt(sigma.reduce((sum, one) => sum + (one[axis] ?? 0) ** 2, 0) / sigma.length)),
  );

const kinds = ["canal", "instrument", "filledCanal", "other"] as const;
/** What is filled is traced along what was put into it. */
const beforeFilling: ReadonlySet<string> = new Set(["diagnostic", "angled", "workingLength", "masterCone"]);

interface Seen {
  readonly film: PartOf<"film">;
  readonly trace: MarkOf<"trace">;
}

interface Around {
  readonly context: BindingContext;
  readonly turnAtMostDeg: number | undefined;
}

function coursesOnFilms(canal: string, on: string, { context, turnAtMostDeg }: Around): CourseOfCanal[] {
  const seen = partsOf(context.parts, "film").flatMap((film): Seen[] =>
    marksOn(context.parts, film.id, "trace")
      .filter(({ body }) => body.canal === canal && body.kind !== "other")
      .map((trace) => ({ film, trace })),
  );
  const rank = ({ film, trace }: Seen): readonly number[] => [
    trace.body.kind === "filledCanal" ? 1 : 0,
    beforeFilling.has(film.body.purpose) || film.body.takenOn <= on ? 0 : 1,
    kinds.indexOf(trace.body.kind ?? "canal"),
    Math.abs(Date.parse(film.body.takenOn) - Date.parse(on)),
  ];
  const inOrder = seen.map((one) => ({ one, by: rank(one) })).sort((a, b) => before(a.by, b.by));
  return inOrder.flatMap(({ one }) => courseOnFilm(canal, one, { context, turnAtMostDeg }));
}

const before = (a: readonly number[], b: readonly number[]): number =>
  a.map((value, index) => value - (b[index] ?? 0)).find((difference) => difference !== 0) ?? 0;

const filmOutput = z.looseObject({
  lengthMm: z.number(),
  pruettDeg: z.number().optional(),
  totalTurnDeg: z.number().optional(),
  intervals: z.record(z.string(), intervalSchema).optional(),
});

/** Within this the beam's vertical angle foreshortens a tooth by less than 0.4 %. */
const alongFilmDeg = 5;

function courseOnFilm(canal: string, { film, trace }: Seen, { context, turnAtMostDeg }: Around): CourseOfCanal[] {
  const measured = measuredOnFilm(trace, context);
  const [found] = earlierRead(context, filmOutput, [`curvature of ${trace.id}`]);
  if (measured === undefined || found === undefined) return [];
  const { lengthMm, pruettDeg, totalTurnDeg = 0 } = found.read;
  const { verticalAngleDeg } = film.body;
  const isParallel = verticalAngleDeg !== undefined && Math.abs(verticalAngleDeg) <= alongFilmDeg;
  const isBounded = turnAtMostDeg !== undefined && turnAtMostDeg >= totalTurnDeg;
  return [
    {
      ...{ canal, lengthMm, film: film.id, points: measured.inMm(trace.body.points) },
      sigmaMm: measured.errors.sigmaMm,
      startsAt: startOfTrace(trace, context.parts),
      reachesEnd: trace.body.kind !== "filledCanal",
      view: {
        films: "one",
        ...(isParallel ? { longAxis: "parallel" as const } : {}),
        ...(isBounded ? { turnAtMostDeg } : {}),
      },
      lengthRecord: found.record("lengthMm"),
      ...(pruettDeg === undefined ? {} : { bend: { deg: pruettDeg, record: found.record("pruettDeg") } }),
      paths: [
        { input: "course.points", record: `${trace.id}/points` },
        measured.scalePath("course.points"),
        ...measured.errorPaths
          .filter(({ input }) => input === "sigmaMm")
          .map(({ record }) => ({ input: "course.sigmaMm", record })),
      ],
    },
  ];
}
