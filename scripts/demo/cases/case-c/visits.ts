import type { BodyOf } from "../../../../src/record/parts.ts";
import { dayAfter } from "../calendar.ts";
import { type Moment, write } from "../case-of-moments.ts";
import { clinicOfDemo, clock, namedAgain, needle, stepsOf } from "../clinic-of-demo.ts";
import { visit } from "../usual-bodies.ts";
import { days } from "./days.ts";
import { lengths } from "./lengths.ts";

type Visit = BodyOf<"visit">;

/** The apex is open: slow, and never deep. */
const slow = () => needle(3, 1.5);
const { locatorMm: _unreliable, ...byFilm } = lengths.R;

const firstVisit = (films: readonly string[]): Visit =>
  visit({
    on: days.firstVisit,
    ...clock(days.firstVisit, "15:14", 64),
    clinic: clinicOfDemo,
    ...stepsOf("demo-template-first", [
      ...[0, 1, 2, 8, 15, 17, 20],
      "Not shaped: the walls are thin",
      ...[43, 50, 55, 56, 60, 61, 62],
    ]),
    timeOutCheck: namedAgain("35", "the mother and the assistant"),
    aim: "Open, length, disinfect without cutting the thin walls, dress.",
    help: "assisted",
    holdPoints: [
      { at: "access", atMin: 15, seenBy: "supervisor", says: "Access through the facet, walls left alone" },
      {
        at: "workingLength",
        atMin: 20,
        seenBy: "supervisor",
        says: "Length from the first film and by paper points, dry to 17 mm; locator not relied on",
      },
    ],
    vitalSigns: { bodyMassKg: 47, heightCm: 155, systolicMmHg: 108, diastolicMmHg: 66, pulsePerMin: 88 },
    instrumentSet: { set: "Endodontic set 2", steriliserCycle: "cycle 2602", countedOut: 22, countedIn: 22 },
    anaesthetic: [
      {
        ...{ agent: "articaine", percent: 4, vasoconstrictor: { name: "epinephrine", ratio: 200_000 } },
        ...{ cartridgeMl: 1.7, cartridges: 0.5, technique: "buccal infiltration at 35", atMin: 0 },
      },
    ],
    nextAnaesthetic: {
      ...{ agent: "articaine", percent: 4, cartridgeMl: 1.7, cartridges: 0.5 },
      vasoconstrictor: { name: "epinephrine", ratio: 200_000 },
    },
    canals: [{ canal: "R", state: "medicated", patency: "patent", ...byFilm }],
    irrigation: [
      {
        solution: "sodium hypochlorite",
        percent: 1.5,
        volumeMl: 20,
        minutes: 10,
        atMin: 22,
        activated: "no",
        needle: slow(),
      },
      { solution: "saline", volumeMl: 20, minutes: 5, atMin: 33, activated: "no", needle: slow() },
      { solution: "EDTA", percent: 17, volumeMl: 5, minutes: 2, atMin: 39, activated: "manual", needle: slow() },
      { solution: "saline", volumeMl: 5, minutes: 1, atMin: 42, activated: "no", needle: slow() },
    ],
    instruments: [
      { canal: "R", size: 60, taper: 0.02, alloy: "stainlessSteel", movement: "hand", depthMm: 18, seconds: 40 },
    ],
    medicament: { kind: "calciumHydroxide", changeBy: days.secondVisit, detail: "water-based paste, kept 1 mm short" },
    temporary: { material: "glass ionomer over a foam pellet", thicknessMm: 4 },
    lots: [{ material: "calcium hydroxide paste", lot: "K3602", expires: "2027-06-30" }],
    films: [...films],
    painBefore: 1,
    painAfter24h: 1,
    painAfter7d: 0,
    afterwards: [
      { on: dayAfter(days.firstVisit, 1), what: "asked", pain: 1, says: "The mother: went to school, ate well" },
    ],
    log: [{ atMin: 43, says: "Nothing more comes out of the opening" }],
    told: "To girl and mother: the inside was dead and is now washed out; the pimple should be gone in three weeks. Not to bite on hard bread with it. Call if it swells.",
    note: "No bleeding, no feeling anywhere in the canal. Pus at the opening stopped by the end of the visit. Low concentration and slow, never wedged, because the apex is open. First anaesthetic in her life: went well.",
    nextOn: days.secondVisit,
  });

const secondVisit = (films: readonly string[]): Visit =>
  visit({
    on: days.secondVisit,
    ...clock(days.secondVisit, "15:18", 71),
    clinic: clinicOfDemo,
    timeOutCheck: namedAgain("35"),
    medicamentOut: "removed",
    aim: "Check that the tract has closed, place the barrier.",
    help: "assisted",
    holdPoints: [
      {
        at: "other",
        atMin: 58,
        seenBy: "supervisor",
        says: "Barrier 4 mm thick at the end of the wall on the film; left to set moist",
      },
    ],
    vitalSigns: { bodyMassKg: 47, pulsePerMin: 80 },
    instrumentSet: { set: "Endodontic set 6", steriliserCycle: "cycle 2655", countedOut: 22, countedIn: 22 },
    anaesthetic: [
      {
        ...{ agent: "mepivacaine", percent: 3 },
        ...{ cartridgeMl: 1.8, cartridges: 0.5, technique: "buccal infiltration at 35", atMin: 0 },
      },
    ],
    canals: [
      {
        ...{ canal: "R", state: "shaped", patency: "patent", ...byFilm },
        ...{
          filledWith: "calcium silicate cement, 4 mm",
          technique: "in portions with pluggers against a collagen stop",
        },
        fillingEndMm: 0.3,
      },
    ],
    irrigation: [
      {
        solution: "sodium hypochlorite",
        percent: 1.5,
        volumeMl: 10,
        minutes: 5,
        atMin: 12,
        activated: "no",
        needle: slow(),
      },
      { solution: "saline", volumeMl: 10, minutes: 2, atMin: 18, activated: "no", needle: slow() },
      { solution: "EDTA", percent: 17, volumeMl: 5, minutes: 2, atMin: 21, activated: "manual", needle: slow() },
      { solution: "saline", volumeMl: 5, minutes: 1, atMin: 24, activated: "no", needle: slow() },
    ],
    medicament: { kind: "none" },
    temporary: { material: "glass ionomer over a moist foam pellet", thicknessMm: 4 },
    lots: [{ material: "calcium silicate cement", lot: "M1408", expires: "2027-02-28", stays: true }],
    films: [...films],
    painBefore: 0,
    painAfter24h: 1,
    painAfter7d: 0,
    told: "The pimple is gone. The end of the root is now closed with a cement that sets overnight; tomorrow the rest is filled.",
    note: "Tract closed, only a pale point. Canal dry with paper points to 18. Two portions taken out again and placed anew: first film showed a gap on the distal side.",
    nextOn: days.thirdVisit,
  });

const thirdVisit = (films: readonly string[]): Visit =>
  visit({
    on: days.thirdVisit,
    ...clock(days.thirdVisit, "15:18", 48),
    clinic: clinicOfDemo,
    timeOutCheck: namedAgain("35"),
    aim: "Check that the barrier has set, fill the rest, close the crown; protect the cone of 45.",
    help: "supervised",
    holdPoints: [{ at: "other", atMin: 9, seenBy: "supervisor", says: "Barrier hard to the plugger" }],
    instrumentSet: { set: "Endodontic set 1", steriliserCycle: "cycle 2659", countedOut: 18, countedIn: 18 },
    canals: [
      {
        ...{ canal: "R", state: "filled", patency: "notTried", ...byFilm },
        ...{
          filledWith: "calcium silicate cement 4 mm, then gutta-percha",
          technique: "barrier, warm backfill to 3 mm below the neck",
        },
        fillingEndMm: 0.3,
      },
    ],
    orificeBarrier: "composite from 3 mm below the neck upwards, to stiffen it",
    buildUp: "composite, occlusal",
    lots: [{ material: "composite", lot: "C9120", expires: "2027-04-30", stays: true }],
    films: [...films],
    painBefore: 0,
    painAfter24h: 0,
    painAfter7d: 0,
    told: "Done. Seen again in three months, film in six. The other side: the cone of 45 was covered with a drop of composite so that it can't break off.",
    note: "No anaesthetic needed. 45: etched, flowable composite round the cone, contact freed by 0.5 mm.",
    nextOn: days.threeMonths,
  });

/** The three visits of case C; takes the ids of the films taken on a day. */
export const visits = (filmsOn: (day: string) => readonly string[]): readonly Moment[] => [
  {
    day: days.firstVisit,
    time: "16:20",
    words: "First visit: opened, length, disinfected, dressed",
    writes: [
      write("visit", "visit-1", firstVisit(filmsOn(days.firstVisit))),
      write("anatomy", "anatomy-1", { roots: [{ name: "R", levels: [1] }], foundBy: ["film", "microscope"] }),
    ],
  },
  {
    day: days.secondVisit,
    time: "16:31",
    words: "Second visit: tract closed, barrier placed",
    writes: [write("visit", "visit-2", secondVisit(filmsOn(days.secondVisit)))],
  },
  {
    day: days.thirdVisit,
    time: "16:08",
    words: "Third visit: barrier set, filled and closed",
    writes: [write("visit", "visit-3", thirdVisit(filmsOn(days.thirdVisit)))],
  },
];
