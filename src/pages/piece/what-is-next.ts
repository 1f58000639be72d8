import { consentWords } from "../consent/consent-words.ts";
import { type Line, type Page, says } from "../page-model.ts";
import type { PieceCase } from "./piece-case.ts";
import { pieceWords, resultPlainly } from "./piece-words.ts";

const page = (title: string, lines: readonly Line[]): Page => ({
  ...{ title, on: "", notes: [] },
  blocks: [{ kind: "text", points: true, lines }],
});

/** What nobody can tell the patient. */
export const whatIsUnknown = ({ removal }: PieceCase): Page =>
  page(
    pieceWords.unknown,
    [
      ...(removal.result === undefined ? [pieceWords.outOrNot] : []),
      ...(removal.result?.is === "removed" || removal.result?.is === "extraction" ? [] : [pieceWords.germs]),
      ...(removal.result?.is === "extraction" ? [] : [pieceWords.longRun]),
    ].map(says),
  );

/** What was tried and what came of it, once it is over; none before. */
export function whatWasDone({ removal: { result, attempts } }: PieceCase): Page[] {
  if (result === undefined) return [];
  const tried = attempts.length === 0 ? [] : [`${pieceWords.triedInAll} ${attempts.length}.`];
  return [page(pieceWords.done, [...tried, resultPlainly[result.is]].map(says))];
}

/** What was tried so far, where we stop, and what follows; of what is over, only what follows. */
export function whatIsNext({ removal }: PieceCase): Page {
  const { result, attempts, stopRules } = removal;
  const tried = attempts.length === 0 ? [] : [`${pieceWords.tried} ${attempts.length}.`];
  const minutes = stopRules?.minutes;
  const open = [
    ...tried,
    pieceWords.choose,
    ...(stopRules === undefined ? [] : [pieceWords.stop]),
    ...(minutes === undefined ? [] : [`${pieceWords.stopAfter} ${minutes} ${pieceWords.minutes}.`]),
  ];
  const lines = result === undefined ? open : [];
  const later = result?.is === "extraction" ? [] : [pieceWords.again];
  return page(pieceWords.next, [...lines, ...later, consentWords.callUs].map(says));
}
