import type { Lesion } from "../anatomy/lesion.ts";
import { placeAt } from "../course.ts";
import type { FilmGeometry } from "../exposure/projection.ts";
import type { Inset, JawSegment, Strand } from "../jaw-segment.ts";
import { accessCavity, crownFilling } from "../treatment/coronal-filling.ts";
import { fragmentIn, type InstrumentShape, instrumentIn } from "../treatment/instrument.ts";
import { rootFillingStrand } from "../treatment/root-filling.ts";
import type { Shaping } from "../treatment/shaping.ts";
import { canalNamed, type DemoFilm, treatedTooth } from "./demo-film.ts";
import { upperMolarSegment } from "./upper-left-segment.ts";

const segment = upperMolarSegment(26);
const tooth = treatedTooth(segment);
const canal = (name: string): ReturnType<typeof canalNamed> => canalNamed(segment, name);
const lengthOf = (name: string): number => canal(name).course.lengthMm;

const straightOn: FilmGeometry = {
  sourceToToothMm: 300,
  toothToDetectorMm: 13,
  horizontalAngleDeg: 0,
  verticalAngleDeg: 10,
  receptor: "turnsWithBeam",
  aim: { x: 0.5, z: 5.2 },
  rightIs: "distal",
  apexIs: "up",
  columns: 1000,
  rows: 760,
  spacingMm: 0.04,
};

/** The lesion at the end of the mesiobuccal root. */
const lesionOf = (radiusMm: number): Lesion[] => {
  const tip = placeAt(canal("MB1").course, lengthOf("MB1"));
  return [
    { middle: { x: tip.x + 0.2, y: tip.y - 0.3, z: tip.z + radiusMm * 0.35 }, radiusMm, softnessMm: 0.9, seed: 261 },
  ];
};

const oldAmalgam: Inset = crownFilling(
  tooth,
  [
    { from: [-5.6, -1.9, -9], to: [-3.1, 2, -2.6] },
    { from: [-4, -1.6, -9], to: [3.2, 1.7, -4.4] },
  ],
  "amalgam",
);
const chamberBase: Inset = accessCavity(tooth, { from: [-1.8, -1.7, -4.6], to: [1.9, 1.9, 0.4] }, "temporaryFilling");

const oldShaping: Record<string, Shaping> = {
  MB1: { sizeMm: 0.25, taper: 0.03, endMm: lengthOf("MB1") - 2.2 },
  DB: { sizeMm: 0.25, taper: 0.03, endMm: lengthOf("DB") - 1.6 },
  P: { sizeMm: 0.35, taper: 0.03, endMm: lengthOf("P") - 1.2 },
};
const oldFillings: Strand[] = [
  {
    name: "MB1",
    voids: [
      { atMm: 3.1, lengthMm: 0.7 },
      { atMm: 6.6, lengthMm: 0.5 },
    ],
  },
  { name: "DB", voids: [{ atMm: 5.2, lengthMm: 0.9 }] },
  {
    name: "P",
    voids: [
      { atMm: 4, lengthMm: 0.6 },
      { atMm: 9.2, lengthMm: 0.5 },
    ],
  },
].map(({ name, voids }, i) => {
  const shaping = oldShaping[name];
  return rootFillingStrand(canal(name), shaping, {
    fromMm: 0,
    toMm: shaping?.endMm ?? 0,
    voids,
    fit: 0.78,
    seed: 300 + i,
  });
});

const before: JawSegment = {
  ...segment,
  shaped: oldShaping,
  lesions: lesionOf(2.2),
  insets: [chamberBase, oldAmalgam],
  strands: oldFillings,
};

const wideOpening = { from: [-2.6, -2.2, -9.5], to: [2.1, 2.3, 0.6] } as const;
const opened: Inset = accessCavity(tooth, wideOpening, "air");
const cleanMesialBox: Inset = crownFilling(tooth, [{ from: [-5.6, -1.9, -9], to: [-3.1, 2, -2.6] }], "resinComposite");
const handFile = (sizeMm: number): InstrumentShape => ({ sizeMm, taper: 0.02, cuttingMm: 16, alloy: "steel" });
const newShaping: Record<string, Shaping> = {
  MB1: { sizeMm: 0.25, taper: 0.06, endMm: lengthOf("MB1") - 0.4 },
  MB2: { sizeMm: 0.25, taper: 0.04, endMm: lengthOf("MB2") - 0.4 },
  DB: { sizeMm: 0.3, taper: 0.05, endMm: lengthOf("DB") - 0.4 },
  P: { sizeMm: 0.4, taper: 0.04, endMm: lengthOf("P") - 0.5 },
};
const lengthFiles = {
  MB1: instrumentIn(canal("MB1"), handFile(0.15), { tipAtMm: lengthOf("MB1") - 0.6, stopMm: 20.5 }),
  MB2: instrumentIn(canal("MB2"), handFile(0.1), { tipAtMm: lengthOf("MB2") - 0.9, stopMm: 19.5 }),
  DB: instrumentIn(canal("DB"), handFile(0.15), { tipAtMm: lengthOf("DB") - 0.5, stopMm: 19 }),
  P: instrumentIn(canal("P"), handFile(0.2), { tipAtMm: lengthOf("P") - 0.7, stopMm: 20.5 }),
};
const withFiles: JawSegment = {
  ...before,
  shaped: oldShaping,
  insets: [cleanMesialBox, opened],
  strands: Object.values(lengthFiles).flatMap((file) => file.strands),
};

/** Size 25, taper .06, 3 mm long, in the bend. */
const fragment = fragmentIn(
  canal("MB1"),
  { sizeMm: 0.25, taper: 0.06, cuttingMm: 16, alloy: "nickelTitanium" },
  { tipAtMm: lengthOf("MB1") - 1.1, lengthMm: 3 },
);
const temporary: Inset = accessCavity(tooth, { ...wideOpening, to: [2.1, 2.3, -3.6] }, "temporaryFilling");
const cottonUnder: Inset = accessCavity(tooth, wideOpening, "soft");
const withFragment: JawSegment = {
  ...withFiles,
  shaped: newShaping,
  insets: [cleanMesialBox, cottonUnder, temporary],
  strands: [fragment],
};

const newFillings: Strand[] = ["MB1", "MB2", "DB", "P"].map((name, i) => {
  const shaping = newShaping[name];
  const endMm = shaping?.endMm ?? 0;
  const beside = { fromMm: lengthOf("MB1") - 4.1, toMm: lengthOf("MB1") - 1.1 };
  const filling = { fromMm: 0, toMm: endMm, fit: 0.97, seed: 340 + i };
  return rootFillingStrand(canal(name), shaping, name === "MB1" ? { ...filling, beside } : filling);
});
const filled = (radiusMm: number): JawSegment => ({
  ...withFragment,
  lesions: lesionOf(radiusMm),
  insets: [cleanMesialBox, accessCavity(tooth, wideOpening, "resinComposite")],
  strands: [...newFillings, fragment],
});

/** The films of case A: upper left first molar, retreated. */
export const filmsOfCaseA: readonly DemoFilm[] = [
  {
    name: "a-day-0-straight",
    case: "A",
    dayFromFirstVisit: 0,
    kind: "diagnostic",
    seed: 2601,
    jaw: before,
    geometry: straightOn,
    lesionRadiusMm: 2.2,
    shows: "Old fillings in MB1, DB and P, short and with voids; a lesion at the mesiobuccal root.",
  },
  {
    name: "a-day-0-mesial-20",
    case: "A",
    dayFromFirstVisit: 0,
    kind: "angled",
    seed: 2602,
    jaw: before,
    geometry: { ...straightOn, horizontalAngleDeg: 20 },
    lesionRadiusMm: 2.2,
    shows: "Tube 20 degrees from mesial: the old filling lies off the middle of the mesiobuccal root.",
  },
  {
    name: "a-visit-1-length",
    case: "A",
    dayFromFirstVisit: 14,
    kind: "workingLength",
    seed: 2603,
    jaw: withFiles,
    instruments: lengthFiles,
    geometry: { ...straightOn, horizontalAngleDeg: 12, verticalAngleDeg: 8 },
    lesionRadiusMm: 2.2,
    shows: "Instruments of known length in MB1, MB2, DB and P.",
  },
  {
    name: "a-visit-1-fragment",
    case: "A",
    dayFromFirstVisit: 14,
    kind: "diagnostic",
    seed: 2604,
    jaw: withFragment,
    geometry: { ...straightOn, horizontalAngleDeg: 6 },
    lesionRadiusMm: 2.2,
    shows: "A fragment (size 25, taper .06, 3 mm) in the bend of MB1; temporary filling.",
  },
  {
    name: "a-visit-2-final",
    case: "A",
    dayFromFirstVisit: 28,
    kind: "final",
    seed: 2605,
    jaw: filled(2.2),
    geometry: { ...straightOn, horizontalAngleDeg: -16, verticalAngleDeg: 9 },
    lesionRadiusMm: 2.2,
    shows:
      "Tube 16 degrees from distal: all four canals filled; the fragment was bypassed and stays beside the filling of MB1.",
  },
  ...[
    { months: 6, radiusMm: 1.6, turn: 1.5, tip: 9.5 },
    { months: 12, radiusMm: 0.9, turn: -1.5, tip: 10.5 },
    { months: 24, radiusMm: 0.2, turn: 2, tip: 9 },
  ].map(
    ({ months, radiusMm, turn, tip }): DemoFilm => ({
      name: `a-recall-${months}-months`,
      case: "A",
      dayFromFirstVisit: 28 + Math.round(months * 30.4),
      kind: "recall",
      seed: 2605 + months,
      jaw: filled(radiusMm),
      lesionRadiusMm: radiusMm,
      geometry: { ...straightOn, horizontalAngleDeg: turn, verticalAngleDeg: tip },
      shows: `Recall at ${months} months: the lesion's radius is ${radiusMm} mm.`,
    }),
  ),
];
