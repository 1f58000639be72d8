import type { BodyOf } from "../../../../src/record/parts.ts";
import { dayAfter } from "../calendar.ts";
import { type Moment, write } from "../case-of-moments.ts";
import { clinicOfDemo, clock, namedAgain, needle, stepsOf } from "../clinic-of-demo.ts";
import { visit } from "../usual-bodies.ts";
import { days } from "./days.ts";
import { lengths } from "./lengths.ts";
import { searchEnded } from "./search.ts";

type Visit = BodyOf<"visit">;
/** Takes a day, gives the ids of the films taken on it. */
type FilmsOn = (day: string) => readonly string[];

const hand = { alloy: "stainlessSteel", movement: "hand" } as const;
const heated = { alloy: "heatTreatedNickelTitanium", movement: "continuous", rpm: 300 } as const;

const firstVisit = (films: readonly string[]): Visit =>
  visit({
    on: days.firstVisit,
    ...clock(days.firstVisit, "14:04", 92),
    clinic: clinicOfDemo,
    ...stepsOf("demo-template-first", [
      ...[0, 1, 13, 15, 24, 29, 58],
      "Three of four; DL next time and by hand",
      ...[80, 86, 89, 89, 91, 90, 91],
    ]),
    timeOutCheck: namedAgain("46"),
    aim: "Stop the pain: caries out, distal wall built up, access with four orifices, lengths, shape the mesial and distobuccal canals, dress.",
    help: "supervised",
    holdPoints: [
      {
        at: "access",
        atMin: 24,
        seenBy: "supervisor",
        says: "Four orifices on a trapezoid floor; distolingual one far to lingual",
      },
      { at: "workingLength", atMin: 58, seenBy: "supervisor", says: "Lengths agreed on the angled film" },
    ],
    vitalSigns: { bodyMassKg: 82, systolicMmHg: 126, diastolicMmHg: 78, pulsePerMin: 82 },
    instrumentSet: { set: "Endodontic set 2", steriliserCycle: "cycle 2077", countedOut: 26, countedIn: 26 },
    anaesthetic: [
      {
        ...{ agent: "lidocaine", percent: 2, vasoconstrictor: { name: "epinephrine", ratio: 100_000 } },
        ...{ cartridgeMl: 1.8, cartridges: 1, technique: "inferior alveolar nerve block", atMin: 0 },
      },
      {
        ...{ agent: "articaine", percent: 4, vasoconstrictor: { name: "epinephrine", ratio: 100_000 } },
        ...{ cartridgeMl: 1.7, cartridges: 1, technique: "buccal infiltration at 46", atMin: 12 },
      },
    ],
    nextAnaesthetic: {
      ...{ agent: "articaine", percent: 4, cartridgeMl: 1.7, cartridges: 1 },
      vasoconstrictor: { name: "epinephrine", ratio: 100_000 },
    },
    canals: [
      { canal: "MB", state: "medicated", patency: "patent", ...lengths.MB, apicalSize: 25, taper: 0.04 },
      { canal: "ML", state: "medicated", patency: "patent", ...lengths.ML, apicalSize: 25, taper: 0.04 },
      { canal: "DB", state: "medicated", patency: "patent", ...lengths.DB, apicalSize: 35, taper: 0.04 },
      { canal: "DL", state: "negotiated", patency: "patent", ...lengths.DL, apicalSize: 15, taper: 0.02 },
    ],
    irrigation: [
      {
        solution: "sodium hypochlorite",
        percent: 3,
        volumeMl: 16,
        minutes: 24,
        atMin: 34,
        activated: "no",
        needle: needle(3),
      },
      {
        solution: "sodium hypochlorite",
        percent: 3,
        volumeMl: 6,
        minutes: 5,
        atMin: 74,
        activated: "sonic",
        needle: needle(2),
      },
      { solution: "saline", volumeMl: 4, minutes: 1, atMin: 80, activated: "no", needle: needle(2) },
    ],
    instruments: [
      { canal: "MB", size: 10, taper: 0.02, ...hand, depthMm: 20.5, seconds: 60 },
      { canal: "ML", size: 10, taper: 0.02, ...hand, depthMm: 20.5, seconds: 50 },
      { canal: "DB", size: 15, taper: 0.02, ...hand, depthMm: 19.5, seconds: 40 },
      { canal: "DL", size: 8, taper: 0.02, ...hand, depthMm: 19.5, seconds: 180 },
      { canal: "DL", size: 10, taper: 0.02, ...hand, depthMm: 19.5, seconds: 150 },
      { canal: "DL", size: 15, taper: 0.02, ...hand, depthMm: 19.5, seconds: 90 },
      { canal: "MB", size: 20, taper: 0.04, ...heated, seconds: 16, depthMm: 20.5 },
      { canal: "ML", size: 20, taper: 0.04, ...heated, seconds: 15, depthMm: 20.5 },
      { canal: "MB", size: 25, taper: 0.04, ...heated, seconds: 14, depthMm: 20.5 },
      { canal: "ML", size: 25, taper: 0.04, ...heated, seconds: 14, depthMm: 20.5 },
      { canal: "DB", size: 35, taper: 0.04, ...heated, seconds: 18, depthMm: 19.5 },
    ],
    medicament: {
      ...{ kind: "calciumHydroxide", changeBy: days.secondVisit },
      detail: "water-based paste by spiral; DL left wet, too narrow for paste",
    },
    temporary: { material: "glass ionomer over a foam pellet", thicknessMm: 4 },
    lots: [{ material: "calcium hydroxide paste", lot: "K3310", expires: "2026-10-31" }],
    films: [...films],
    painBefore: 7,
    painAfter24h: 3,
    painAfter7d: 0,
    afterwards: [
      { on: dayAfter(days.firstVisit, 1), what: "asked", pain: 3, says: "Slept through; tender when biting" },
      { on: dayAfter(days.firstVisit, 7), what: "asked", pain: 0, says: "Free of pain since the third day" },
    ],
    log: [
      { atMin: 11, says: "ML still tender: buccal infiltration added" },
      { atMin: 29, says: "Distolingual orifice found, 3 mm to lingual of the distobuccal one" },
    ],
    told: "Four canals instead of three, because the tooth has a third root on the tongue side; seen before we began. All reached, three shaped today, the fourth next time and by hand. What to take for pain, and to call if it swells.",
    note: "Dam without latex. Buccal infiltration added because ML was still tender at minute 11. Distolingual orifice 3 mm to lingual of the distobuccal one, under a ridge of dentine that had to come off; a bent size 08 turned to buccal 3 mm from the end. On the film the instrument in DL stands 0.5 mm short of its final length. DL reads about 1.5 mm shorter there than the locator says: the root runs toward the film and the film does not show it. Locator taken, paper points agree.",
    nextOn: days.secondVisit,
  });

const gutta = { state: "filled", patency: "patent", filledWith: "gutta-percha and calcium silicate sealer" } as const;

const secondVisit = (films: readonly string[]): Visit =>
  visit({
    on: days.secondVisit,
    ...clock(days.secondVisit, "09:05", 84),
    clinic: clinicOfDemo,
    timeOutCheck: namedAgain("46"),
    medicamentOut: "removed",
    vitalSigns: { bodyMassKg: 82 },
    aim: "Shape the distolingual canal, fill all four, build up.",
    help: "supervised",
    holdPoints: [
      {
        at: "coneFit",
        atMin: 52,
        seenBy: "supervisor",
        says: "Cones to length on the film; DL parted from DB at 15 degrees",
      },
    ],
    instrumentSet: { set: "Endodontic set 5", steriliserCycle: "cycle 2121", countedOut: 24, countedIn: 24 },
    anaesthetic: [
      {
        ...{ agent: "articaine", percent: 4, vasoconstrictor: { name: "epinephrine", ratio: 100_000 } },
        ...{ cartridgeMl: 1.7, cartridges: 1, technique: "buccal infiltration at 46", atMin: 0 },
      },
    ],
    canals: [
      {
        canal: "MB",
        ...gutta,
        ...lengths.MB,
        apicalSize: 25,
        taper: 0.06,
        technique: "single cone",
        fillingEndMm: 0.9,
      },
      {
        canal: "ML",
        ...gutta,
        ...lengths.ML,
        apicalSize: 25,
        taper: 0.06,
        technique: "single cone",
        fillingEndMm: 0.9,
      },
      {
        canal: "DB",
        ...gutta,
        ...lengths.DB,
        apicalSize: 40,
        taper: 0.04,
        technique: "warm vertical compaction",
        fillingEndMm: 1,
      },
      {
        canal: "DL",
        ...gutta,
        ...lengths.DL,
        apicalSize: 25,
        taper: 0.04,
        technique: "single cone",
        fillingEndMm: 0.8,
      },
    ],
    irrigation: [
      {
        solution: "sodium hypochlorite",
        percent: 3,
        volumeMl: 14,
        minutes: 18,
        atMin: 10,
        activated: "no",
        needle: needle(3),
      },
      {
        solution: "sodium hypochlorite",
        percent: 3,
        volumeMl: 6,
        minutes: 4,
        atMin: 40,
        activated: "ultrasonic",
        needle: needle(2),
      },
      { solution: "saline", volumeMl: 4, minutes: 1, atMin: 45, activated: "no", needle: needle(2) },
      { solution: "EDTA", percent: 17, volumeMl: 4, minutes: 2, atMin: 46, activated: "no", needle: needle(2) },
      { solution: "saline", volumeMl: 4, minutes: 1, atMin: 49, activated: "no", needle: needle(2) },
    ],
    instruments: [
      { canal: "DL", size: 15, taper: 0.02, ...hand, depthMm: 19.5, seconds: 60 },
      { canal: "DL", size: 15, taper: 0.04, ...heated, seconds: 10, depthMm: 19.5 },
      { canal: "DL", size: 20, taper: 0.04, ...heated, seconds: 10, depthMm: 19.5 },
      { canal: "DL", size: 25, taper: 0.04, ...heated, seconds: 9, depthMm: 19.5 },
      { canal: "MB", size: 25, taper: 0.06, ...heated, seconds: 12, depthMm: 20.5 },
      { canal: "ML", size: 25, taper: 0.06, ...heated, seconds: 12, depthMm: 20.5 },
      { canal: "DB", size: 40, taper: 0.04, ...heated, seconds: 12, depthMm: 19.5 },
    ],
    orificeBarrier: "flowable composite, 1 mm",
    buildUp: "composite core",
    lots: [
      { material: "calcium silicate sealer", lot: "S6102", expires: "2026-12-31", stays: true },
      { material: "composite", lot: "C9044", expires: "2027-01-31", stays: true },
    ],
    films: [...films],
    painBefore: 0,
    painAfter24h: 1,
    painAfter7d: 0,
    afterwards: [{ on: dayAfter(days.secondVisit, 1), what: "asked", pain: 1, says: "Hardly anything" }],
    told: "All four canals are cleaned and filled. The cusps must be covered within about four weeks or the tooth may split. Film again in a year.",
    note: "New instruments for the distolingual canal, one use. Each cut no more than ten seconds at length.",
    nextOn: days.twelveMonths,
  });

/** Both visits of case B, the hand-back, the supervisor's reading and the recall. */
export const visits = (filmsOn: FilmsOn): readonly Moment[] => [
  {
    day: days.firstVisit,
    time: "15:38",
    words: "First visit: four orifices, lengths, three canals shaped, dressing",
    writes: [
      write("visit", "visit-1", firstVisit(filmsOn(days.firstVisit))),
      write("anatomy", "anatomy-1", {
        roots: [
          { name: "M", levels: [2], orifices: ["MB", "ML"] },
          { name: "DB", side: "buccal", levels: [1] },
          { name: "DL", side: "lingual", levels: [1] },
        ],
        foundBy: ["angledFilm", "microscope", "instrument"],
        unusualBecause: "Third root seen apart on the angled film, its orifice found 3 mm to lingual and entered",
      }),
      searchEnded,
    ],
  },
  {
    day: days.secondVisit,
    time: "10:31",
    words: "Second visit: distolingual canal shaped, four canals filled",
    writes: [write("visit", "visit-2", secondVisit(filmsOn(days.secondVisit)))],
  },
];
