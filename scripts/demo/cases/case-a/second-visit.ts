import type { BodyOf } from "../../../../src/record/parts.ts";
import { dayAfter } from "../calendar.ts";
import { type Moment, write } from "../case-of-moments.ts";
import { clinicOfDemo, clock, namedAgain, needle } from "../clinic-of-demo.ts";
import { visit } from "../usual-bodies.ts";
import { days } from "./days.ts";
import { mishapAfterwards, removalEnded } from "./fragment.ts";
import { lengths } from "./lengths.ts";

type Visit = BodyOf<"visit">;

const filled = {
  state: "filled",
  patency: "patent",
  filledWith: "gutta-percha and calcium silicate sealer",
} as const;

const canals: Visit["canals"] = [
  {
    ...{
      canal: "MB1",
      ...filled,
      ...lengths.MB1,
      apicalSize: 25,
      taper: 0.02,
      technique: "single cone beside the fragment",
    },
    fillingEndMm: 0.8,
  },
  { canal: "MB2", ...filled, ...lengths.MB2, apicalSize: 25, taper: 0.04, technique: "single cone", fillingEndMm: 1.2 },
  { canal: "DB", ...filled, ...lengths.DB, apicalSize: 30, taper: 0.05, technique: "single cone", fillingEndMm: 0.8 },
  {
    canal: "P",
    ...filled,
    ...lengths.P,
    apicalSize: 40,
    taper: 0.04,
    technique: "warm vertical compaction",
    fillingEndMm: 1,
  },
];

const hand = { alloy: "stainlessSteel", movement: "hand" } as const;
const instruments: Visit["instruments"] = [
  { canal: "MB1", size: 8, taper: 0.02, ...hand, depthMm: 20.5, seconds: 300 },
  { canal: "MB1", size: 10, taper: 0.02, ...hand, depthMm: 20.5, seconds: 180 },
  { canal: "MB1", size: 15, taper: 0.02, ...hand, depthMm: 20.5, seconds: 150 },
  { canal: "MB1", size: 20, taper: 0.02, alloy: "nickelTitanium", movement: "hand", depthMm: 20.5, seconds: 90 },
  { canal: "MB1", size: 25, taper: 0.02, alloy: "nickelTitanium", movement: "hand", depthMm: 20.5, seconds: 90 },
];

const irrigation: Visit["irrigation"] = [
  {
    solution: "sodium hypochlorite",
    percent: 3,
    volumeMl: 10,
    minutes: 12,
    atMin: 12,
    activated: "no",
    needle: needle(4),
  },
  {
    solution: "sodium hypochlorite",
    percent: 3,
    volumeMl: 10,
    minutes: 10,
    atMin: 46,
    activated: "ultrasonic",
    needle: needle(2),
  },
  { solution: "saline", volumeMl: 4, minutes: 1, atMin: 57, activated: "no", needle: needle(2) },
  { solution: "EDTA", percent: 17, volumeMl: 4, minutes: 2, atMin: 58, activated: "no", needle: needle(2) },
  { solution: "saline", volumeMl: 4, minutes: 1, atMin: 60, activated: "no", needle: needle(2) },
  {
    solution: "sodium hypochlorite",
    percent: 3,
    volumeMl: 4,
    minutes: 2,
    atMin: 61,
    activated: "ultrasonic",
    needle: needle(2),
  },
];

/** A file beside the fragment, held above the beginning of the bend as the rules for stopping say. */
const ultrasonics: Visit["ultrasonics"] = [36, 37, 38, 39].map((atMin) => ({
  ...{ atMin, canal: "MB1", on: "fragment", alloy: "nickelTitanium", seconds: 10, restSeconds: 30 },
  ...{ coolant: "water", power: 20 },
}));

const finished = (films: readonly string[]): Visit =>
  visit({
    on: days.secondVisit,
    ...clock(days.secondVisit, "09:02", 96),
    clinic: clinicOfDemo,
    timeOutCheck: namedAgain("26"),
    aim: "Pass the fragment in MB1, clean and fill all four canals, build up.",
    help: "supervised",
    holdPoints: [
      { at: "other", atMin: 33, seenBy: "supervisor", says: "Size 10 beside the fragment at full length, on the film" },
      { at: "coneFit", atMin: 66, seenBy: "supervisor", says: "Cones to length in all four; MB1 beside the fragment" },
    ],
    vitalSigns: { bodyMassKg: 68, systolicMmHg: 130, diastolicMmHg: 80, pulsePerMin: 70 },
    instrumentSet: { set: "Endodontic set 7", steriliserCycle: "cycle 1214", countedOut: 27, countedIn: 27 },
    anaesthetic: [
      {
        ...{ agent: "articaine", percent: 4, vasoconstrictor: { name: "epinephrine", ratio: 100_000 } },
        ...{ cartridgeMl: 1.7, cartridges: 1, technique: "buccal infiltration", atMin: 0 },
      },
    ],
    canals,
    irrigation,
    instruments,
    ultrasonics,
    medicamentOut: "removed",
    orificeBarrier: "flowable composite, 1 mm, tinted, over each orifice",
    buildUp: "composite in layers",
    lots: [
      { material: "gutta-percha cones", lot: "T1933", expires: "2026-09-30", stays: true },
      { material: "calcium silicate sealer", lot: "S5540", expires: "2025-11-30", stays: true },
      { material: "composite", lot: "C8812", expires: "2026-03-31", stays: true },
    ],
    films: [...films],
    painBefore: 1,
    painAfter24h: 2,
    painAfter7d: 0,
    afterwards: [
      { on: dayAfter(days.secondVisit, 1), what: "asked", pain: 2, says: "Dull, no tablet taken" },
      { on: dayAfter(days.secondVisit, 7), what: "asked", pain: 0, says: "Nothing any more" },
    ],
    log: [
      { atMin: 6, says: "Dressing out of all four, canals dry" },
      { atMin: 29, says: "Size 08 beside the fragment at length" },
      { atMin: 71, says: "Cones agreed on the film, filling begun" },
    ],
    told: "The piece could be passed: a fine instrument went alongside it to the end, and the canal was cleaned and filled around it. It stays in the tooth. The cusps must be covered within a few weeks. What to expect for a week; film again after six months, and why one a year later and two years later.",
    note: "Dressing out with saline and ultrasound. Size 08 bent at the tip, slow quarter turns to the palatal side of the fragment: at length after five minutes, locator steady at 21. No engine in MB1 below the bend. Four bursts of an ultrasonic file beside it, with water, held above the bend: the fragment moved by nothing; not pursued.",
    nextOn: days.sixMonths,
  });

/** The second visit of case A and the hand-back; takes the ids of the films taken on that day. */
export const secondVisit = (films: readonly string[]): readonly Moment[] => [
  {
    day: days.secondVisit,
    time: "10:40",
    words: "Second visit: fragment passed, four canals filled",
    writes: [write("visit", "visit-2", finished(films))],
  },
  {
    day: days.secondVisit,
    time: "10:48",
    words: "Mishap and removal brought up to date: bypassed",
    writes: [mishapAfterwards, removalEnded],
  },
  {
    day: days.secondVisit,
    time: "11:05",
    words: "Tooth handed back to the restoring dentist",
    writes: [
      write("handback", "handback-1", {
        on: days.secondVisit,
        to: "referringDentist",
        restoreWith: "Composite over all cusps on the build-up, indirect later if it wears; no post",
        restoreBy: days.crown,
        orificesMarkedBy: "tinted flowable composite over each orifice",
        warnings:
          "A fragment of nickel-titanium, 3.0 mm, lies in the apical third of MB1, passed and filled around. No post in the mesiobuccal root: the groove between MB1 and MB2 was troughed by 1 mm and the wall toward the furcation is thin there.",
        prognosis:
          "Favourable for the tooth. Guarded for the lesion until the first recall: canal that was never treated now cleaned, fragment bypassed. If the lesion is not smaller after two years, resection of the mesiobuccal root.",
        recallOn: days.sixMonths,
        recallAsks:
          "Film, percussion, palpation and probing with us after six months, then at one and two years. Please send the day on which the cusps were covered.",
        painAdvice:
          "Some pressure when biting for a few days. Call us when it swells, when there is fever, or when pain grows after the third day.",
      }),
    ],
  },
  {
    day: days.secondVisit,
    time: "17:30",
    who: "Supervisor",
    words: "Case read and signed by the supervisor, with a question",
    writes: [
      write("review", "review-1", {
        on: days.secondVisit,
        by: "supervisor",
        of: "mishap-1",
        says: "Well told and well stopped. Question: the canal had been shaped to 20 .04 at length; what did the 25 .06 have to reach that the irrigation could not? And write down how many times that instrument had been in a canal, not how many patients.",
        signed: true,
        answer: "",
      }),
    ],
  },
  {
    day: days.secondVisit,
    time: "19:10",
    words: "Supervisor's question answered",
    writes: [
      write("review", "review-1", {
        on: days.secondVisit,
        by: "supervisor",
        of: "mishap-1",
        says: "Well told and well stopped. Question: the canal had been shaped to 20 .04 at length; what did the 25 .06 have to reach that the irrigation could not? And write down how many times that instrument had been in a canal, not how many patients.",
        signed: true,
        answer:
          "Nothing that 20 .04 with activation would not have reached; I wanted a taper for the cone. Uses: seven canals in two patients, three of them curved. From now on counted by canal.",
      }),
    ],
  },
];
