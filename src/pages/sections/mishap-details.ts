import { teeth } from "../../core/tooth/teeth.ts";
import type { BodyOf } from "../../record/parts.ts";
import { seenYesNoWords } from "../../record/words/finding-words.ts";
import {
  blockedByWords,
  breakSignWords,
  damWords,
  extrusionSignWords,
  foundObjectWords,
  headSeenWords,
  knownWords,
  ledgeWallWords,
  missedTreatedWords,
  nearWords,
  needleWords,
  objectSignWords,
  passedWords,
  perforationPlaceWords,
  sideOfToothWords,
  stageWords,
  transportationWords,
  wentWords,
  wrongDoneWords,
} from "../../record/words/mishap-words.ts";
import type { CaseSource } from "../case-source.ts";

type Mishap = BodyOf<"mishap">;
type Notation = CaseSource["notation"];
/** A name with what was said of it; nothing where nothing was. */
type Said = readonly [name: string, says: string | undefined];

/**
 * What the record of the mishap's kind says, each as `Wall: outer wall of the bend`; what was not said is left out. A tooth
 * is written in the notation that is asked for.
 */
export function mishapDetailWords(mishap: Mishap, notation: Notation): readonly string[] {
  const said: readonly Said[] = ofKind[mishap.what]?.(mishap, notation) ?? [];
  return said.flatMap(([name, says]) =>
    says === undefined || says === "" || isUnsaid(says) ? [] : [`${name}: ${says}`],
  );
}

/** Answers that say nothing yet. */
const isUnsaid = (says: string): boolean => ["not known", "not looked at", "not recorded", "not looked"].includes(says);

const mm = (value: number | undefined): string | undefined => (value === undefined ? undefined : `${value} mm`);
const list = <Value extends string>(values: readonly Value[] = [], words: Readonly<Record<Value, string>>): string =>
  values.map((value) => words[value]).join(", ");
const word = <Value extends string>(value: Value | undefined, words: Readonly<Record<Value, string>>) =>
  value === undefined ? undefined : words[value];

const ofKind: Partial<Readonly<Record<Mishap["what"], (mishap: Mishap, notation: Notation) => readonly Said[]>>> = {
  separatedInstrument: ({ separated: one }) => [
    ["Signs", list(one?.signs, breakSignWords)],
    ["Tip bound", word(one?.tipBound, knownWords)],
    ["Stopped at the torque limit", word(one?.stoppedAtTorqueLimit, knownWords)],
    ["Head", word(one?.headSeen, headSeenWords)],
    ["Canal at the break", word(one?.stage, stageWords)],
  ],
  ledge: ({ ledge: one }) => [
    ["Depth", mm(one?.depthMm)],
    ["Wall", word(one?.wall, ledgeWallWords)],
    ["Passed", word(one?.passed, passedWords)],
  ],
  perforation: ({ perforation: one }) => [
    ["Place", word(one?.place, perforationPlaceWords)],
    ["Side", word(one?.side, sideOfToothWords)],
    ["Width", mm(one?.diameterMm)],
    ["Height", overBone(one?.aboveBoneMm)],
    ["Bleeding", word(one?.bleeding, seenYesNoWords)],
    ["Pocket reaches it", word(one?.pocket, seenYesNoWords)],
    ["Sealed", sealed(one)],
  ],
  block: ({ block: one }) => [
    ["Blocked by", word(one?.by, blockedByWords)],
    ["Depth", mm(one?.depthMm)],
    ["Passed", word(one?.passed, passedWords)],
  ],
  transportation: ({ transportation: one }) => [
    ["Form", word(one?.form, transportationWords)],
    ["Size there", one?.sizeThere === undefined ? undefined : String(one.sizeThere)],
    ["Seen on", one?.seenOn],
  ],
  irrigantExtrusion: ({ irrigantExtrusion: one }) => [
    ["Solution", solutionOf(one)],
    ["Needle", word(one?.needle, needleWords)],
    ["Depth of the needle from its stop", mm(one?.needleFromStopMm)],
    ["Needle bound", word(one?.needleBound, knownWords)],
    ["Pain", one?.pain === undefined ? undefined : `${one.pain} of 10`],
    ["Swelling and bruising go as far as", one?.spread],
    ["Signs", list(one?.signs, extrusionSignWords)],
    ["Sent to", one?.sentTo],
  ],
  fillingExtrusion: ({ fillingExtrusion: one }) => [
    ["Material", one?.material],
    ["Beyond the apex", mm(one?.beyondMm)],
    ["Near", word(one?.near, nearWords)],
    ["Numbness or burning", word(one?.numbness, seenYesNoWords)],
    ["Sent to", one?.sentTo],
  ],
  missedCanal: ({ on, missedCanal: one }) => [
    ["Canal", one?.found],
    ["Found by", one?.foundBy],
    ["May have been left since", one?.since === undefined ? undefined : timeBefore(one.since, on)],
    ["Treated", word(one?.treated, missedTreatedWords)],
  ],
  wrongTooth: ({ wrongTooth: one }, notation) => [
    ["Worked on", toothIn(notation, one?.tooth)],
    ["How far", word(one?.done, wrongDoneWords)],
    ["Noticed by", one?.noticedBy],
    ["Done for it", one?.restored],
  ],
  swallowedOrInhaled: ({ swallowedOrInhaled: one }) => [
    ["Object", one?.object],
    ["Counted out and in", one?.counted],
    ["It was", word(one?.went, wentWords)],
    ["Signs", list(one?.signs, objectSignWords)],
    ["Rubber dam", word(one?.rubberDam, damWords)],
    ["Found", word(one?.found, foundObjectWords)],
    ["Sent to", one?.sentTo],
  ],
};

const toothIn = (notation: Notation, tooth: string | undefined): string | undefined =>
  teeth.find(({ twoDigit }) => twoDigit === tooth)?.[notation] ?? tooth;

/** Where it lies by the bone's edge, with how far. */
function overBone(height: number | undefined): string | undefined {
  if (height === undefined) return undefined;
  if (height === 0) return "at the bone's edge";
  return `${Math.abs(height)} mm ${height > 0 ? "above" : "below"} the bone's edge`;
}

const dayMs = 86_400_000;
const daysInMonth = 30.4375;

/** How long before a day another was: no calendar date stands in a document. */
function timeBefore(since: string, on: string): string {
  const days = Math.round((Date.parse(on) - Date.parse(since)) / dayMs);
  return days < 60 ? `${days} days before` : `${Math.round(days / daysInMonth)} months before`;
}

function sealed(one: Mishap["perforation"]): string | undefined {
  const after = one?.sealedAfterMin === undefined ? undefined : `after ${one.sealedAfterMin} min`;
  const how = one?.sealedWith === undefined || one.sealedWith === "" ? undefined : `with ${one.sealedWith}`;
  const said = [after, how].filter((part) => part !== undefined);
  return said.length === 0 ? undefined : said.join(", ");
}

function solutionOf(one: Mishap["irrigantExtrusion"]): string | undefined {
  if (one === undefined || one.solution === "") return undefined;
  const strength = one.percent === undefined ? undefined : `${one.percent} %`;
  const volume = one.volumeMl === undefined ? undefined : `${one.volumeMl} ml`;
  return [one.solution, strength, volume].filter((part) => part !== undefined).join(", ");
}
