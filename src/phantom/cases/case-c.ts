import type { FilmGeometry } from "../exposure/projection.ts";
import type { JawSegment } from "../jaw-segment.ts";
import { accessCavity } from "../treatment/coronal-filling.ts";
import { wideCanalFilling } from "../treatment/wide-canal-filling.ts";
import { canalNamed, type DemoFilm, treatedTooth } from "./demo-film.ts";
import { lowerPremolarSegment } from "./lower-segment.ts";

const segment = lowerPremolarSegment(35);
const tooth = treatedTooth(segment);
const canal = canalNamed(segment, "R");
const endZ = canal.course.points[canal.course.points.length - 1]?.z ?? 10;

const straightOn: FilmGeometry = {
  sourceToToothMm: 300,
  toothToDetectorMm: 8,
  horizontalAngleDeg: 0,
  verticalAngleDeg: -2,
  receptor: "turnsWithBeam",
  aim: { x: 0.6, z: 5.8 },
  rightIs: "distal",
  apexIs: "down",
  columns: 800,
  rows: 960,
  spacingMm: 0.04,
};

const lesionOf = (radiusMm: number): JawSegment["lesions"] => [
  { middle: { x: 0.3, y: 0.1, z: endZ + radiusMm * 0.45 }, radiusMm, softnessMm: 1, seed: 351 },
];
const opening = { from: [-1, -1.5, -9.5], to: [1, 1.5, -0.5] } as const;
const plug = wideCanalFilling(canal, { fromZ: endZ - 4, toZ: endZ - 0.1, seed: 352 }, "bioceramicCement");

const before: JawSegment = { ...segment, lesions: lesionOf(2.6) };
const withBarrier: JawSegment = {
  ...segment,
  lesions: lesionOf(2.6),
  insets: [accessCavity(tooth, { ...opening, to: [1, 1.5, -3.4] }, "temporaryFilling"), plug],
};
const closed: JawSegment = {
  ...segment,
  lesions: lesionOf(1.4),
  insets: [
    accessCavity(tooth, opening, "resinComposite"),
    wideCanalFilling(canal, { fromZ: 1.2, toZ: endZ - 4.05, seed: 354 }, "guttaPercha"),
    plug,
  ],
};

/** The films of case C: lower left second premolar of a child, its apex open. */
export const filmsOfCaseC: readonly DemoFilm[] = [
  {
    name: "c-day-0-straight",
    case: "C",
    dayFromFirstVisit: 0,
    kind: "diagnostic",
    seed: 3501,
    jaw: before,
    geometry: straightOn,
    lesionRadiusMm: 2.6,
    shows: "An open apex with a lesion; the canal is wide to its end.",
  },
  {
    name: "c-visit-2-barrier",
    case: "C",
    dayFromFirstVisit: 21,
    kind: "final",
    seed: 3502,
    jaw: withBarrier,
    geometry: { ...straightOn, horizontalAngleDeg: 3 },
    lesionRadiusMm: 2.6,
    shows: "An apical barrier of 4 mm; temporary filling.",
  },
  {
    name: "c-recall-6-months",
    case: "C",
    dayFromFirstVisit: 203,
    kind: "recall",
    seed: 3506,
    jaw: closed,
    geometry: { ...straightOn, horizontalAngleDeg: -2, verticalAngleDeg: -1 },
    lesionRadiusMm: 1.4,
    shows: "Recall at 6 months: filled over the barrier, the lesion is smaller.",
  },
];
