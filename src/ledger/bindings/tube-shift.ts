import { z } from "zod";
import { tubeShiftTopic } from "../../core/radiograph/tube-shift-topic.ts";
import type { Binding, BindingContext, Question } from "../binding.ts";
import { angleOf, type CanalOnFilm, canalsOnFilms } from "../canal-films/canal-on-film.ts";
import { filmsPaired } from "../canal-films/films-paired.ts";
import { filmsTogether } from "../canal-films/films-together.ts";
import { missingOfFilms } from "../canal-films/missing-of-films.ts";
import { viewOfFilm } from "../canal-films/view-of-film.ts";

/** The next film of each traced canal whose films do not settle its course in space. */
export const tubeShiftBinding: Binding = {
  topic: tubeShiftTopic,
  ask: (context) => {
    const courses = canalsOnFilms(context).filter(({ film }) => guided.has(film.body.purpose));
    return [...new Set(courses.map(({ canal }) => canal))].flatMap((canal) => {
      const films = unsettled(
        canal,
        courses.filter((one) => one.canal === canal),
        context,
      );
      return films === undefined ? [] : [shiftOf(canal, films, context)];
    });
  },
};

/** Once a canal is filled, no film is taken for its bend. */
const guided: ReadonlySet<string> = new Set(["diagnostic", "angled", "workingLength", "masterCone", "other"]);

/** A bend that turns so far out of the film is looked for: docs/methods/tube-shift.md C1. */
const wantedDeg = 20;

const told = z.object({
  side: z.string(),
  anglesDeg: z.array(z.number()).optional(),
  intervals: z.object({ outOfFilmDeg: z.object({ low: z.number(), high: z.number() }).optional() }),
});

/** A shift under which `twoView` names no side. */
const leastVerdictDeg = 10;

/** The films of a canal that leave its depth open, or undefined where they settle it or none can be worked from. */
function unsettled(
  canal: string,
  courses: readonly CanalOnFilm[],
  context: BindingContext,
): readonly CanalOnFilm[] | undefined {
  const films = filmsPaired(canal, courses, context)?.films ?? filmsTogether(courses, context);
  const alone = straightest(courses, context);
  if (films === undefined || films.length < 2) return alone;
  const found = context.earlier(`twoView of ${canal} ${films.map(({ film }) => film.id).join(" ")}`);
  if (found === undefined) return alone;
  const { side, anglesDeg = [], intervals } = told.parse(found.output);
  if (side !== "undetermined") return undefined;
  const shiftDeg = Math.max(...anglesDeg) - Math.min(...anglesDeg);
  const { low = 0, high = 0 } = intervals.outOfFilmDeg ?? {};
  return shiftDeg < leastVerdictDeg || high - low > 2 * wantedDeg ? films : undefined;
}

/** The usable film nearest to straight on; of equal ones, the last. */
function straightest(courses: readonly CanalOnFilm[], context: BindingContext): readonly CanalOnFilm[] | undefined {
  const usable = courses.filter((one) => missingOfFilms([one], context) === undefined);
  const least = Math.min(...usable.map((one) => Math.abs(angleOf(one) ?? 0)));
  const found = usable.findLast((one) => Math.abs(angleOf(one) ?? 0) === least);
  return found === undefined ? undefined : [found];
}

function shiftOf(canal: string, films: readonly CanalOnFilm[], context: BindingContext): Question {
  const views = films.map((one, index) => viewOfFilm(one, index, { names: [], context }));
  const shares = views.flatMap(({ relativeSigma }) => relativeSigma ?? []);
  const [first] = films;
  return {
    subject: `tubeShift of ${canal} ${films.map(({ film }) => film.id).join(" ")}`,
    input: {
      views: views.map(({ view }) => view),
      receptor: first?.film.body.receptor,
      sigmaMm: Math.max(...views.map(({ sigmaMm }) => sigmaMm)),
      ...(shares.length === 0 ? {} : { scaleRelativeSigma: Math.min(0.5, Math.max(...shares)) }),
      wanted: { outOfFilmDeg: wantedDeg },
    },
    inputPaths: [{ input: "receptor", record: `${first?.film.id}/receptor` }, ...views.flatMap(({ paths }) => paths)],
  };
}
