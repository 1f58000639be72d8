import { z } from "zod";
import { intervalSchema } from "../core/basis.ts";
import { reach95 } from "../core/radiograph/interval-around.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type Part, partsOf } from "../record/parts.ts";
import { marksOn } from "./marks-on.ts";

/** A piece as it was measured on a film. */
export interface FragmentOnFilm {
  readonly mark: string;
  readonly takenOn: string;
  readonly canal: string | undefined;
  /** Along the piece, in mm to a hundredth; a film may show less than there is. */
  readonly lengthMm: number;
  /** Its standard deviation by the click error and the scale's; absent where neither is known. */
  readonly sigmaMm: number | undefined;
}

const measured = z.looseObject({
  lengthMm: z.number(),
  intervals: z.looseObject({ lengthMm: intervalSchema.optional() }),
});

/**
 * The pieces that are drawn on the films of a case, with their lengths as the ledger gives them, the latest film first.
 * Takes the parts and entries of one case.
 * Gives none for a film without a scale.
 */
export function fragmentsOnFilms(parts: readonly Part[], ledger: readonly LedgerEntry[]): FragmentOnFilm[] {
  const films = partsOf(parts, "film").sort((a, b) => (a.body.takenOn < b.body.takenOn ? 1 : -1));
  return films.flatMap((film) =>
    marksOn(parts, film.id, "fragment").flatMap(({ id, body }) => {
      const entry = ledger.find(({ subject }) => subject === `fragmentOnFilm of ${id}`);
      const told = measured.safeParse(entry?.output).data;
      if (told === undefined) return [];
      const { takenOn } = film.body;
      return [{ mark: id, takenOn, canal: body.canal, lengthMm: hundredths(told.lengthMm), sigmaMm: sigmaOf(told) }];
    }),
  );
}

function sigmaOf({ intervals: { lengthMm } }: z.infer<typeof measured>): number | undefined {
  if (lengthMm === undefined) return undefined;
  const sigma = (lengthMm.high - lengthMm.low) / (2 * reach95);
  // Below a hundredth nothing is read on a film; the record takes no error of 0.
  return Math.max(0.01, hundredths(sigma));
}

const hundredths = (mm: number): number => Math.round(mm * 100) / 100;
