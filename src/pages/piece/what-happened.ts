import { inOneLine } from "../consent/consent-case.ts";
import { type Block, type Line, type Page, says } from "../page-model.ts";
import type { PieceCase } from "./piece-case.ts";
import { cleanWords, pieceWords, seenWords, whereWords } from "./piece-words.ts";

/** How the piece came there, where it sits, and what counts. */
export function whatHappened({ mishap, weighed }: PieceCase): Page {
  const separated = mishap?.separated;
  const third = weighed?.told.place.third ?? (mishap?.third === "notRecorded" ? undefined : mishap?.third);
  const place: Line[] = [
    ...(third === undefined ? [] : [says(whereWords[third])]),
    ...(separated === undefined || separated.headSeen === "notLooked" ? [] : [says(seenWords[separated.headSeen])]),
    ...(separated === undefined || separated.stage === "notRecorded" ? [] : [says(cleanWords[separated.stage])]),
    says(pieceWords.counts),
  ];
  const lines = [inOneLine([says(pieceWords.broke), says(pieceWords.happens)]), inOneLine(place)];
  const blocks: Block[] = [{ kind: "text", lines }];
  return { title: pieceWords.happened, on: "", blocks, notes: [] };
}
