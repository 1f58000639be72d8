import { usualDetector } from "../exposure/detector.ts";
import type { FilmGeometry } from "../exposure/projection.ts";
import type { JawSegment } from "../jaw-segment.ts";
import { seededRandom } from "../seeded-random.ts";
import { toothPoint } from "../tooth-point.ts";
import type { CalibrationFilm } from "./calibration-film.ts";
import { type ToothOfExercise, teethOfExercise } from "./teeth-of-exercise.ts";

/** How many films the exercise has. */
const count = 20;
const columns = 440;
const spacingMm = 0.04;
/** What stands farther than this from the tooth in the middle is left out: it would not be on the film. */
const besideMm = 13;

/** The twenty films of the click exercise, each made from its seed: tooth, angles, grain and sharpness differ. All invented. */
export const calibrationFilms: readonly CalibrationFilm[] = Array.from({ length: count }, (_, at) => {
  const shown = teethOfExercise[at % teethOfExercise.length];
  if (shown === undefined) throw new Error("the exercise has no teeth");
  return filmOf(shown, at + 1);
});

function filmOf(shown: ToothOfExercise, number: number): CalibrationFilm {
  const seed = 20_000 + number * 37;
  const random = seededRandom(seed);
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const jaw = shown.segment(seed);
  const { tooth, index, places } = shown;
  const middleX = jaw.teeth[index]?.at.x ?? 0;
  return {
    name: `film-${String(number).padStart(2, "0")}`,
    ...{ tooth, places, toothIndex: index, seed },
    jaw: near(jaw, middleX),
    geometry: geometryOf(shown, middleX, between),
    detector: {
      ...usualDetector,
      blurMm: between(0.04, 0.085),
      quantaPerPixel: Math.round(between(1_600, 9_000)),
      scatterPart: between(0.1, 0.26),
    },
  };
}

function geometryOf(shown: ToothOfExercise, x: number, between: (low: number, high: number) => number): FilmGeometry {
  const upper = shown.arch === "upper";
  return {
    sourceToToothMm: Math.round(between(260, 360)),
    toothToDetectorMm: between(7, 12),
    horizontalAngleDeg: Math.round(between(-14, 18)),
    verticalAngleDeg: Math.round(between(-6, 6)),
    receptor: "turnsWithBeam",
    aim: { x: x + between(-0.7, 0.7), z: shown.middleZ + between(-0.4, 0.4) },
    rightIs: between(0, 1) < 0.5 ? "distal" : "mesial",
    apexIs: upper ? "up" : "down",
    ...{ columns, rows: shown.rows, spacingMm },
  };
}

/** The segment without what lies far to mesial and distal of a place. */
function near(jaw: JawSegment, x: number): JawSegment {
  const { from, to } = jaw.box;
  const [low, high] = [Math.max(from.x, x - besideMm), Math.min(to.x, x + besideMm)];
  return { ...jaw, box: { from: toothPoint(low, from.y, from.z), to: toothPoint(high, to.y, to.z) } };
}
