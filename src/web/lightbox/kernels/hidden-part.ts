import { z } from "zod";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";

const side = z.enum(["buccal", "lingual", "mixed", "undetermined"]);
const told = z.looseObject({
  side,
  liesSide: side.exclude(["mixed"]).optional(),
  anglesDeg: z.array(z.number()).default([]),
});

/** What two films tell of a canal beyond what each shows. */
export type ToldByTwoFilms = z.infer<typeof told>;

/** The entry about a canal in space; of several, the last that stands. */
export function twoViewOf(ledger: readonly LedgerEntry[], canal: string): LedgerEntry | undefined {
  const about = ledger.filter(
    ({ topic, subject }) => topic === "twoView" && subject.startsWith(`twoView of ${canal} `),
  );
  return about.findLast(({ refused }) => refused === undefined) ?? about.at(-1);
}

/** See {@link ToldByTwoFilms}; undefined for an entry that refused. */
export const toldByTwoFilms = (entry: LedgerEntry | undefined): ToldByTwoFilms | undefined =>
  told.safeParse(entry?.output).data;
