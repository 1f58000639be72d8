import { instrumentName } from "../instrument-name.ts";
import type { BodyOf } from "../parts.ts";
import {
  agentWords,
  holdPointWords,
  medicamentWords,
  rubberDamWords,
  seenByWords,
  solutionWords,
  solventWords,
} from "../words/visit-words.ts";
import { stepStanding } from "./visit-steps.ts";

type Visit = BodyOf<"visit">;
type Irrigant = Visit["irrigation"][number];

/** Something of a visit at a minute, or from one to another. */
export interface TimelineMark {
  readonly fromMin: number;
  readonly toMin?: number;
  readonly says: string;
}

/** What is of one sort, in the order of its minutes. */
export interface TimelineLane {
  readonly name: string;
  readonly marks: readonly TimelineMark[];
}

/** A visit by its minutes. */
export interface VisitTimeline {
  /** How long it took, as it is recorded; absent where it is not. */
  readonly minutes?: number;
  /** Only lanes that hold something. */
  readonly lanes: readonly TimelineLane[];
  /** What was noted without a minute, by sort. */
  readonly withoutMinute: readonly { readonly name: string; readonly says: readonly string[] }[];
}

interface Noted {
  readonly atMin?: number | undefined;
  readonly lastsMin?: number;
  readonly says: string;
}

/** A visit as it can be drawn over its minutes: what has no minute is kept apart and put at none. */
export function visitTimelineOf(visit: Visit): VisitTimeline {
  const sorts = sortsOf(visit);
  const lanes = sorts.map(({ name, noted }) => ({ name, marks: noted.flatMap(marksOf).sort(byMinute) }));
  const withoutMinute = sorts.map(({ name, noted }) => ({
    name,
    says: noted.flatMap(({ atMin, says }) => (atMin === undefined ? [says] : [])),
  }));
  return {
    ...(visit.minutes === undefined ? {} : { minutes: visit.minutes }),
    lanes: lanes.filter(({ marks }) => marks.length > 0),
    withoutMinute: withoutMinute.filter(({ says }) => says.length > 0),
  };
}

const marksOf = ({ atMin, lastsMin = 0, says }: Noted): TimelineMark[] =>
  atMin === undefined ? [] : [{ fromMin: atMin, ...(lastsMin > 0 ? { toMin: atMin + lastsMin } : {}), says }];
const byMinute = (a: TimelineMark, b: TimelineMark): number => a.fromMin - b.fromMin;

const sortsOf = (visit: Visit): readonly { readonly name: string; readonly noted: readonly Noted[] }[] => [
  { name: "Checks", noted: checksOf(visit) },
  { name: "Steps", noted: stepsOf(visit) },
  { name: "Anaesthetic", noted: injectionsOf(visit) },
  {
    name: "Irrigants",
    noted: visit.irrigation.map((row) => ({ atMin: row.atMin, lastsMin: row.minutes, says: irrigantSays(row) })),
  },
  { name: "Instruments", noted: visit.instruments.map((use) => ({ says: joined([use.canal, instrumentName(use)]) })) },
  { name: "Ultrasound", noted: burstsOf(visit) },
  {
    name: "Solvent",
    noted: visit.solvent.map(({ atMin, volumeMl, solvent, own }) => ({
      ...{ atMin, says: `${own?.name ?? solventWords[solvent]} ${volumeMl} ml` },
    })),
  },
  { name: "Left in the tooth", noted: leftOf(visit) },
  { name: "Notes", noted: (visit.log ?? []).map(({ atMin, says }) => ({ atMin, says })) },
];

const joined = (words: readonly (string | undefined)[]): string =>
  words.flatMap((word) => (word === undefined || word === "" ? [] : [word])).join(" ");

function checksOf({ timeOut, timeOutCheck, isolation, holdPoints }: Visit): Noted[] {
  const named =
    timeOutCheck && (timeOut === "toothAndSideChecked" ? "time-out" : `time-out: ${timeOutCheck.tooth} named`);
  const timeOuts = named === undefined ? [] : [{ atMin: timeOutCheck?.atMin, says: named }];
  const untold = timeOutCheck === undefined && timeOut === "toothAndSideChecked" ? [{ says: "time-out" }] : [];
  const dam = isolation.rubberDam === "notRecorded" ? [] : [{ says: rubberDamWords[isolation.rubberDam] }];
  const looks = holdPoints.map(({ at, seenBy, atMin }) => ({
    atMin,
    says: `${holdPointWords[at]}, ${seenByWords[seenBy]}`,
  }));
  return [...timeOuts, ...untold, ...dam, ...looks];
}

const stepsOf = ({ steps = [] }: Visit): Noted[] =>
  steps.flatMap((step) => (stepStanding(step) === "done" ? [{ atMin: step.doneAtMin, says: step.says }] : []));

const injectionsOf = ({ anaesthetic }: Visit): Noted[] =>
  anaesthetic.map(({ agent, percent, cartridges, cartridgeMl, atMin }) => ({
    ...{ atMin, says: `${agentWords[agent]} ${percent} %, ${cartridges} × ${cartridgeMl} ml` },
  }));

function irrigantSays({ solution, named, percent, volumeMl, minutes, canal, activated }: Irrigant): string {
  const what = solution === "other" ? (named ?? "other") : solutionWords[solution];
  const amount = [`${volumeMl} ml`, `${minutes} min`, ...(activated === "no" ? [] : ["activated"])].join(", ");
  return `${joined([canal, what, percent === undefined ? undefined : `${percent} %`])}, ${amount}`;
}

const burstsOf = ({ ultrasonics = [] }: Visit): Noted[] =>
  ultrasonics.map(({ atMin, canal, on, seconds, coolant }) => ({
    ...{ atMin, lastsMin: seconds / 60 },
    says: `${joined([canal, on])}, ${seconds} s, ${coolant === "none" ? "no coolant" : coolant}`,
  }));

function leftOf({ medicament, temporary, orificeBarrier = "", buildUp = "" }: Visit): Noted[] {
  const thick = temporary?.thicknessMm;
  return [
    ...(medicament === undefined ? [] : [{ says: joined([medicamentWords[medicament.kind], medicament.detail]) }]),
    ...(temporary === undefined
      ? []
      : [{ says: `${temporary.material}${thick === undefined ? "" : `, ${thick} mm`}` }]),
    ...[orificeBarrier, buildUp].flatMap((says) => (says === "" ? [] : [{ says }])),
  ];
}
