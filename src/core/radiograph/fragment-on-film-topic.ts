import { faultAt } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { courseLine } from "./drawn-measures/course-line.ts";
import { errorAssumptions, lengthIntervals, oneProjection } from "./drawn-measures/film-errors.ts";
import { type FragmentInCanal, fragmentInCanal, placeToBend, thirdAt } from "./drawn-measures/fragment-in-canal.ts";
import {
  type FragmentOnFilmInput,
  type FragmentOnFilmOutput,
  fragmentOnFilmInput,
  fragmentOnFilmOutput,
} from "./drawn-measures/fragment-on-film-input.ts";

/**
 * How long a fragment is on a film and where it lies in its canal, with intervals.
 * @throws Refusal `trace.tooFewPoints` under 2 different places of fragment or course; `input.impossible` for a course
 * without its start, or a bend that ends before it begins.
 * @source plane geometry; docs/methods/fragment-on-film.md
 */
export const fragmentOnFilmTopic = defineTopic({
  name: "fragmentOnFilm",
  version: 1,
  summary: "How long a fragment is on a film and how deep it lies in its canal, with intervals.",
  input: fragmentOnFilmInput,
  output: fragmentOnFilmOutput,
  sources: [],
  compute: fragmentOnFilm,
});

/** Two clicks, each along the fragment. */
const endsShare = Math.SQRT2;

function fragmentOnFilm(input: FragmentOnFilmInput): FragmentOnFilmOutput {
  checkTogether(input);
  const line = courseLine(input.fragment, "fragment");
  const [top, tip] = [line.places[0], line.places.at(-1)];
  if (top === undefined || tip === undefined) throw new RangeError("a line has two ends");
  const straightMm = Math.hypot(tip.x - top.x, tip.y - top.y);
  const inCanal = fragmentInCanal(input, [top, tip]);
  const intervals = lengthIntervals(
    {
      lengthMm: { mm: line.lengthMm, clickShare: endsShare },
      straightMm: { mm: straightMm, clickShare: endsShare },
      topDepthMm: inCanal?.topDepth,
      tipDepthMm: inCanal?.tipDepth,
      tipToApexMm: inCanal?.tipToApex,
    },
    input,
  );
  return {
    lengthMm: line.lengthMm,
    straightMm,
    ...placeOf(input, inCanal),
    intervals,
    basis: {
      formula: "Length of the line along the fragment; the nearest places of the canal's course to its two ends",
      assumptions: [
        "Of the two ends the one nearer to the start of the course is the top.",
        "Thirds are those of the course from orifice to its end; published levels are thirds of the root.",
        ...errorAssumptions(input),
        "The course as a whole may lie beside the canal by a click's error.",
      ],
      sources: [],
    },
    cautions: cautionsOf(input, inCanal),
    notComputed: notComputedOf(input, inCanal),
  };
}

function checkTogether({ course, from, bend }: FragmentOnFilmInput): void {
  if (course !== undefined && from === undefined)
    throw faultAt("from", "is absent; say where the course begins: orifice or referencePoint");
  if (bend !== undefined && bend.toMm < bend.fromMm)
    throw faultAt("bend.toMm", `${bend.toMm} is less than fromMm ${bend.fromMm}`);
}

function placeOf(input: FragmentOnFilmInput, inCanal: FragmentInCanal | undefined) {
  if (inCanal === undefined || input.from === undefined) return {};
  const { topDepth, tipDepth, tipToApex, asideMm, course } = inCanal;
  const thirds = {
    top: thirdAt(topDepth, course.lengthMm, input.sigmaMm),
    tip: thirdAt(tipDepth, course.lengthMm, input.sigmaMm),
  };
  return {
    topDepthMm: topDepth.mm,
    tipDepthMm: tipDepth.mm,
    startsAt: input.from,
    tipToApexMm: tipToApex.mm,
    ...(input.from === "orifice" ? { thirds } : {}),
    ...(input.bend === undefined
      ? {}
      : { bend: { ...input.bend, ...placeToBend(inCanal, input.bend, input.sigmaMm) } }),
    asideMm,
  };
}

/** An end farther beside the course than this may lie in another canal, mm. */
const farAsideMm = 1;

function cautionsOf(input: FragmentOnFilmInput, inCanal: FragmentInCanal | undefined): string[] {
  const aside = inCanal?.asideMm ?? 0;
  return [
    `${oneProjection} The fragment may be longer than it reads, and lie buccally or lingually of the canal that it seems to be in.`,
    ...(aside > farAsideMm ? [`An end lies ${aside.toFixed(1)} mm beside the course: is it in this canal?`] : []),
    ...(input.bend === undefined
      ? []
      : ["Where the bend begins and ends is itself fitted; its own error is not in this answer."]),
  ];
}

function notComputedOf({ from, bend }: FragmentOnFilmInput, inCanal: FragmentInCanal | undefined) {
  const noCourse = "the canal is not traced on this film";
  if (inCanal === undefined)
    return ["topDepthMm", "tipDepthMm", "tipToApexMm", "thirds", "bend", "asideMm"].map((name) => ({
      name,
      why: noCourse,
    }));
  return [
    ...(from === "orifice"
      ? []
      : [{ name: "thirds", why: "the course begins at the reference point, not at the orifice" }]),
    ...(bend === undefined ? [{ name: "bend", why: "no bend of this course is known" }] : []),
  ];
}
