import type { CanalStanding } from "../../../record/canal-states.ts";
import type { ClinicRules } from "../../../record/clinic-rules.ts";
import type { BodyOf } from "../../../record/parts.ts";

type Tested = BodyOf<"findings">["teeth"][number];
type CanalRow = BodyOf<"visit">["canals"][number];

/** A tooth on the sheet of tests with nothing done yet. */
export const emptyTestedTooth = (tooth: string, role: Tested["role"]): Tested => ({
  ...{ tooth, role },
  cold: { reply: "notDone" },
  heat: { reply: "notDone" },
  ...{ electric: "notDone", percussion: "notDone", palpation: "notDone", bite: "notDone", mobility: "notDone" },
  probingMm: {},
});

/** A canal at the beginning of a visit: as the visit before left it. */
export const canalRowAtStart = (canal: string, standing: CanalStanding = { state: "notFound" }): CanalRow => ({
  ...{ canal, state: standing.state, patency: "notTried", reference: "" },
  ...(standing.state === "blocked" ? { blockedBy: standing.with } : {}),
});

/** The bodies of moments that are added by hand, by kind: nothing is said before the person says it. */
export const newBodies = {
  medicalHistory: (takenOn: string): BodyOf<"medicalHistory"> => ({
    ...{ takenOn, nothingToNote: false, flags: [], medicines: [], note: "" },
  }),
  findings: (takenOn: string, tooth: string): BodyOf<"findings"> => ({
    takenOn,
    history: {
      ...{ spontaneousPain: "notAsked", painToCold: "notAsked", painToHeat: "notAsked", relievedByCold: "notAsked" },
      ...{ painOnBiting: "notAsked", trauma: "notAsked", recentOnset: "notAsked" },
    },
    teeth: [emptyTestedTooth(tooth, "tooth")],
    seen: {
      ...{ swelling: "notDone", sinusTract: "notDone", caries: "notDone", crack: "notDone" },
      ...{ restoration: "", fever: "notAsked" },
    },
    onFilm: {
      ...{ ligament: "notDone", lamina: "notDone", lucency: "notDone", sclerosis: "notAsked", resorption: "notDone" },
      ...{ apex: "notDone", calcified: "notAsked", earlierFilling: "notDone" },
    },
    note: "",
  }),
  diagnosis: (madeOn: string): BodyOf<"diagnosis"> => ({
    ...{ madeOn, taxonomy: "consensus2009", pulpal: "notDetermined", apical: "notDetermined", because: "" },
  }),
  plan: (madeOn: string): BodyOf<"plan"> => ({ madeOn, options: [], chosen: "watch", because: "", risksNamed: [] }),
  consent: (on: string): BodyOf<"consent"> => ({
    ...{ on, to: "", explainedBy: "resident", answeredBy: "patient", answer: "undecided", capacity: "has" },
    ...{ imagesFor: [], note: "" },
  }),
  visit: (on: string, canals: Readonly<Record<string, CanalStanding>>, clinic?: ClinicRules): BodyOf<"visit"> => ({
    ...{ on, aim: "", holdPoints: [], timeOut: "notDone", historyConfirmed: false },
    ...(clinic === undefined ? {} : { clinic }),
    isolation: { rubberDam: "notRecorded" },
    magnification: "notRecorded",
    anaesthetic: [],
    canals: Object.entries(canals).map(([canal, standing]) => canalRowAtStart(canal, standing)),
    ...{
      irrigation: [],
      instruments: [],
      solvent: [],
      lots: [],
      films: [],
      flareUp: "notRecorded",
      told: "",
      note: "",
    },
  }),
  mishap: (on: string): BodyOf<"mishap"> => ({
    ...{
      on,
      what: "other",
      third: "notRecorded",
      bend: "notRecorded",
      handled: "open",
      toldPatient: "notYet",
      story: "",
    },
  }),
  removal: (on: string, mishap: string): BodyOf<"removal"> => ({ ...{ mishap, on }, attempts: [] }),
  handback: (on: string): BodyOf<"handback"> => ({
    ...{ on, restoreWith: "", orificesMarkedBy: "", warnings: "", prognosis: "" },
  }),
  recall: (on: string): BodyOf<"recall"> => ({
    ...{ on, retained: "retained", functional: "notAsked", symptoms: "unknown", percussion: "notDone" },
    ...{ palpation: "notDone", sinusTract: "notDone", swelling: "notDone", mobility: "notDone" },
    ...{ restoration: "notRecorded", onFilm: "notTaken", imaging: "none", readings: [], note: "" },
  }),
  review: (on: string): BodyOf<"review"> => ({ on, by: "supervisor", says: "", signed: false, answer: "" }),
} as const;
