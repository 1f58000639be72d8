import type { BodyOf } from "../../../../src/record/parts.ts";
import { dayAfter } from "../calendar.ts";
import { type Moment, write } from "../case-of-moments.ts";
import { clinicOfDemo, clock, namedAgain, needle, stepsOf } from "../clinic-of-demo.ts";
import { published } from "../published.ts";
import { visit } from "../usual-bodies.ts";
import { days } from "./days.ts";
import { mishapOnTheDay, red06, red06File, removalWeighed } from "./fragment.ts";
import { lengths } from "./lengths.ts";
import { searchEnded } from "./search.ts";

type Visit = BodyOf<"visit">;

const anaesthetic: Visit["anaesthetic"] = [
  {
    ...{ agent: "articaine", percent: 4, vasoconstrictor: { name: "epinephrine", ratio: 100_000 } },
    ...{ cartridgeMl: 1.7, cartridges: 1, technique: "buccal infiltration", atMin: 0 },
  },
  {
    ...{ agent: "articaine", percent: 4, vasoconstrictor: { name: "epinephrine", ratio: 100_000 } },
    ...{ cartridgeMl: 1.7, cartridges: 0.25, technique: "palatal infiltration", atMin: 3 },
  },
];

/** 0.9 ml in five doses; what was wicked up with paper points is estimated from their number. */
const solvent: Visit["solvent"] = [
  { solvent: "chloroform", volumeMl: 0.2, atMin: 24, recoveredFraction: 0.2 },
  { solvent: "chloroform", volumeMl: 0.2, atMin: 29, recoveredFraction: 0.2 },
  { solvent: "chloroform", volumeMl: 0.2, atMin: 36, recoveredFraction: 0.3 },
  { solvent: "chloroform", volumeMl: 0.2, atMin: 43, recoveredFraction: 0.35 },
  { solvent: "chloroform", volumeMl: 0.1, atMin: 51, recoveredFraction: 0.4 },
];

const activated = { solution: "sodium hypochlorite", percent: 3, activated: "ultrasonic", needle: needle(2) } as const;
const irrigation: Visit["irrigation"] = [
  {
    solution: "sodium hypochlorite",
    percent: 3,
    volumeMl: 6,
    minutes: 4,
    atMin: 58,
    activated: "no",
    needle: needle(4),
  },
  {
    solution: "sodium hypochlorite",
    percent: 3,
    volumeMl: 12,
    minutes: 16,
    atMin: 66,
    activated: "no",
    needle: needle(3),
  },
  { ...activated, canal: "MB2", volumeMl: 3, minutes: 2, atMin: 100 },
  { ...activated, canal: "DB", volumeMl: 2, minutes: 2, atMin: 102 },
  { ...activated, canal: "P", volumeMl: 3, minutes: 2, atMin: 104 },
  { solution: "saline", volumeMl: 5, minutes: 1, atMin: 106, activated: "no", needle: needle(2) },
];

const hand = { alloy: "stainlessSteel", movement: "hand" } as const;
const driven = { alloy: "nickelTitanium", movement: "continuous", rpm: 300 } as const;
const slowly = { ...red06, rpm: 300, torqueLimitNmm: 20, instrument: "demo-25-06", file: red06File } as const;
/** In the order of the visit; the red one with taper .06 went into two canals before it parted in the third. */
const instruments: Visit["instruments"] = [
  { canal: "P", size: 30, taper: 0.09, ...driven, rpm: 500, seconds: 25, depthMm: 11 },
  { canal: "DB", size: 25, taper: 0.08, ...driven, rpm: 500, seconds: 20, depthMm: 10 },
  { canal: "MB1", size: 25, taper: 0.08, ...driven, rpm: 500, seconds: 20, depthMm: 10 },
  { canal: "P", size: 20, taper: 0.02, ...hand, depthMm: 20.5, seconds: 40 },
  { canal: "DB", size: 15, taper: 0.02, ...hand, depthMm: 19, seconds: 50 },
  { canal: "MB1", size: 10, taper: 0.02, ...hand, depthMm: 20.5, seconds: 90 },
  { canal: "MB2", size: 8, taper: 0.02, ...hand, depthMm: 20, seconds: 120 },
  { canal: "MB2", size: 10, taper: 0.02, ...hand, depthMm: 20, seconds: 90 },
  { canal: "MB2", size: 20, taper: 0.04, ...driven, seconds: 18, depthMm: 20 },
  { canal: "MB2", size: 25, taper: 0.04, ...driven, seconds: 15, depthMm: 20 },
  { canal: "P", ...slowly, seconds: 16, depthMm: 20.5, engagedFraction: 0.5 },
  { canal: "P", size: 40, taper: 0.04, ...driven, seconds: 16, depthMm: 20.5 },
  { canal: "DB", ...slowly, seconds: 14, depthMm: 18.5, engagedFraction: 0.5 },
  { canal: "DB", size: 30, taper: 0.05, ...driven, seconds: 15, depthMm: 19 },
  { canal: "MB1", size: 20, taper: 0.04, ...driven, seconds: 16, depthMm: 20.5 },
  { canal: "MB1", ...slowly, seconds: 34, depthMm: 20, engagedFraction: 0.6 },
];

const canals: Visit["canals"] = [
  {
    ...{
      canal: "MB1",
      state: "blocked",
      blockedBy: "fragment 3.0 mm in the bend",
      patency: "patent",
      ...lengths.MB1,
    },
    ...{ apicalSize: 20, taper: 0.04 },
  },
  { canal: "MB2", state: "medicated", patency: "patent", ...lengths.MB2, apicalSize: 25, taper: 0.04 },
  { canal: "DB", state: "medicated", patency: "patent", ...lengths.DB, apicalSize: 30, taper: 0.05 },
  { canal: "P", state: "medicated", patency: "patent", ...lengths.P, apicalSize: 40, taper: 0.04 },
];

/** The floor between MB1 and MB2 is opened with a fine tip, dry, with air. */
const ultrasonics: Visit["ultrasonics"] = [57, 58, 59, 60].map((atMin) => ({
  ...{ atMin, canal: "MB2", on: "root canal", seconds: 15, restSeconds: 30, coolant: "air", power: 20 },
}));

const { startedAt, endedAt, minutes } = clock(days.firstVisit, "08:35", 118);
const asked = { agent: "articaine", percent: 4, cartridgeMl: 1.7 } as const;

const begun = visit({
  on: days.firstVisit,
  startedAt,
  clinic: clinicOfDemo,
  ...stepsOf("demo-template-retreatment", [0, 1, 4]),
  timeOutCheck: namedAgain("26"),
  aim: "Take out the amalgam and the old root filling, find the second mesiobuccal canal, shape all four and dress them.",
  help: "supervised",
  holdPoints: [],
  vitalSigns: { bodyMassKg: 68, systolicMmHg: 134, diastolicMmHg: 82, pulsePerMin: 74 },
  instrumentSet: { set: "Retreatment set 3", steriliserCycle: "cycle 1182", countedOut: 31, countedIn: 31 },
  anaesthetic,
  nextAnaesthetic: { ...asked, vasoconstrictor: { name: "epinephrine", ratio: 100_000 }, cartridges: 1 },
  painBefore: 3,
  note: "No change in health since the first day. Lip closed off with a mouth prop because of the long visit.",
});

const finished = (films: readonly string[]): Visit => ({
  ...begun,
  ...{ minutes, endedAt },
  ...stepsOf("demo-template-retreatment", [
    ...[0, 1, 4, 9, 20, 55, 62, 84],
    "Three of four; an instrument parted in MB1 at minute 92",
    ...[107, 112, 115, 115, 116, 101, 117],
  ]),
  holdPoints: [
    {
      ...{ at: "access", seenBy: "supervisor", atMin: 20 },
      says: "No crack under the amalgam; floor followed, no perforation",
    },
    {
      at: "workingLength",
      atMin: 84,
      seenBy: "supervisor",
      says: "Lengths agreed on the film; MB1 and MB2 seen apart at 12 degrees",
    },
    {
      at: "other",
      atMin: 99,
      seenBy: "supervisor",
      says: "Fragment seen; stop for today, dress, bypass next time. Not to be drilled after",
    },
  ],
  instrumentSet: { set: "Retreatment set 3", steriliserCycle: "cycle 1182", countedOut: 31, countedIn: 30 },
  canals,
  irrigation,
  instruments,
  solvent,
  solventPassed: {
    massMg: 0.32,
    says: "The mean of ten extracted teeth with closed apices; nothing was measured here",
  },
  ultrasonics,
  medicament: {
    kind: "calciumHydroxide",
    changeBy: days.secondVisit,
    detail: "water-based paste, spiral in P and DB, needle in MB2 and above the fragment in MB1",
  },
  temporary: { material: "glass ionomer over a foam pellet", thicknessMm: 3.5 },
  lots: [
    { material: "calcium hydroxide paste", lot: "K2231", expires: "2025-08-31", stays: false },
    { material: "glass ionomer", lot: "G6620", expires: "2025-03-31" },
    { material: "articaine 4 % with epinephrine 1:100 000", lot: "A0917", expires: "2025-02-28" },
  ],
  films: [...films],
  painAfter24h: 4,
  painAfter7d: 1,
  afterwards: [
    {
      ...{ on: dayAfter(days.firstVisit, 1), what: "asked", pain: 4 },
      ...{ says: "Pressure when biting, no swelling", did: "One ibuprofen more; to call if it swells" },
    },
    {
      ...{ on: dayAfter(days.firstVisit, 3), what: "call", pain: 5 },
      ...{
        says: "Worse on the third evening, still no swelling",
        did: "Bite looked at the next noon, eased by 0.2 mm",
      },
    },
    { on: dayAfter(days.firstVisit, 7), what: "asked", pain: 1, says: "Nearly gone" },
  ],
  log: [
    { atMin: 20, says: "Amalgam out, no crack" },
    { atMin: 61, says: "Size 08 dropped into MB2" },
    { atMin: 92, says: "Size 25 .06 parted in MB1; stopped" },
    { atMin: 101, says: "Patient told, sitting up, film on the screen" },
  ],
  told: "Told at once and sitting up, shown on the film: a piece of an instrument of about 3 mm has broken off in one canal of the front cheek-side root and is still there. Why it happens, that the tooth was not damaged by it, that we try to pass it next time and do not drill after it, and that a piece left behind does not by itself lower the chance of healing much; what counts is how clean the canal becomes. Question whether it can wander: no. Agreed to go on. Ibuprofen 400 mg if needed, not more than three a day because of the blood pressure.",
  note: "Floor map followed under the microscope from the MB1 orifice to the palatal one: 2 mm groove, troughed 1 mm deep with a fine ultrasonic tip; a size 08 dropped into MB2 at minute 61. Old sealer soft, gutta-percha well condensed in P, loose in MB1. The instrument in MB1 was in its second use, in a canal shaped before: it had been run to 20 mm twice, and I went in a third time to smooth the middle third. No unwinding seen on the rest of it. Mesial wall rebuilt in composite first. On the film the instrument in MB2 stands 0.5 mm short of its final length. Film of the fragment at minute 97.",
  nextOn: days.secondVisit,
});

/** The first visit of case A; takes the ids of the films taken on that day. */
export const firstVisit = (films: readonly string[]): readonly Moment[] => [
  {
    day: days.firstVisit,
    time: "08:35",
    words: "Time-out and anaesthetic, first visit begun",
    writes: [write("visit", "visit-1", begun)],
  },
  {
    day: days.firstVisit,
    time: "09:38",
    words: "Second mesiobuccal canal found and entered",
    writes: [
      searchEnded,
      write("anatomy", "anatomy-1", {
        roots: [
          { name: "MB", side: "buccal", levels: [2], orifices: ["MB1", "MB2"] },
          { name: "DB", side: "buccal", levels: [1] },
          { name: "P", side: "lingual", levels: [1] },
        ],
        foundBy: ["angledFilm", "microscope", "troughing", "instrument"],
        filledBefore: ["MB1", "DB", "P"],
      }),
    ],
  },
  {
    day: days.firstVisit,
    time: "10:32",
    words: "Instrument parted in MB1, patient told, removal weighed and its rules set",
    writes: [mishapOnTheDay, removalWeighed],
  },
  {
    day: days.firstVisit,
    time: "10:52",
    words: "First visit completed: four canals, doses, dressing",
    writes: [write("visit", "visit-1", finished(films))],
  },
  {
    day: days.firstVisit,
    time: "20:15",
    words: "Evidence on fragments gathered",
    writes: [
      write("reference", "ref-spili-2005", published.spili2005),
      write("reference", "ref-panitvisai-2010", published.panitvisai2010),
      write("reference", "ref-souter-2005", published.souter2005),
      write("reference", "ref-hulsmann-1999", published.hulsmann1999),
      write("reference", "ref-chutich-1998", published.chutich1998),
      write("claim", "claim-leave", {
        about: "mishap-1",
        says: "A retained fragment by itself lowers healing little, if at all.",
        speaks: "for",
        references: ["ref-spili-2005", "ref-panitvisai-2010"],
        state: "contested",
        verdict:
          "Case-control data from mostly specialist hands; with a lesion before, as here, healing was about six points lower and the interval is wide. Enough to try a bypass first.",
      }),
      write("claim", "claim-not-drill", {
        about: "mishap-1",
        says: "Drilling after a fragment in the bend costs dentine where there is least.",
        speaks: "for",
        references: ["ref-souter-2005", "ref-hulsmann-1999"],
        state: "supported",
        verdict:
          "Perforations and failures were confined to the apical third; 13 of 31 in the bend could be neither removed nor passed, 15 of 33 beyond it.",
      }),
      write("claim", "claim-solvent", {
        about: "visit-1",
        says: "The solvent that passes the apex in such a visit is well under a milligram.",
        speaks: "for",
        references: ["ref-chutich-1998"],
        state: "benchOnly",
        verdict: "Extracted teeth with closed apices of size 40. Says nothing of the vapour over the visit.",
      }),
    ],
  },
];
