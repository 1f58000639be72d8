import { twoViewTopic } from "../../core/radiograph/two-view-topic.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import type { PartOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { type CanalOnFilm, canalsOnFilms } from "../canal-films/canal-on-film.ts";
import { filmsPaired } from "../canal-films/films-paired.ts";
import { filmsTogether } from "../canal-films/films-together.ts";
import { atDetectorOrigin, missingOfFilms } from "../canal-films/missing-of-films.ts";
import { commonSpots, type ViewOfFilm, viewOfFilm } from "../canal-films/view-of-film.ts";
import { filmScale } from "../film-scale.ts";

/**
 * The course in space of each canal from the films that a person chose for it, or else from those of one time under different
 * known angles that show it.
 */
export const twoViewBinding: Binding = {
  topic: twoViewTopic,
  ask: (context) => {
    const courses = canalsOnFilms(context);
    const chosen = context.parts.flatMap((part) => (part.kind === "pairing" ? [part.body.canal] : []));
    const canals = [...new Set([...courses.map(({ canal }) => canal), ...chosen])];
    return canals.flatMap((canal) => {
      const own = courses.filter((one) => one.canal === canal);
      const paired = filmsPaired(canal, own, context);
      if (paired === undefined) return askTogether(canal, filmsTogether(own, context), context);
      const { pairing, films, why = missingOfFilms(films, context) } = paired;
      const subject = subjectOf(canal, pairing.body.films);
      if (why === undefined) return [courseOf(subject, films, { context, pairing })];
      return [{ subject, why, inputPaths: [{ input: "views", record: `${pairing.id}/films` }, ...pointsOf(films)] }];
    });
  },
};

const subjectOf = (canal: string, films: readonly string[]): string => `twoView of ${canal} ${films.join(" ")}`;

function askTogether(
  canal: string,
  films: readonly CanalOnFilm[] | undefined,
  context: BindingContext,
): (Question | Gap)[] {
  if (films === undefined) return [];
  const subject = subjectOf(
    canal,
    films.map(({ film }) => film.id),
  );
  const why = missingOfFilms(films, context);
  return [why === undefined ? courseOf(subject, films, { context }) : { subject, why, inputPaths: pointsOf(films) }];
}

const pointsOf = (films: readonly CanalOnFilm[]): InputPath[] =>
  films.map(({ trace }, index) => ({ input: `views[${index}].points`, record: `${trace.id}/points` }));

interface Asked {
  readonly context: BindingContext;
  readonly pairing?: PartOf<"pairing">;
}

function courseOf(subject: string, films: readonly CanalOnFilm[], { context, pairing }: Asked): Question {
  const names = commonSpots(films, context);
  const views = films.map((one, index) => viewOfFilm(one, index, { names, context }));
  const shares = views.flatMap(({ relativeSigma }) => relativeSigma ?? []);
  const [first] = films;
  const said = pairing === undefined ? { input: {}, paths: [] } : ofPairing(pairing, films, { views, context });
  return {
    subject,
    input: {
      views: views.map(({ view }) => view),
      receptor: first?.film.body.receptor,
      // Said by name: an input is kept with its keys in order, and which landmark comes first would be lost.
      ...(names[0] === undefined ? {} : { reference: names[0] }),
      sigmaMm: Math.max(...views.map(({ sigmaMm }) => sigmaMm)),
      ...(shares.length === 0 ? {} : { scaleRelativeSigma: Math.min(0.5, Math.max(...shares)) }),
      ...said.input,
    },
    inputPaths: [
      { input: "receptor", record: `${first?.film.id}/receptor` },
      ...views.flatMap(({ paths }) => paths),
      ...said.paths,
    ],
  };
}

/** What a person's choice adds: fixed levels in mm along the traces, how sure the angles are, and where the tube stood. */
function ofPairing(
  { id, body }: PartOf<"pairing">,
  films: readonly CanalOnFilm[],
  { views, context }: { views: readonly ViewOfFilm[]; context: BindingContext },
): { input: object; paths: readonly InputPath[] } {
  const { levels = [], angleSigmaDeg, sourceToToothMm, toothToDetectorMm } = body;
  const lengths = views.map(({ view }) => lengthOf(view.points));
  const atDetector = films.every(({ film }) => filmScale(context, film.id)?.used === atDetectorOrigin);
  const geometry = { sourceToToothMm, ...(toothToDetectorMm === undefined ? {} : { toothToDetectorMm }) };
  const units = atDetector && toothToDetectorMm !== undefined ? "detectorMm" : "toothPlaneMm";
  const at = (input: string, field = input): InputPath => ({ input, record: `${id}/${field}` });
  const said = [
    ...(levels.length === 0
      ? []
      : [{ levels: levels.map((row) => row.map((share, film) => share * (lengths[film] ?? 0))) }]),
    ...(angleSigmaDeg === undefined ? [] : [{ angleSigmaDeg }]),
    ...(sourceToToothMm === undefined ? [] : [{ geometry, units }]),
  ];
  return {
    input: Object.assign({}, ...said),
    paths: [
      at("views", "films"),
      ...(levels.length === 0 ? [] : [at("levels")]),
      ...(angleSigmaDeg === undefined ? [] : [at("angleSigmaDeg")]),
      ...(sourceToToothMm === undefined ? [] : [at("geometry.sourceToToothMm", "sourceToToothMm")]),
      ...(toothToDetectorMm === undefined ? [] : [at("geometry.toothToDetectorMm", "toothToDetectorMm")]),
    ],
  };
}

const lengthOf = (points: readonly (readonly [number, number])[]): number =>
  points.reduce((sum, [u, v], index) => {
    const [u0, v0] = points[index - 1] ?? [u, v];
    return sum + Math.hypot(u - u0, v - v0);
  }, 0);
