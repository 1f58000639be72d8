import { Refusal } from "../core/refusal.ts";
import { removalSubject, removalTold } from "../ledger/removal-told.ts";
import { thePart } from "../record/parts.ts";
import { piecesOf } from "../record/pieces.ts";
import type { CaseSource } from "./case-source.ts";
import { whichTooth } from "./consent/about-tooth.ts";
import { questions } from "./consent/around-the-choice.ts";
import { consentWords } from "./consent/consent-words.ts";
import { ledgerReader } from "./ledger-reader.ts";
import { type Page, type PageModel, says } from "./page-model.ts";
import type { PieceCase } from "./piece/piece-case.ts";
import { pieceWords } from "./piece/piece-words.ts";
import { sourcesOfPiece } from "./piece/sources-of-piece.ts";
import { waysDrawn, waysOfPiece } from "./piece/ways-of-piece.ts";
import { whatHappened } from "./piece/what-happened.ts";
import { whatIsNext, whatIsUnknown, whatWasDone } from "./piece/what-is-next.ts";

/**
 * What the patient is told of a piece of an instrument in the tooth: what happened, every way with how it went for others,
 * what nobody knows, what comes next, and room for questions; in plain words, in large print, with no name stored.
 * @throws Refusal `input.notDeterminable` where no removal of a piece is weighed
 */
export function pieceSheet(source: CaseSource): PageModel {
  const of = pieceCase(source);
  const { demo, pseudonym } = of.about;
  return {
    as: "piece",
    title: pieceWords.title,
    mark: demo ? `${pseudonym} · Demo: invented` : pseudonym,
    demo,
    pages: [
      ...[tooth(of), whatHappened(of), ...whatWasDone(of), waysOfPiece(of), ...waysDrawn(of)],
      ...[whatIsUnknown(of), whatIsNext(of), questions(), sourcesOfPiece(of)],
    ],
  };
}

const tooth = (of: PieceCase): Page => ({
  ...{ title: consentWords.tooth, on: "", notes: [] },
  blocks: [
    ...whichTooth(of),
    // Once it is over there is nothing left to choose.
    ...(of.removal.result === undefined ? [{ kind: "text" as const, lines: [says(consentWords.sheet)] }] : []),
  ],
});

/** The piece that was weighed last. */
function pieceCase(source: CaseSource): PieceCase {
  const about = thePart(source.parts, "case")?.body;
  const [last] = piecesOf(source.parts)
    .flatMap(({ mishap, removal }) => (removal === undefined ? [] : [{ mishap, removal }]))
    .sort((a, b) => (a.removal.body.on < b.removal.body.on ? 1 : -1));
  if (about === undefined || last === undefined)
    throw new Refusal(
      "input.notDeterminable",
      "Cannot make the page about the piece: no removal is weighed; open the mishap and weigh it first",
    );
  const read = ledgerReader(source.ledger);
  const entry = read.entry(removalSubject(last.removal.id));
  const told = removalTold(entry);
  return {
    ...{ source, about, read, removal: last.removal.body, mishap: last.mishap?.body },
    weighed: told === undefined || entry === undefined ? undefined : { told, entryId: entry.id },
  };
}
