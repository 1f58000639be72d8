import { z } from "zod";
import { instrumentTopic } from "../core/instrument/instrument-topic.ts";
import type { CabinetItem, CabinetItemOf } from "../record/cabinet/cabinet-item.ts";
import type { FileUseOfCase } from "../record/file-uses.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { outcomeOf } from "./derive-ledger.ts";
import { instrumentAsked } from "./instruments-used/instrument-asked.ts";

/** What an instrument of the cabinet measures, or why that can't be said. */
export type ShownInstrument =
  | { readonly output: z.infer<typeof instrumentTopic.output> }
  | { readonly refused: readonly string[] };

/** What a counted file has behind it. Demo cases count for the demo's files alone. */
export interface FileTally {
  /** Visits in which it was used. */
  readonly uses: number;
  /** Canals that it was in, once for each visit; a row that names no canal counts as one. */
  readonly canals: number;
  readonly cases: number;
  readonly sterilisations: number;
  /** Turns that are left of both directions, of all uses whose time and speed are recorded. */
  readonly turnsNet: number;
  /** All turning added up whatever its direction, of the same uses. */
  readonly turnsSwept: number;
  /** Rows without time or speed, which no turn counts. */
  readonly untimed: number;
  /**
   * Equivalent reference turns at its worst section, of the cases that have a sum, so many as `cases` says: what the others
   * wore comes on top. No more than `high`, since the worst sections of several cases need not be one; no fewer than `low`,
   * what the case that wore it most came to.
   */
  readonly equivalentTurns?: { readonly low: number; readonly high: number; readonly cases: number };
  readonly lastUsedOn?: string;
  /** Each limit of its instrument that is passed; of equivalent turns the upper end is held to it. */
  readonly over: readonly LimitPassed[];
}

/** A limit that a file has passed. */
export interface LimitPassed {
  readonly name: "uses" | "canals" | "sterilisations" | "turns" | "equivalentTurns";
  readonly limit: number;
  readonly found: number;
}

/** What each instrument of a cabinet measures, by its id. */
export function shownInstruments(items: readonly CabinetItem[]): Record<string, ShownInstrument> {
  const instruments = items.flatMap((item) => (item.kind === "instrument" ? [item] : []));
  return Object.fromEntries(instruments.map(({ id, body }) => [id, shownInstrument(body)]));
}

type InstrumentBody = CabinetItemOf<"instrument">["body"];

/** What an instrument measures; one that can't be is told in the topic's words. */
function shownInstrument(body: InstrumentBody): ShownInstrument {
  const outcome = outcomeOf(instrumentTopic, instrumentAsked(body));
  return "output" in outcome ? { output: instrumentTopic.output.parse(outcome.output) } : outcome;
}

/** What tallies of files are worked out from. */
export interface TallySource {
  readonly items: readonly CabinetItem[];
  /** The uses of all cases. */
  readonly uses: readonly FileUseOfCase[];
  /** The entries of all cases that say how much of a file's life was used, each of the subject {@link lifeOfFile}. */
  readonly lives: readonly LedgerEntry[];
}

/** The subject under which a case says how much of a counted file's life it used. */
export const lifeOfFile = (fileId: string): string => `lifeUsed of file ${fileId}`;

/** What each counted file has behind it, by its id. */
export function fileTallies({ items, uses, lives }: TallySource): Record<string, FileTally> {
  const files = items.flatMap((item) => (item.kind === "file" ? [item] : []));
  return Object.fromEntries(
    files.map((file) => {
      const own = uses.filter(({ fileId, demo }) => fileId === file.id && (!demo || file.body.demo === true));
      const cases = new Set(own.map(({ caseId }) => caseId));
      const told = lives.filter(({ subject, caseId }) => subject === lifeOfFile(file.id) && cases.has(caseId));
      const tally = tallyOf(file, own, told);
      const limits = limitsOf(items, file.body.instrument);
      return [file.id, { ...tally, over: limitsPassed(tally, limits) }];
    }),
  );
}

type Counted = Omit<FileTally, "over">;

function tallyOf(
  { body }: CabinetItemOf<"file">,
  uses: readonly FileUseOfCase[],
  lives: readonly LedgerEntry[],
): Counted {
  const visits = new Set(uses.map(({ caseId, visitId }) => `${caseId} ${visitId}`));
  const canals = new Set(uses.map(({ caseId, visitId, canal, row }) => `${caseId} ${visitId} ${canal ?? row}`));
  const lastUsedOn = uses
    .map(({ on }) => on)
    .sort()
    .at(-1);
  const equivalentTurns = equivalentOf(lives);
  return {
    ...{ uses: visits.size, canals: canals.size, cases: new Set(uses.map(({ caseId }) => caseId)).size },
    sterilisations: body.sterilisedOn.length,
    turnsNet: sum(uses.map(({ turnsNet }) => turnsNet ?? 0)),
    turnsSwept: sum(uses.map(({ turnsSwept }) => turnsSwept ?? 0)),
    untimed: uses.filter(({ turnsSwept }) => turnsSwept === null).length,
    ...(lastUsedOn === undefined ? {} : { lastUsedOn }),
    ...(equivalentTurns === undefined ? {} : { equivalentTurns }),
  };
}

const worn = z.object({ equivalentTurns: z.object({ low: z.number(), high: z.number() }) });

/** At any section the wear of all cases is at most the sum of their worst; at the worst of one case it is at least that. */
function equivalentOf(lives: readonly LedgerEntry[]): FileTally["equivalentTurns"] {
  const told = lives.flatMap(({ output }) => worn.safeParse(output).data?.equivalentTurns ?? []);
  if (told.length === 0) return undefined;
  const low = Math.max(...told.map((one) => one.low));
  return { low, high: sum(told.map(({ high }) => high)), cases: told.length };
}

type Limits = NonNullable<InstrumentBody["limits"]>;

function limitsOf(items: readonly CabinetItem[], instrument: string): Limits {
  const found = items.find(({ id }) => id === instrument);
  return found?.kind === "instrument" ? (found.body.limits ?? {}) : {};
}

function limitsPassed({ turnsNet, equivalentTurns, ...tally }: Counted, limits: Limits): LimitPassed[] {
  const found = { ...tally, turns: turnsNet, equivalentTurns: equivalentTurns?.high };
  return (["uses", "canals", "sterilisations", "turns", "equivalentTurns"] as const).flatMap((name) => {
    const [limit, reached] = [limits[name], found[name]];
    return limit === undefined || reached === undefined || reached <= limit ? [] : [{ name, limit, found: reached }];
  });
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
