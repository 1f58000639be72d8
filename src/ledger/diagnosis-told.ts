import { z } from "zod";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { BodyOf } from "../record/parts.ts";
import { apicalWords, painSourceWords, pulpalWords, type Words } from "../record/words/case-words.ts";

const reason = z.looseObject({ row: z.string(), finding: z.string(), says: z.string() });
const axis = z.looseObject({
  term: z.string(),
  code: z.string(),
  status: z.enum(["determined", "possible", "not determined"]),
  for: z.array(reason),
  against: z.array(reason),
  alternatives: z.array(z.looseObject({ term: z.string(), separatedBy: z.string() })),
});
const pair = z.looseObject({ pulpal: z.string(), apical: z.string() });
const told = z.looseObject({
  pulpal: axis,
  apical: axis,
  apicalAlso: z.string().optional(),
  source: z.string(),
  sourceBecause: z.array(reason).default([]),
  urgent: z.array(reason),
  contradictions: z.array(reason.extend({ places: z.array(z.string()).default([]) })),
  asks: z.array(reason).default([]),
  codes: z.looseObject({ icd10: pair, icd11: pair, icd10Cm: pair.optional() }),
  european: z.looseObject({ pulpal: z.string().optional(), apical: z.string().optional() }).default({}),
  cautions: z.array(z.string()).default([]),
  notComputed: z.array(z.looseObject({ name: z.string(), why: z.string() })).default([]),
});

/** What an entry of the ledger says that findings speak for. */
export type DiagnosisTold = z.infer<typeof told>;
/** One of its two axes. */
export type AxisTold = DiagnosisTold["pulpal"];
/** A row of the table that holds, with what was found. */
export type ReasonTold = DiagnosisTold["urgent"][number];

/** The entry about a sheet of findings, if there is one. */
export const diagnosisEntry = (ledger: readonly LedgerEntry[], findings: string): LedgerEntry | undefined =>
  ledger.find(({ topic, subject }) => topic === "diagnosis" && subject === `diagnosis of ${findings}`);

/** See {@link DiagnosisTold}; undefined for an entry that refused. */
export const diagnosisTold = (entry: Pick<LedgerEntry, "output"> | undefined): DiagnosisTold | undefined =>
  told.safeParse(entry?.output).data;

type Own = BodyOf<"diagnosis">;

/** What the record calls the terms that an entry gives. */
export interface TermsTold extends Pick<Own, "pulpal" | "apical"> {
  readonly apicalAlso?: NonNullable<Own["apicalAlso"]>;
  readonly source?: NonNullable<Own["source"]>;
}

/** See {@link TermsTold}. */
export function termsTold({ pulpal, apical, apicalAlso, source }: DiagnosisTold): TermsTold {
  const [also, from] = [nameIn(apicalWords, apicalAlso), nameIn(painSourceWords, source)];
  return {
    pulpal: nameIn(pulpalWords, pulpal.term) ?? "notDetermined",
    apical: nameIn(apicalWords, apical.term) ?? "notDetermined",
    ...(also === "condensingOsteitis" ? { apicalAlso: also } : {}),
    ...(from === undefined ? {} : { source: from }),
  };
}

/** The value whose words these are, whatever their capitals. */
function nameIn<Value extends string>(words: Words<Value>, said: string | undefined): Value | undefined {
  const known = Object.entries<string>(words).find(([, word]) => word.toLowerCase() === said?.toLowerCase());
  return known?.[0] as Value | undefined;
}

/** Where a person's diagnosis says something else than the findings do. */
export interface Difference {
  readonly about: "pulpal" | "apical" | "source";
  readonly told: string;
  readonly own: string;
}

const undecided = "notDetermined";

/** Where both give an answer and the answers differ; a term that either leaves open is no difference. */
export function differencesFrom(given: DiagnosisTold, own: Own): readonly Difference[] {
  const terms = termsTold(given);
  const pairs = [
    { about: "pulpal", words: pulpalWords, told: terms.pulpal, own: own.pulpal },
    { about: "apical", words: apicalWords, told: terms.apical, own: own.apical },
    { about: "source", words: painSourceWords, told: terms.source, own: own.source },
  ] as const;
  return pairs.flatMap(({ about, words, told: suggested, own: chosen }) => {
    if (suggested === undefined || chosen === undefined || suggested === chosen) return [];
    if (suggested === undecided || chosen === undecided) return [];
    const known: Readonly<Record<string, string>> = words;
    return [{ about, told: known[suggested] ?? suggested, own: known[chosen] ?? chosen }];
  });
}
