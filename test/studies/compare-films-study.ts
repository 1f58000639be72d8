import type { CompareFilmsOutput } from "../../src/core/radiograph/compare-films/compare-films-input.ts";
import { compareFilmsTopic } from "../../src/core/radiograph/compare-films-topic.ts";
import { seededRandom } from "../../src/core/statistics/seeded-random.ts";
import { answer } from "../../src/core/topic.ts";
import type { DemoFilm } from "../../src/phantom/cases/demo-film.ts";
import { demoFilms } from "../../src/phantom/cases/demo-films.ts";
import { usualDetector } from "../../src/phantom/exposure/detector.ts";
import { type ExposedFilm, exposeFilm } from "../../src/phantom/exposure/expose-film.ts";
import type { Projection } from "../../src/phantom/exposure/projection.ts";
import { type ToothPoint, toothPoint } from "../../src/phantom/tooth-point.ts";

/** A tooth filmed twice: what it was like the first and the second time. */
export interface RecallPair {
  readonly name: string;
  readonly before: string;
  readonly after: string;
}

/** Two teeth with a lesion. The premolar has one root and has not changed; the molar has three and was treated. */
export const recallPairs: readonly RecallPair[] = [
  { name: "lower premolar, nothing changed", before: "c-day-0-straight", after: "c-day-0-straight" },
  { name: "upper molar, filled, lesion smaller", before: "a-day-0-straight", after: "a-recall-6-months" },
];

/** By how much the tube stood elsewhere the second time, degrees. */
export interface TubeChange {
  readonly horizontalDeg: number;
  readonly verticalDeg: number;
}

export const tubeChanges: readonly TubeChange[] = [
  ...[0, 3, 5, 8].map((horizontalDeg) => ({ horizontalDeg, verticalDeg: 0 })),
  ...[3, 5, 8].map((verticalDeg) => ({ horizontalDeg: 0, verticalDeg })),
];

/** Another exposure: less dose, other black and white points, another contrast. */
const otherDetector = { ...usualDetector, quantaPerPixel: 5000, gamma: 1.05, blackAt: 0.6, whiteAt: 0.09 };

/** Places that a person finds on both films: cusps, necks, tips of the roots, at different depths. */
const seenPlaces: readonly ToothPoint[] = [
  toothPoint(-4, -2.5, -6),
  toothPoint(4, -1.5, -6),
  toothPoint(-3, 1, 3),
  toothPoint(3, -1, 3),
  toothPoint(-9, 0.5, -5),
  toothPoint(9, 0.3, -5),
  toothPoint(0, 0.5, 12),
];
/** Of a click in each direction on a film of 0.04 mm a pixel, px. */
const clickSigmaPx = 1.5;

const filmNamed = (name: string): DemoFilm => {
  const found = demoFilms.find((film) => film.name === name);
  if (found === undefined) throw new Error(`no film ${name}`);
  return found;
};

interface Shot {
  readonly film: DemoFilm;
  /** The first film's: the second is taken from there but for the change. */
  readonly from: DemoFilm;
  readonly change: TubeChange;
  readonly detector: typeof usualDetector;
  readonly seed: number;
}

function shot({ film, from: { geometry }, change, detector, seed }: Shot, coarser: number): ExposedFilm {
  return exposeFilm(film.jaw, {
    geometry: {
      ...geometry,
      horizontalAngleDeg: geometry.horizontalAngleDeg + change.horizontalDeg,
      verticalAngleDeg: geometry.verticalAngleDeg + change.verticalDeg,
      columns: Math.round(geometry.columns / coarser),
      rows: Math.round(geometry.rows / coarser),
      spacingMm: geometry.spacingMm * coarser,
    },
    detector,
    voxelMm: { x: 0.08 * coarser, y: 0.16 * coarser, z: 0.08 * coarser },
    seed,
  });
}

type Place = [number, number];

/** The outline of a lesion's shadow: the hull of where places on its surface fall. */
function shadowOf({ jaw }: DemoFilm, { toFilm }: Projection): Place[] {
  const lesion = jaw.lesions[0];
  if (lesion === undefined) return [];
  const { middle, radiusMm } = lesion;
  const surface = Array.from({ length: 72 * 30 }, (_, index): Place => {
    const [turn, tilt] = [((index % 72) * Math.PI) / 36, ((Math.floor(index / 72) + 0.5) * Math.PI) / 30 - Math.PI / 2];
    // As docs/methods/phantom F7 has it: 2.2 times as deep as wide, a little higher than wide.
    const { column, row } = toFilm({
      x: middle.x + radiusMm * Math.cos(turn) * Math.cos(tilt),
      y: middle.y + 2.2 * radiusMm * Math.sin(tilt),
      z: middle.z + (radiusMm / 0.94) * Math.sin(turn) * Math.cos(tilt),
    });
    return [column, row];
  });
  const [u, v] = [0, 1].map((axis) => surface.reduce((sum, place) => sum + (place[axis] ?? 0), 0) / surface.length);
  const farthest = new Map<number, Place>();
  const away = ([x, y]: Place): number => Math.hypot(x - (u ?? 0), y - (v ?? 0));
  for (const place of surface) {
    const sector = Math.floor((Math.atan2(place[1] - (v ?? 0), place[0] - (u ?? 0)) / Math.PI + 1) * 18);
    const known = farthest.get(sector);
    if (known === undefined || away(place) > away(known)) farthest.set(sector, place);
  }
  return [...farthest].sort(([a], [b]) => a - b).map(([, place]) => place);
}

/** What came of one comparison. */
export interface RecallResult {
  readonly change: TubeChange;
  readonly found: CompareFilmsOutput;
  /** Of the lesion's radius, squared: what a ratio of areas should say. */
  readonly trueRatio: number;
}

/** A pair of films for each change of the tube, compared. `coarser` 1 takes films of 0.04 mm a pixel. */
export function recallStudy(pair: RecallPair, changes: readonly TubeChange[], coarser: number): RecallResult[] {
  const [before, after] = [filmNamed(pair.before), filmNamed(pair.after)];
  const none = { horizontalDeg: 0, verticalDeg: 0 };
  const first = shot({ film: before, from: before, change: none, detector: usualDetector, seed: 1 }, coarser);
  return changes.map((change, index) => {
    const second = shot({ film: after, from: before, change, detector: otherDetector, seed: 100 + index }, coarser);
    const { normal } = seededRandom(7 + index);
    const clicked = (film: ExposedFilm, place: ToothPoint): Place => {
      const { column, row } = film.projection.toFilm(place);
      return [column + (clickSigmaPx / coarser) * normal(), row + (clickSigmaPx / coarser) * normal()];
    };
    const isOn = ([u, v]: Place): boolean => u > 0 && v > 0 && u < first.columns - 1 && v < first.rows - 1;
    const found = answer(compareFilmsTopic, {
      before: pictureOf(first),
      after: pictureOf(second),
      landmarks: seenPlaces
        .map((place) => ({ before: clicked(first, place), after: clicked(second, place) }))
        .filter((one) => isOn(one.before) && isOn(one.after)),
      lesions: { before: shadowOf(before, first.projection), after: shadowOf(after, second.projection) },
      mmPerPx: 0.0383 * coarser,
      sigmaPx: clickSigmaPx / coarser,
    });
    return { change, found, trueRatio: (after.lesionRadiusMm / before.lesionRadiusMm) ** 2 };
  });
}

const pictureOf = ({ columns, rows, samples }: ExposedFilm) => ({
  columns,
  rows,
  grey: Float32Array.from(samples, (sample) => sample / 4095),
});
