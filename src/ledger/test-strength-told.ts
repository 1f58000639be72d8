import { z } from "zod";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type ChanceRung, chance, ends } from "./chance-rung.ts";
import { ratioText } from "./ratio-text.ts";

const step = z.looseObject({
  ...{ test: z.string(), name: z.string().optional(), result: z.enum(["positive", "negative"]) },
  likelihoodRatioPositive: z.number().optional(),
  likelihoodRatioNegative: z.number().optional(),
  intervals: z.looseObject({
    likelihoodRatioPositive: ends.optional(),
    likelihoodRatioNegative: ends.optional(),
  }),
  posterior: chance,
});
const told = z.looseObject({
  prior: chance,
  posterior: chance,
  steps: z.array(step),
  cautions: z.array(z.string()).default([]),
});

/** What an entry of the ledger says of the strength of tests. */
export type TestStrengthTold = z.infer<typeof told>;

/** See {@link TestStrengthTold}; undefined for an entry that refused. */
export const testStrengthTold = (entry: LedgerEntry | undefined): TestStrengthTold | undefined =>
  told.safeParse(entry?.output).data;

const result = z.looseObject({
  test: z.string(),
  name: z.string().optional(),
  result: z.enum(["positive", "negative"]),
});
const asked = z.looseObject({
  priorCounts: z.looseObject({ events: z.number(), n: z.number() }).optional(),
  results: z.array(result).default([]),
});

/** What each test is called, and what its result is: positive points to a pulp that is not vital. */
const testWords: Readonly<Record<string, { is: string; positive: string; negative: string }>> = {
  cold: { is: "Cold", positive: "no reply", negative: "reply" },
  heat: { is: "Heat", positive: "no reply", negative: "reply" },
  electric: { is: "Electric", positive: "no reply", negative: "reply" },
  percussion: { is: "Percussion", positive: "painful", negative: "no pain" },
  palpation: { is: "Palpation", positive: "painful", negative: "no pain" },
  pulseOximetry: { is: "Pulse oximetry", positive: "no pulse", negative: "pulse" },
  laserDoppler: { is: "Laser Doppler", positive: "no flow", negative: "flow" },
};

/** The rungs from what was known beforehand to every test of the entry; one without an accuracy has no chance. */
export function testStrengthRungs(entry: LedgerEntry | undefined): readonly ChanceRung[] {
  const read = testStrengthTold(entry);
  const input = asked.safeParse(entry?.input).data;
  if (read === undefined || input === undefined) return [];
  const left = [...read.steps];
  const tests = input.results.map((one): ChanceRung => {
    const words = testWords[one.test];
    const label = `${words?.is ?? one.name ?? "A test"}: ${words?.[one.result] ?? one.result}`;
    const [next] = left;
    if (next?.test !== one.test || next.result !== one.result) return { label, says: "its accuracy is not given" };
    left.shift();
    return { label, says: ratioOf(next), chance: next.posterior };
  });
  return [{ label: "Before the tests", says: beforehand(input.priorCounts), chance: read.prior }, ...tests];
}

const beforehand = (counts: { events: number; n: number } | undefined): string =>
  counts === undefined ? "as it was given" : `${counts.events} of ${counts.n} teeth like it`;

/** The likelihood ratio of the result that was had, with its interval. */
function ratioOf({ result, intervals, ...one }: z.infer<typeof step>): string {
  const which = result === "positive" ? "likelihoodRatioPositive" : "likelihoodRatioNegative";
  const [ratio, interval] = [one[which], intervals[which]];
  const name = result === "positive" ? "LR+" : "LR−";
  if (ratio === undefined) return `${name} without bound`;
  const within = interval === undefined ? "" : ` (${ratioText(interval.low)}–${ratioText(interval.high)})`;
  return `${name} ${ratioText(ratio)}${within}`;
}
