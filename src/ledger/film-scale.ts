import { z } from "zod";
import type { FilmScale } from "../core/radiograph/length-on-film.ts";
import type { BindingContext } from "./binding.ts";

const scaleOutput = z.object({
  mmPerPx: z.object({ column: z.number(), row: z.number() }),
  relativeSigma: z.number().optional(),
  used: z.string(),
});

/** A film's scale, the entry that it stands in, and which of the scales on offer it is. */
export type FilmScaleFound = Omit<FilmScale, "sigmaPx"> & { readonly entryId: string; readonly used: string };

/** A film's scale as the ledger holds it, with the entry it stands in; undefined where the film has none. */
export function filmScale(context: BindingContext, film: string): FilmScaleFound | undefined {
  const found = context.earlier(`calibrate of ${film}`);
  if (found === undefined) return undefined;
  return { ...scaleOutput.parse(found.output), entryId: found.entryId };
}
