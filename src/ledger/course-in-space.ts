import { z } from "zod";
import type { LedgerEntry } from "../record/ledger-entry.ts";

const triple = z.tuple([z.number(), z.number(), z.number()]);
const sample = z.looseObject({ sMm: z.number(), turnDeg: z.number() });

const inSpace = z.looseObject({
  course: z.array(triple).min(2),
  sigma: z.array(triple).default([]),
  levels: z.array(z.looseObject({ alongMm: z.array(z.number()), zMm: z.number(), fixed: z.boolean() })).default([]),
  seen: z.array(z.looseObject({ profile: z.array(sample) })).default([]),
  turn: z.array(z.looseObject({ ...sample.shape, lowDeg: z.number(), highDeg: z.number() })).default([]),
  hiddenDeg: z.number().optional(),
  side: z.string().default("undetermined"),
  liesSide: z.string().optional(),
  cautions: z.array(z.string()).default([]),
  anglesDeg: z.array(z.number()).default([]),
  receptorRead: z.enum(["turnsWithBeam", "fixed"]).default("turnsWithBeam"),
});

/** A canal's course in space as an entry of the ledger holds it. */
export type CourseRead = z.infer<typeof inSpace>;

/** See {@link CourseRead}; undefined for an entry that refused or tells a side alone. */
export const courseRead = (entry: LedgerEntry | undefined): CourseRead | undefined =>
  inSpace.safeParse(entry?.output).data;

/** Which canal an entry is about and on which films, in the order of its views. */
export function viewsOf({ subject }: Pick<LedgerEntry, "subject">): { canal: string; films: readonly string[] } {
  const [canal = "", ...films] = (subject.split(" of ")[1] ?? "").split(" ");
  return { canal, films };
}

/** The traces that an entry was computed from, by the places it names, in the order of its views. */
export function tracesOf({ inputPaths }: Pick<LedgerEntry, "inputPaths">): readonly string[] {
  const found = inputPaths.flatMap(({ input, record }) => {
    const view = /^views\[(\d+)\]\.points$/.exec(input)?.[1];
    const [part = "", place] = record.split("/");
    return view === undefined || place !== "points" ? [] : [[Number(view), part] as const];
  });
  return [...new Map(found).entries()].sort(([a], [b]) => a - b).map(([, part]) => part);
}

const landmarked = z.looseObject({
  reference: z.string().optional(),
  views: z.array(z.looseObject({ landmarks: z.record(z.string(), z.unknown()).default({}) })),
});

/** The landmark against which an entry tells where the canal lies: the named one, else the first that every view shows. */
export function referenceOf({ input }: Pick<LedgerEntry, "input">): string | undefined {
  const { reference, views = [] } = landmarked.safeParse(input).data ?? {};
  const [first, ...others] = views;
  return (
    reference ?? Object.keys(first?.landmarks ?? {}).find((name) => others.every(({ landmarks }) => name in landmarks))
  );
}

/** Whether the films stand too near to each other for a verdict, as the entry's own caution says. */
export const isTooNear = ({ cautions }: Pick<CourseRead, "cautions">): boolean =>
  cautions.some((caution) => /^The films are only [\d.]+ degrees apart/.test(caution));
