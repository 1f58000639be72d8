import type { Part } from "../../../../record/parts.ts";
import { type Piece, piecesOf } from "../../../../record/pieces.ts";
import { removalResultWords } from "../../../../record/words/removal-words.ts";
import type { StandingPage } from "../spine/spine.tsx";

/** The address of a piece's page: that of its removal, or of the place where it is begun. */
export const removalPageOf = ({ mishap, removal }: Piece): string => removal?.id ?? `weigh-${mishap?.id ?? ""}`;

/** The piece that an address names. */
export const pieceAt = (named: string, parts: readonly Part[]): Piece | undefined =>
  piecesOf(parts).find((piece) => removalPageOf(piece) === named);

/** A line beside the spine for every piece of an instrument in the tooth. */
export function removalStandingPages(parts: readonly Part[]): readonly StandingPage[] {
  const pieces = piecesOf(parts);
  return pieces.map((piece) => {
    const canal = pieces.length > 1 ? piece.mishap?.body.canal : undefined;
    const title = canal === undefined ? "Removal weighed" : `Removal weighed, ${canal}`;
    return { id: removalPageOf(piece), title, ...lineOf(piece) };
  });
}

function lineOf({ mishap, removal }: Piece): Pick<StandingPage, "line" | "look"> {
  if (removal === undefined)
    return mishap?.body.handled === "open"
      ? { line: "? the piece is there, nothing weighed", look: true }
      : { line: "not weighed" };
  const { result, running, attempts } = removal.body;
  if (running !== undefined) return { line: "◇ the clock runs", look: true };
  if (result !== undefined) return { line: removalResultWords[result.is] };
  return { line: attempts.length === 0 ? "take it out, pass it, leave it" : `attempts: ${attempts.length}` };
}
