import { placeAt } from "../course.ts";
import type { FilmGeometry } from "../exposure/projection.ts";
import type { Inset, JawSegment } from "../jaw-segment.ts";
import { accessCavity, crownFilling, decayAt } from "../treatment/coronal-filling.ts";
import { type InstrumentShape, instrumentIn } from "../treatment/instrument.ts";
import { rootFillingStrand } from "../treatment/root-filling.ts";
import type { Shaping } from "../treatment/shaping.ts";
import { canalNamed, type DemoFilm, treatedTooth } from "./demo-film.ts";
import { lowerMolarSegment } from "./lower-segment.ts";

const segment = lowerMolarSegment(46);
const tooth = treatedTooth(segment);
const canal = (name: string): ReturnType<typeof canalNamed> => canalNamed(segment, name);
const lengthOf = (name: string): number => canal(name).course.lengthMm;

const straightOn: FilmGeometry = {
  sourceToToothMm: 300,
  toothToDetectorMm: 9,
  horizontalAngleDeg: 0,
  verticalAngleDeg: -3,
  receptor: "turnsWithBeam",
  aim: { x: 0.5, z: 5.6 },
  rightIs: "mesial",
  apexIs: "down",
  columns: 1000,
  rows: 760,
  spacingMm: 0.04,
};

const mesialTip = placeAt(canal("MB").course, lengthOf("MB"));
const lesionOf = (radiusMm: number): JawSegment["lesions"] => [
  { middle: { x: mesialTip.x + 0.1, y: 0.1, z: mesialTip.z + radiusMm * 0.4 }, radiusMm, softnessMm: 0.8, seed: 461 },
];

const before: JawSegment = {
  ...segment,
  lesions: lesionOf(0.8),
  insets: [
    decayAt({ x: 5, y: 0.3, z: -3.9 }, 1.3, 462),
    decayAt({ x: 4, y: 0.5, z: -3.4 }, 1.4, 463),
    decayAt({ x: 3, y: 0.2, z: -2.7 }, 1.2, 464),
  ],
};

const distalBox = { from: [2.4, -2, -9], to: [6, 2.4, -1.4] } as const;
const opening = { from: [-3, -2.1, -9.5], to: [2.8, 2.1, 0.5] } as const;
const buildUp: Inset = crownFilling(tooth, [distalBox], "resinComposite");
const handFile = (sizeMm: number): InstrumentShape => ({ sizeMm, taper: 0.02, cuttingMm: 16, alloy: "steel" });
const lengthFiles = {
  MB: instrumentIn(canal("MB"), handFile(0.15), { tipAtMm: lengthOf("MB") - 0.6, stopMm: 20.5 }),
  ML: instrumentIn(canal("ML"), handFile(0.15), { tipAtMm: lengthOf("ML") - 0.5, stopMm: 20.5 }),
  D: instrumentIn(canal("D"), handFile(0.2), { tipAtMm: lengthOf("D") - 0.7, stopMm: 19.5 }),
  DL: instrumentIn(canal("DL"), handFile(0.1), { tipAtMm: lengthOf("DL") - 0.8, stopMm: 19 }),
};
const withFiles: JawSegment = {
  ...before,
  insets: [buildUp, accessCavity(tooth, opening, "air")],
  strands: Object.values(lengthFiles).flatMap((file) => file.strands),
};

const shaping: Record<string, Shaping> = {
  MB: { sizeMm: 0.25, taper: 0.06, endMm: lengthOf("MB") - 0.5 },
  ML: { sizeMm: 0.25, taper: 0.06, endMm: lengthOf("ML") - 0.5 },
  D: { sizeMm: 0.4, taper: 0.04, endMm: lengthOf("D") - 0.5 },
  DL: { sizeMm: 0.25, taper: 0.04, endMm: lengthOf("DL") - 0.5 },
};
const filled = (radiusMm: number): JawSegment => ({
  ...withFiles,
  shaped: shaping,
  lesions: radiusMm > 0 ? lesionOf(radiusMm) : [],
  insets: [buildUp, accessCavity(tooth, opening, "resinComposite")],
  strands: Object.entries(shaping).map(([name, work], i) =>
    rootFillingStrand(canal(name), work, { fromMm: 0, toMm: work.endMm, fit: 0.98, seed: 470 + i }),
  ),
});

/** The films of case B: lower right first molar with a third root on the lingual side. */
export const filmsOfCaseB: readonly DemoFilm[] = [
  {
    name: "b-day-0-straight",
    case: "B",
    dayFromFirstVisit: 0,
    kind: "diagnostic",
    seed: 4601,
    jaw: before,
    geometry: straightOn,
    lesionRadiusMm: 0.8,
    shows: "Deep decay at distal; the third root hides behind the distal one.",
  },
  {
    name: "b-day-0-mesial-25",
    case: "B",
    dayFromFirstVisit: 0,
    kind: "angled",
    seed: 4602,
    jaw: before,
    geometry: { ...straightOn, horizontalAngleDeg: 25 },
    lesionRadiusMm: 0.8,
    shows: "Tube 25 degrees from mesial: the third root stands apart from the distal one.",
  },
  {
    name: "b-visit-1-length",
    case: "B",
    dayFromFirstVisit: 0,
    kind: "workingLength",
    seed: 4603,
    jaw: withFiles,
    instruments: lengthFiles,
    geometry: { ...straightOn, horizontalAngleDeg: 18 },
    lesionRadiusMm: 0.8,
    shows: "Instruments of known length in MB, ML, D and DL.",
  },
  {
    name: "b-visit-2-final",
    case: "B",
    dayFromFirstVisit: 7,
    kind: "final",
    seed: 4604,
    jaw: filled(0.8),
    geometry: { ...straightOn, horizontalAngleDeg: 15 },
    lesionRadiusMm: 0.8,
    shows: "All four canals filled.",
  },
  {
    name: "b-recall-12-months",
    case: "B",
    dayFromFirstVisit: 372,
    kind: "recall",
    seed: 4616,
    jaw: filled(0),
    geometry: { ...straightOn, horizontalAngleDeg: 2, verticalAngleDeg: -2 },
    lesionRadiusMm: 0,
    shows: "Recall at 12 months: the ligament space runs around every root.",
  },
];
