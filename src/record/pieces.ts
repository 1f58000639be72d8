import { type Part, type PartOf, partsOf } from "./parts.ts";

/** A piece of an instrument in the tooth: the mishap that left it there and the weighing of its removal, once begun. */
export interface Piece {
  readonly mishap: PartOf<"mishap"> | undefined;
  readonly removal: PartOf<"removal"> | undefined;
}

/**
 * Every separated instrument of a case in the order of their days, with its removal; a removal whose mishap was taken out
 * stands last.
 * Takes the parts of one case.
 * Gives one piece for each separated instrument; a mishap of another kind is one only where its removal was begun.
 */
export function piecesOf(parts: readonly Part[]): readonly Piece[] {
  const removals = partsOf(parts, "removal");
  const mishaps = partsOf(parts, "mishap").sort((a, b) => (a.body.on < b.body.on ? -1 : a.body.on > b.body.on ? 1 : 0));
  const ofMishap = mishaps.flatMap((mishap): Piece[] => {
    const own = removals.filter(({ body }) => body.mishap === mishap.id);
    if (own.length > 0) return own.map((removal) => ({ mishap, removal }));
    return mishap.body.what === "separatedInstrument" ? [{ mishap, removal: undefined }] : [];
  });
  const left = removals.filter(({ body }) => !mishaps.some(({ id }) => id === body.mishap));
  return [...ofMishap, ...left.map((removal) => ({ mishap: undefined, removal }))];
}
