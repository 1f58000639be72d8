import type { BodyOf } from "../../../../src/record/parts.ts";
import { type Writing, write } from "../case-of-moments.ts";
import { days } from "./days.ts";

type Mishap = BodyOf<"mishap">;
type Removal = BodyOf<"removal">;

/** The instrument that parts, as every part of the case describes it. */
export const red06 = {
  size: 25,
  taper: 0.06,
  workingMm: 16,
  lengthMm: 25,
  section: "convexTriangle",
  alloy: "nickelTitanium",
  movement: "continuous",
} as const;
/** Its file in the cabinet: used in four canals of one patient before this one. */
export const red06File = {
  ...{ id: "demo-file-red-06-b", label: "25/.06 B", usesBefore: 1, turnsBefore: 290, sterilisationsBefore: 1 },
} as const;

const separated: NonNullable<Mishap["separated"]> = {
  ...{ tipDepthMm: 20, depthFrom: "referencePoint" },
  lengthMm: { value: 3, sigma: 0.2 },
  brokenEndDiameterMm: { value: 0.42, sigma: 0.04 },
  signs: ["noneVisible"],
  ...{ tipBound: "no", stoppedAtTorqueLimit: "no", headSeen: "hidden", stage: "partlyCleaned", file: red06File },
};

const done = (step: string, time: string) => ({ step: `separated-${step}`, at: `${days.firstVisit}T${time}:00Z` });

const happened: Mishap = {
  on: days.firstVisit,
  visit: "visit-1",
  what: "separatedInstrument",
  canal: "MB1",
  instrument: { ...red06, rpm: 300 },
  fragmentMm: 3,
  third: "apical",
  bend: "in",
  handled: "open",
  toldPatient: "told",
  story:
    "Size 25 taper .06, continuous rotation at 300 a minute, second clinical use. It parted without any warning while smoothing the middle third of MB1; the piece is 3.0 mm by the film, its head in the bend and out of sight of the microscope. The canal had been patent and shaped to 20 .04 at full length before. Stopped, film, supervisor called, patient told.",
  separated,
  steps: [
    done("stop", "10:07"),
    done("keep", "10:09"),
    done("film", "10:12"),
    done("note", "10:13"),
    done("supervisor", "10:15"),
    done("tell", "10:16"),
    done("weigh", "10:30"),
  ],
  told: {
    on: days.firstVisit,
    by: "both",
    said: "A piece of about 3 mm of a thin tool broke off in one canal and is still there. That we are sorry. That it can be passed, taken out or left, and what each means.",
    agreed: "Dress the tooth today, try to pass the piece in two weeks, no drilling after it.",
  },
};

/** The mishap as it was recorded on the day. */
export const mishapOnTheDay: Writing = write("mishap", "mishap-1", happened);

/** The mishap after the second visit, with the account of why and what the supervisor objects. */
export const mishapAfterwards: Writing = write("mishap", "mishap-1", {
  ...happened,
  handled: "bypassed",
  steps: [...(happened.steps ?? []), done("close", "10:48")],
  story: `${happened.story}\nTwo weeks later a size 08 passed on its palatal side to full length; canal enlarged by hand to 25 .02 and filled beside it. What I would do otherwise: new instrument for a canal that was shaped before, and no third entry at a depth already reached.`,
  defence:
    "No flute was unwound, the tip turned freely and the motor did not stop at its limit: nothing of that speaks for a torsional overload. The place speaks less clearly: 3.0 mm from the tip is where twisting usually breaks an instrument, while this canal wore it most about 5 mm from the tip. After two canals of that day and four before, on balance consistent with bending fatigue. It is not settled; the broken face was not looked at under a microscope.",
  objection:
    "No visible sign is weak evidence: torsional breaks without deformed flutes are reported. Keep the shaft for the microscope.",
});

const rules: NonNullable<Removal["stopRules"]> = {
  ...{ setAt: `${days.firstVisit}T10:30:00Z`, minutes: 20, attempts: 3, wallLeftMm: 0.5 },
  other: "No ultrasonic tip below the beginning of the bend",
};

/** By the film and the instruments that had been there; the other walls can't be read on a film. */
const weighed: Removal = {
  mishap: "mishap-1",
  on: days.firstVisit,
  headDiameterMm: 0.43,
  canalDiameterMm: 0.45,
  walls: [
    { side: "furcation", mm: 0.7 },
    { side: "mesial", mm: 0.9 },
  ],
  thinnestAlong: [{ atMm: 5, side: "furcation", mm: 0.9 }],
  clearanceMm: 0.1,
  stopRules: rules,
  attempts: [],
};

/** The weighing with the rules for stopping, before anything was tried. */
export const removalWeighed: Writing = write("removal", "removal-1", weighed);

/** The same after three attempts by the clock. */
export const removalEnded: Writing = write("removal", "removal-1", {
  ...weighed,
  attempts: [
    {
      ...{ at: `${days.secondVisit}T09:21:00Z`, minutes: 3, tool: "bypassFile", tip: "size 08, straight" },
      ...{ moved: "nothing", note: "Buccal side; stands on the head of the piece" },
    },
    {
      ...{ at: `${days.secondVisit}T09:26:00Z`, minutes: 5, tool: "bypassFile", tip: "size 08, bent at its tip" },
      ...{ moved: "bypassed", note: "Palatal side, slow quarter turns; at length, locator steady at 21" },
    },
    {
      ...{ at: `${days.secondVisit}T09:38:00Z`, minutes: 4, tool: "ultrasonicTip" },
      tip: "size 15 file, power 20, water, four bursts of 10 s above the bend",
      ...{ moved: "nothing", note: "Not pursued; the third and last attempt that the rules allow" },
    },
  ],
  result: {
    is: "bypassed",
    on: days.secondVisit,
    because:
      "A size 08 went alongside the piece to full length, and the canal could be cleaned. Its head lies in the bend out of sight; a straight way to it would take the wall where there is least.",
  },
  told: "That the piece was passed and stays. That the canal below it was cleaned and filled beside it.",
});
