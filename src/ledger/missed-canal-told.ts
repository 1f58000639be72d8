import { z } from "zod";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { lookWords, resultWords } from "../record/words/search-words.ts";
import { type ChanceRung, chance, ends } from "./chance-rung.ts";
import { ratioText } from "./ratio-text.ts";

const step = z.looseObject({
  ...{ evidence: z.number(), kind: z.string(), result: z.string(), sensitivity: z.number(), specificity: z.number() },
  ...{ likelihoodRatio: z.union([z.number(), z.string()]), posterior: z.number(), interval: ends.optional() },
});
const nextLook = z.looseObject({
  ...{ kind: z.string(), harm: z.number(), says: z.string(), expectedFallBits: z.number().optional() },
  ...{ missing: z.array(z.string()).default([]), needs: z.string().optional() },
});
const told = z.looseObject({
  prior: z.looseObject({ ...chance.shape, n: z.number(), N: z.number(), series: z.array(z.unknown()).default([]) }),
  posterior: chance,
  steps: z.array(step),
  nextBestLook: z.array(nextLook),
  cautions: z.array(z.string()).default([]),
  notComputed: z.array(z.looseObject({ name: z.string(), why: z.string() })).default([]),
});

/** What an entry of the ledger says of a canal that nobody has seen. */
export type MissedCanalTold = z.infer<typeof told>;

/** See {@link MissedCanalTold}; undefined for an entry that refused. */
export const missedCanalTold = (entry: LedgerEntry | undefined): MissedCanalTold | undefined =>
  told.safeParse(entry?.output).data;

const asked = z.looseObject({
  population: z.string().optional(),
  evidence: z.array(z.looseObject({ kind: z.string(), result: z.string() })).default([]),
});

/** The rungs from what series say to every look of the entry; one that was not reckoned in has no chance. */
export function missedCanalRungs(entry: LedgerEntry | undefined): readonly ChanceRung[] {
  const read = missedCanalTold(entry);
  const input = asked.safeParse(entry?.input).data;
  if (read === undefined || input === undefined) return [];
  const { prior, posterior, steps } = read;
  const last = steps.at(-1);
  const looks = input.evidence.map(({ kind, result }, at): ChanceRung => {
    const label = `${capital(wordOf(lookWords, kind))}: ${wordOf(resultWords, result)}`;
    const counted = steps.find(({ evidence }) => evidence === at);
    if (counted === undefined) return { label, says: "its accuracy is not given" };
    const mean = counted.posterior;
    return {
      ...{ label, says: accuracyText(counted) },
      chance: counted === last ? posterior : { mean, interval: counted.interval },
    };
  });
  const from = `${prior.n} of ${prior.N}, ${input.population ?? "all series"}`;
  return [{ label: "Before any look", says: from, chance: prior }, ...looks];
}

const accuracyText = ({ likelihoodRatio, sensitivity, specificity }: z.infer<typeof step>): string => {
  const ratio = typeof likelihoodRatio === "number" ? ratioText(likelihoodRatio) : "without bound";
  return `LR ${ratio} (sens. ${shareText(sensitivity)}, spec. ${shareText(specificity)})`;
};

/** Near certainty a share has one more figure, so that it is not rounded to it. */
const shareText = (share: number): string => String(Number(share.toFixed(share > 0.95 ? 3 : 2)));

const wordOf = (words: Readonly<Record<string, string>>, name: string): string => words[name] ?? name;
const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
