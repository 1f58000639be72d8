import { z } from "zod";
import crosswalk from "../../../../data/diagnosis-rules/codes.json" with { type: "json" };
import type { Facts } from "./facts-of.ts";
import { holds, truthOf } from "./hold.ts";
import { whenSchema } from "./rules.ts";

const rowSchema = z.strictObject({
  term: z.string(),
  when: whenSchema,
  icd10: z.string(),
  icd10Cm: z.string(),
  icd11: z.string(),
});

/** Our own crosswalk from terms to codes; the codes are published, which goes with which term is not. */
export const codeRows = z.array(rowSchema).parse(crosswalk.rows);

const lists = ["icd10", "icd11", "icd10Cm"] as const;
const none = "no code";

/**
 * The codes of both terms in each list; `no code` where no title fits.
 * @source WHO, ICD-10, 2016, K04 (seen); ICD-10-CM, 2025 (seen); WHO, ICD-11, 2024, DA09 (seen); docs/methods/diagnosis, C11
 */
export function codesOf(terms: { readonly pulpal: string; readonly apical: string }, facts: Facts) {
  const pulpal = codeRow(terms.pulpal, facts);
  const apical = codeRow(terms.apical, facts);
  const pair = (list: (typeof lists)[number]) => ({ pulpal: pulpal?.[list] ?? none, apical: apical?.[list] ?? none });
  return { icd10: pair("icd10"), icd11: pair("icd11"), icd10Cm: pair("icd10Cm") };
}

const codeRow = (term: string, facts: Facts) =>
  codeRows.find((row) => row.term === term && holds(row.when, facts) === "yes");

/**
 * The things that nobody knows and that could give a term another code.
 * @source docs/methods/diagnosis, C11
 */
export function codesHangOn(term: string, facts: Facts): string[] {
  const rows = codeRows.filter((row) => row.term === term);
  const first = rows.findIndex((row) => holds(row.when, facts) === "yes");
  const open = rows.slice(0, first < 0 ? rows.length : first).filter((row) => holds(row.when, facts) === "unknown");
  const names = open.flatMap(({ when }) => Object.keys(when));
  return names.filter((name) => truthOf(name, facts) === "unknown");
}
