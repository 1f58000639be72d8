import type { Recording, Store } from "../store/store.ts";
import type { Comparisons } from "./comparing/comparisons.ts";
import type { Documents } from "./documents/documents-aside.ts";
import type { FilmWork } from "./film-work.ts";
import type { Jobs } from "./jobs.ts";
import type { LedgerNow } from "./ledger-by.ts";
import type { Sessions } from "./sessions.ts";
import type { Sums } from "./sums/sums.ts";

/** What every route works with. */
export interface Bench {
  readonly store: Store;
  readonly sessions: Sessions;
  readonly jobs: Jobs;
  /** What takes long on films, done aside. */
  readonly films: FilmWork;
  /** Documents, made aside. */
  readonly documents: Documents;
  /** The sums of ledgers, done aside. */
  readonly sums: Sums;
  /** Two films compared on demand. */
  readonly comparisons: Comparisons;
  readonly version: string;
  readonly home: string;
  /** What another start of this program on this machine shows to be let in: see door-key.ts. */
  readonly doorKey: string;
  /** What the start found and mended after a crash, in sentences. */
  readonly recovered: readonly string[];
  /** The folder with the shipped data (demo, method pages, fonts). */
  readonly shipped: string;
  /** The built web pages, absent in tests that need none. */
  readonly pages?: string;
  readonly demo: Demo;
  readonly now: () => string;
  readonly deriveLedger: LedgerNow;
  /** Says when the program ends: long work stops where it can go on at the next start. */
  readonly ending: AbortSignal;
}

/** The demo: invented cases that come with the program. */
export interface Demo {
  readonly state: () => "loaded" | "removed" | "loading";
  readonly load: () => Promise<void>;
  readonly remove: () => Promise<void>;
}

/** Who records now. */
export async function recorderOf({ store, now }: Bench): Promise<Pick<Recording, "who" | "at">> {
  const { who } = await store.settings();
  return { who, at: now() };
}

/** Who records now, and how the ledger follows. */
export async function recordingOf(bench: Bench): Promise<Recording> {
  return { ...(await recorderOf(bench)), deriveLedger: bench.deriveLedger() };
}
