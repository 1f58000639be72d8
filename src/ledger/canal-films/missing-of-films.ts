import { thePart } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { filmScale } from "../film-scale.ts";
import { angleOf, type CanalOnFilm, filmName, riseOf } from "./canal-on-film.ts";

type Check = (films: readonly CanalOnFilm[], context: BindingContext) => string | undefined;

/** What has to be supplied before a course in space can be computed from films, the first thing of it. */
export function missingOfFilms(films: readonly CanalOnFilm[], context: BindingContext): string | undefined {
  for (const check of checks) {
    const why = check(films, context);
    if (why !== undefined) return why;
  }
  return undefined;
}

const unscaled: Check = (films, context) => {
  const found = films.find(({ film }) => filmScale(context, film.id) === undefined);
  return found && `the film "${filmName(found)}" has no scale; mark a known length on it`;
};

const ofTwoPlanes: Check = (films, context) => {
  const atDetector = films.filter(({ film }) => filmScale(context, film.id)?.used === atDetectorOrigin);
  const [found] = atDetector;
  if (found === undefined || atDetector.length === films.length) return undefined;
  return `the scale of the film "${filmName(found)}" is that of the detector, the others' that of the tooth; mark a known length on it`;
};

/** The origin of a scale that holds on the detector and not in the plane of the tooth. */
export const atDetectorOrigin = "detectorSpacing";

const withoutAngle: Check = (films) => {
  const found = films.find((one) => angleOf(one) === undefined);
  return found && `the tube's angle on the film "${filmName(found)}" is not known; say it in the film's facts`;
};

const withoutSide: Check = (films) => {
  const found = films.find(({ film }) => film.body.uRunsTo === "unknown");
  return (
    found &&
    `it is not known whether mesial or distal lies to the right on the film "${filmName(found)}"; say it in the film's facts`
  );
};

const heldInTwoWays: Check = (films) =>
  new Set(films.map(({ film }) => film.body.receptor)).size < 2
    ? undefined
    : "the receptor is said to have been held in two ways on the films; make it the same in the films' facts";

/** Upper roots point up on a film, lower ones down; where that does not settle it, the fewer traces are the turned ones. */
const runningBack: Check = (films, { parts }) => {
  const down = films.filter((one) => riseOf(one) > 0);
  const up = films.filter((one) => riseOf(one) <= 0);
  if (down.length === 0 || up.length === 0) return undefined;
  const tooth = thePart(parts, "case")?.body.tooth;
  const isUpper = tooth !== undefined && /^[1256]/.test(tooth);
  const [found] = down.length === up.length ? (isUpper ? down : up) : down.length < up.length ? down : up;
  return found && `the trace on the film "${filmName(found)}" runs from the apex; turn the trace on that film`;
};

const checks: readonly Check[] = [unscaled, ofTwoPlanes, withoutAngle, withoutSide, heldInTwoWays, runningBack];
