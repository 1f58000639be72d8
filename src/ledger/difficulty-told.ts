import {
  type DifficultyFact,
  type DifficultyOutput,
  difficultyOutput,
} from "../core/diagnosis/difficulty/difficulty-output.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";

/** What an entry of the ledger says of what makes a tooth harder. */
export type DifficultyTold = DifficultyOutput;
/** One recorded fact of it. */
export type HardFact = DifficultyFact;

/** See {@link DifficultyTold}; undefined for an entry that refused, or that keeps its answer in an older form. */
export const difficultyTold = (entry: Pick<LedgerEntry, "output"> | undefined): DifficultyTold | undefined =>
  difficultyOutput.safeParse(entry?.output).data;

/** What the entry about the difficulty on the day of a plan is about; takes the plan's id. */
export const difficultySubject = (plan: string): string => `difficulty of ${plan}`;

/** What a group makes harder, in words, in the order in which a tooth is treated. */
export const groupWords: Readonly<Record<HardFact["group"], string>> = {
  reach: "Harder to reach",
  shape: "Harder to shape",
  seal: "Harder to seal",
  keep: "Harder to keep",
};

/**
 * What nobody recorded, each thing once with the canals that it is asked of in place of one.
 * Takes the list as it is asked, canal by canal.
 */
export function askedInShort(asked: DifficultyTold["asked"]): readonly string[] {
  const canals = new Map<string, string[]>();
  for (const { says, canal } of asked) {
    const whole = says.replace(/[.?]$/, "");
    const parts = canal === undefined ? [whole] : whole.split(new RegExp(`\\b${canal}\\b`));
    const thing = parts.length === 2 ? parts.join(here) : whole;
    canals.set(thing, [...(canals.get(thing) ?? []), canal ?? ""]);
  }
  return [...canals].map(([thing, named]) => thing.replace(here, named.join(", ")));
}

/** Stands for a canal's name in a sentence that is said of several. */
const here = "{canal}";

/** How one fact differs between two lists of one tooth. */
export interface DifficultyChange {
  readonly id: string;
  readonly canal?: string;
  readonly is: "new" | "gone" | "changed";
  readonly was?: string;
  readonly now?: string;
}

/** What makes the tooth harder now and did not then, what no longer does, and what reads otherwise. */
export function difficultySince(then: DifficultyTold, now: DifficultyTold): readonly DifficultyChange[] {
  const [before, after] = [byPlace(then.facts), byPlace(now.facts)];
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((place): DifficultyChange[] => {
    const [old, fresh] = [before.get(place), after.get(place)];
    const { id, canal } = old ?? fresh ?? { id: place };
    const named = { id, ...(canal === undefined ? {} : { canal }) };
    if (old === undefined) return fresh === undefined ? [] : [{ ...named, is: "new", now: fresh.says }];
    if (fresh === undefined) return [{ ...named, is: "gone", was: old.says }];
    return old.says === fresh.says ? [] : [{ ...named, is: "changed", was: old.says, now: fresh.says }];
  });
}

/** A fact is told once for the tooth, or once for each canal. */
const byPlace = (facts: readonly HardFact[]): ReadonlyMap<string, HardFact> =>
  new Map(facts.map((fact) => [`${fact.id} ${fact.canal ?? ""}`, fact]));
