import { z } from "zod";
import { type Basis, basisSchema, type Interval, intervalSchema, notComputedSchema } from "../../../core/basis.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import type { MmPerPx } from "./pane-group.ts";

/** One number of a ledger entry with its interval, as it stands there. */
export interface LedgerNumber {
  readonly value: number;
  readonly interval?: Interval;
}

/** The entry of a topic about a subject. */
export const entryOf = (ledger: readonly LedgerEntry[], topic: string, about: string): LedgerEntry | undefined =>
  ledger.find((entry) => entry.topic === topic && entry.subject === `${topic} of ${about}`);

const numbers = z.looseObject({ intervals: z.record(z.string(), intervalSchema).optional() });

/** Numbers whose interval stands elsewhere than under their own name. */
const intervalPlaces: Readonly<Record<string, string>> = {
  "mmPerPx.column": "interval",
  radiographicMm: "interval",
  recommendedMm: "recommendedInterval",
};

/**
 * A number of an entry by its name, with its interval where the entry has one.
 * Takes the entry and the name; of mmPerPx, which has two, `mmPerPx.column`.
 */
export function numberOf(entry: LedgerEntry | undefined, name: string): LedgerNumber | undefined {
  const value = valueAt(entry?.output, name);
  if (typeof value !== "number") return undefined;
  const { intervals = {} } = numbers.safeParse(entry?.output).data ?? {};
  const elsewhere = intervalSchema.safeParse(valueAt(entry?.output, intervalPlaces[name] ?? "")).data;
  const own = intervals[name] ?? elsewhere;
  return own === undefined ? { value } : { value, interval: own };
}

/** The scale of a film as the ledger has it: millimetres a pixel, across and down. */
export function scaleOfFilm(ledger: readonly LedgerEntry[], filmId: string): MmPerPx | undefined {
  const entry = entryOf(ledger, "calibrate", filmId);
  const [column, row] = [numberOf(entry, "mmPerPx.column")?.value, numberOf(entry, "mmPerPx.row")?.value];
  return column === undefined || row === undefined ? undefined : { column, row };
}

function valueAt(output: unknown, name: string): unknown {
  return name
    .split(".")
    .reduce<unknown>(
      (held, step) => (typeof held === "object" && held !== null ? Reflect.get(held, step) : undefined),
      output,
    );
}

const beside = z.looseObject({
  basis: basisSchema.optional(),
  cautions: z.array(z.string()).default([]),
  notComputed: notComputedSchema.default([]),
});

/** What stands beside an entry's numbers: how they came about, what speaks against them, and what is absent and why. */
export function besideNumbers(entry: LedgerEntry | undefined): {
  readonly basis?: Basis | undefined;
  readonly cautions: readonly string[];
  readonly notComputed: readonly { readonly name: string; readonly why: string }[];
} {
  return beside.safeParse(entry?.output).data ?? { cautions: [], notComputed: [] };
}

/** Why a number is absent, in the entry's own words. */
export function whyAbsent(entry: LedgerEntry | undefined, name: string): string | undefined {
  return (
    besideNumbers(entry).notComputed.find((one) => one.name === name)?.why ??
    entry?.refused?.map(withoutPath).join("; ")
  );
}

/** A refused line begins with the path of the input it objects to, which says nothing to who reads it beside a film. */
const withoutPath = (line: string): string => line.replace(/^[A-Za-z][\w.[\]]*: /, "");

const course = z.looseObject({
  profile: z
    .array(z.looseObject({ sMm: z.number(), curvaturePerMm: z.number() }))
    .default([])
    .describe("Empty on a film without a scale."),
  atMm: z.number().optional(),
  maxCurvaturePerMm: z.number().default(0),
  severity: z.array(z.looseObject({ source: z.string(), class: z.string() })).default([]),
  bends: z
    .array(
      z.looseObject({
        angleDeg: z.number(),
        radiusMm: z.number().optional(),
        fromMm: z.number().optional(),
        toMm: z.number().optional(),
        side: z.string(),
      }),
    )
    .default([]),
});

/** The course of a canal as the ledger measured it; undefined for an entry that refused. */
export function measuredCourse(entry: LedgerEntry | undefined): z.infer<typeof course> | undefined {
  return course.safeParse(entry?.output).data;
}

/** The samples of a profile for a graph that shows how tight the canal is and not to which side it turns. */
export const withoutSide = (profile: readonly { readonly sMm: number; readonly curvaturePerMm: number }[]) =>
  profile.map(({ sMm, curvaturePerMm }) => ({ sMm, curvaturePerMm: Math.abs(curvaturePerMm) }));

/** The sample of a profile at a share of the way from orifice to apex. */
export function sampleAt<Sample>(profile: readonly Sample[], share: number): Sample | undefined {
  return profile[Math.round(Math.min(1, Math.max(0, share)) * (profile.length - 1))];
}
