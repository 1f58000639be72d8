import { canalStatesOn } from "./canal-states.ts";
import { inOrder } from "./in-order.ts";
import { type Part, type PartOf, partsOf } from "./parts.ts";
import { piecesOf } from "./pieces.ts";
import { bendWords, mishapWords, thirdWords } from "./words/later-words.ts";
import { blockedByWords, perforationPlaceWords } from "./words/mishap-words.ts";

/** Something in the record that whoever enters the tooth again would want to know, as a sentence to take or to leave. */
export interface ReentryWarning {
  readonly id: string;
  readonly says: string;
}

/**
 * What the record offers as warnings for a later re-entry.
 * Takes the parts of a case. Gives sentences in the order of pieces, other mishaps, canals, then what stays in the tooth; none
 * of them is in a letter before a person takes it.
 */
export const reentryWarnings = (parts: readonly Part[]): readonly ReentryWarning[] => [
  ...pieces(parts),
  ...inOrder(partsOf(parts, "mishap")).flatMap(ofMishap),
  ...canals(parts),
  ...stays(parts),
];

const joined = (pieces: readonly (string | undefined | false)[], by = ", "): string =>
  pieces.filter((piece) => piece !== undefined && piece !== false && piece !== "").join(by);

/** `in MB1, apical third, beyond the bend`; of what is not told, nothing. */
function whereIn({ canal, third, bend }: PartOf<"mishap">["body"]): string {
  const place = joined([
    canal,
    third !== "notRecorded" && thirdWords[third],
    bend !== "notRecorded" && bend !== "none" && bendWords[bend],
  ]);
  return place === "" ? "in the root" : `in ${place}`;
}

/** Pieces of instruments that are still there, by what came of them last. */
function pieces(parts: readonly Part[]): ReentryWarning[] {
  return piecesOf(parts).flatMap(({ mishap, removal }) => {
    const came = removal?.body.result?.is ?? mishap?.body.handled;
    if (mishap === undefined || came === undefined || isGone.has(came)) return [];
    const long = mishap.body.fragmentMm === undefined ? "" : `, ${mishap.body.fragmentMm} mm long,`;
    const says = `A piece of an instrument${long} stays ${whereIn(mishap.body)}; ${leftAs[came] ?? "what came of it is not recorded"}.`;
    return [{ id: `${mishap.id} piece`, says }];
  });
}

const isGone: ReadonlySet<string> = new Set(["removed", "extraction"]);
const leftAs: Readonly<Record<string, string>> = {
  bypassed: "it was bypassed",
  left: "it was left",
  surgery: "apical surgery is meant to follow",
  referred: "the patient was referred for it",
  open: "nothing is settled about it yet",
};

function ofMishap({ id, body }: PartOf<"mishap">): ReentryWarning[] {
  const says = {
    perforation: () => perforation(body),
    ledge: () => obstacle(body, body.ledge?.passed, `a ledge${depth(body.ledge?.depthMm)}`),
    block: () => block(body),
    transportation: () => `The canal's course was changed ${whereIn(body)} (${mishapWords.transportation}).`,
    fillingExtrusion: () => extrusion(body),
    missedCanal: () => missed(body),
    ...{ separatedInstrument: undefined, irrigantExtrusion: undefined, wrongTooth: undefined },
    ...{ swallowedOrInhaled: undefined, other: undefined },
  }[body.what]?.();
  return says === undefined ? [] : [{ id: `${id} ${body.what}`, says }];
}

type Mishap = PartOf<"mishap">["body"];

const depth = (mm: number | undefined): string => (mm === undefined ? "" : ` at ${mm} mm`);

function perforation(body: Mishap): string {
  const { place, sealedWith } = body.perforation ?? {};
  const where = place === undefined ? whereIn(body) : `(${perforationPlaceWords[place]})`;
  if (body.handled !== "repaired") return `A perforation ${where} is not recorded as repaired.`;
  return `A perforation ${where} was repaired${sealedWith === undefined || sealedWith === "" ? "" : ` with ${sealedWith}`}.`;
}

const blockOf = ({ block }: Mishap): string =>
  block === undefined || block.by === "notKnown"
    ? `a block${depth(block?.depthMm)}`
    : `a block of ${blockedByWords[block.by]}${depth(block.depthMm)}`;

/** A ledge stays where it was passed; a block that was passed is gone. */
function obstacle(body: Mishap, passed: string | undefined, what: string): string {
  const told = passed === "passed" || body.handled === "bypassed" ? "it was passed" : passedWords[passed ?? ""];
  return `There is ${what} ${whereIn(body)}; ${told ?? "whether it was passed is not recorded"}.`;
}

const passedWords: Readonly<Record<string, string>> = {
  notPassed: "it was not passed",
  notTried: "nobody tried to pass it",
};

const block = (body: Mishap): string | undefined =>
  body.block?.passed === "passed" || body.handled === "removed" || body.handled === "bypassed"
    ? undefined
    : obstacle(body, body.block?.passed, blockOf(body));

function extrusion({ fillingExtrusion, canal }: Mishap): string {
  const { material = "", beyondMm } = fillingExtrusion ?? {};
  const far = beyondMm === undefined ? "" : `, ${beyondMm} mm beyond it`;
  return `${material === "" ? "Filling material" : `Filling material (${material})`} lies outside the foramen${canal === undefined ? "" : ` of ${canal}`}${far}.`;
}

function missed({ missedCanal }: Mishap): string | undefined {
  if (missedCanal?.treated === "treated") return undefined;
  return `A canal${missedCanal?.found === undefined ? "" : `, ${missedCanal.found},`} was missed before and is not treated.`;
}

/** Canals that were not reached or not found when the record ends. */
const canals = (parts: readonly Part[]): ReentryWarning[] =>
  Object.entries(canalStatesOn(parts)).flatMap(([canal, standing]) => {
    if (standing.state === "blocked") return [{ id: `canal ${canal}`, says: `${canal} is blocked: ${standing.with}.` }];
    if (standing.state === "notFound" && standing.looked !== false)
      return [{ id: `canal ${canal}`, says: `${canal} was not found.` }];
    return [];
  });

/** What the next dentist meets on the way in. */
function stays(parts: readonly Part[]): ReentryWarning[] {
  const visits = inOrder(partsOf(parts, "visit"));
  const last = <Key extends "orificeBarrier" | "buildUp">(key: Key) =>
    visits.map(({ body }) => body[key] ?? "").findLast((words) => words !== "");
  const [barrier, buildUp] = [last("orificeBarrier"), last("buildUp")];
  const hadPost = partsOf(parts, "findings").some(({ body }) => body.seen.post === "yes");
  return [
    ...(hadPost ? [{ id: "post", says: "A post was met at the examination; see whether it is still there." }] : []),
    ...(barrier === undefined
      ? []
      : [
          {
            id: "barrier",
            says: `Over the orifices lies a barrier: ${barrier}. Whether a solvent takes it is not recorded.`,
          },
        ]),
    ...(buildUp === undefined ? [] : [{ id: "buildUp", says: `The access is closed with a build-up: ${buildUp}.` }]),
  ];
}
