import { z } from "zod";
import type { FilmScale } from "../core/radiograph/length-on-film.ts";
import type { BindingContext } from "./binding.ts";

const scaleOutput = z.object({
  mmPerPx: z.object({ column: z.number(), row: z.number() }),
  relativeSigma: z.number().optional(),
});

/** A film's scale as the ledger holds it, with the entry it stands in; undefined where the film has none. */
export function filmScale(
  context: BindingContext,
  film: string,
): (Omit<FilmScale, "sigmaPx"> & { entryId: string }) | undefined {
  const found = context.earlier(`calibrate of ${film}`);
  if (found === undefined) return undefined;
  return { ...scaleOutput.parse(found.output), entryId: found.entryId };
}
