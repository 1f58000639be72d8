import { z } from "zod";
import { intervalSchema } from "../../../core/basis.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import type { Part } from "../../../record/parts.ts";
import { lowered } from "../../words/capital.ts";
import type { FilmOutline } from "./comparison.ts";

const place = z.tuple([z.number(), z.number()]);
const outline = z.array(place);
const row = z.tuple([z.number(), z.number(), z.number()]);
const output = z.looseObject({
  transform: z.tuple([row, row, row]),
  comparable: z.boolean(),
  statement: z.string(),
  areaRatio: z.number().optional(),
  intervals: z.record(z.string(), intervalSchema),
  differenceSigma: z.number().optional(),
  carried: z.object({ beforeOnAfter: outline.optional(), afterOnBefore: outline.optional() }),
  others: z.array(
    z.looseObject({
      name: z.string(),
      areaRatio: z.number().optional(),
      interval: intervalSchema.optional(),
      afterOnBefore: outline.optional(),
    }),
  ),
});

/** What a comparison came to, as the ledger holds it. */
export type ComparisonRead = z.infer<typeof output>;

/** The entry of a comparison, whether it was computed or not. */
export const entryOfComparison = (ledger: readonly LedgerEntry[], partId: string): LedgerEntry | undefined =>
  ledger.find(({ topic, subject }) => topic === "compareFilms" && subject === `compareFilms of ${partId}`);

/** What an entry says; undefined where it refused or waits. */
export const readComparison = (entry: LedgerEntry | undefined): ComparisonRead | undefined =>
  output.safeParse(entry?.output).data;

/** The lesions on the first film: their own outlines there, and those of the second film where they fall on it. */
export function outlinesOnFirst(
  entry: LedgerEntry | undefined,
  parts: readonly Part[],
): { readonly before: readonly FilmOutline[]; readonly after: readonly FilmOutline[] } {
  const read = readComparison(entry);
  if (entry === undefined || read === undefined) return { before: [], after: [] };
  const marks = entry.inputPaths.flatMap(({ input, record }) =>
    input.endsWith(".before") ? (parts.find(({ id }) => `${id}/points` === record) ?? []) : [],
  );
  const before = marks.flatMap((mark) =>
    mark.kind === "mark" && mark.body.shape === "outline" ? [mark.body.points] : [],
  );
  const after = [read.carried.afterOnBefore, ...read.others.map((one) => one.afterOnBefore)];
  return { before, after: after.flatMap((one) => (one === undefined ? [] : [one])) };
}

/** Outlines of the first film where the films' transform takes them on the second. */
export const carriedToSecond = (
  outlines: readonly FilmOutline[],
  [across, down, depth]: ComparisonRead["transform"],
): FilmOutline[] =>
  outlines.map((outline) =>
    outline.map(([u, v]): readonly [number, number] => {
      const along = ([a, b, c]: readonly [number, number, number]): number => a * u + b * v + c;
      return [along(across) / along(depth), along(down) / along(depth)];
    }),
  );

/** What the lesion of an entry is called by whoever outlined it; "the lesion" where nobody named it. */
export function lesionName(entry: LedgerEntry, parts: readonly Part[]): string {
  const record = entry.inputPaths.find(({ input }) => input === "lesions.before")?.record;
  const mark = parts.find(({ id }) => `${id}/points` === record);
  const what = mark?.kind === "mark" && mark.body.shape === "outline" ? mark.body.what : "";
  return what === "" ? "the lesion" : `the ${lowered(what)}`;
}
