import { z } from "zod";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";

const guide = z.looseObject({
  candidates: z.array(
    z.looseObject({ horizontalAngleDeg: z.number(), outOfFilmHalfWidthDeg: z.number(), settles: z.boolean() }),
  ),
  recommended: z
    .looseObject({ horizontalAngleDeg: z.number(), alsoDeg: z.number().optional(), why: z.string() })
    .optional(),
  separation: z
    .array(z.looseObject({ canals: z.string(), atLeastPercent: z.number(), angleDeg: z.number(), source: z.string() }))
    .default([]),
  overlap: z
    .array(z.looseObject({ what: z.string(), towards: z.enum(["mesial", "distal"]), fromDeg: z.number() }))
    .default([]),
});

/** Which film would settle a canal's course, as an entry of the ledger holds it. */
export type Guide = z.infer<typeof guide>;

const input = z.looseObject({
  views: z.array(z.looseObject({ horizontalAngleDeg: z.number().optional() })),
  wanted: z.looseObject({ outOfFilmDeg: z.number() }).optional(),
});

/** The entry that guides the next exposure of a canal; of several, the last that stands. */
export function guideOf(ledger: readonly LedgerEntry[], canal: string): LedgerEntry | undefined {
  const about = ledger.filter(
    ({ topic, subject }) => topic === "tubeShift" && subject.startsWith(`tubeShift of ${canal} `),
  );
  return about.findLast(({ refused }) => refused === undefined) ?? about.at(-1);
}

/** See {@link Guide}; undefined for an entry that refused. */
export const guideRead = (entry: LedgerEntry | undefined): Guide | undefined => guide.safeParse(entry?.output).data;

/** The angles of the films that a guide was worked out from. */
export const anglesAtHand = (entry: Pick<LedgerEntry, "input">): readonly number[] =>
  (input.safeParse(entry.input).data?.views ?? []).flatMap(({ horizontalAngleDeg }) => horizontalAngleDeg ?? []);

/** The size of a bend out of the film that the guide looks for, in degrees. */
export const wantedDeg = (entry: Pick<LedgerEntry, "input">): number | undefined =>
  input.safeParse(entry.input).data?.wanted?.outOfFilmDeg;

const kinds: readonly (readonly [RegExp, RegExp])[] = [
  [/lower molar/, /^[34][678]$/],
  [/upper first premolar/, /^[12]4$/],
];

/** Whether a published finding, by the words that name its teeth, is about a tooth. */
export const isAbout = (words: string, tooth: string): boolean =>
  kinds.some(([named, teeth]) => named.test(words) && teeth.test(tooth));
