import { mkdirSync } from "node:fs";
import { resolve } from "node:path";
import { type OpenDatabase, openDatabase } from "./dialect.ts";
import { type HomeLock, lockHome } from "./lock.ts";
import { checkVersion, databaseFile, migrate, renewFacts } from "./migrate.ts";
import { type TablesStep, tablesSteps } from "./migrations.ts";
import { recover } from "./recover.ts";
import { refusalOfDisk } from "./refusal-of-disk.ts";
import { finishRestore } from "./restore-note.ts";
import type { Store } from "./store.ts";
import { storeOn } from "./store-on.ts";

/** How a store is opened. */
export interface OpenOptions {
  /** Where the process serves, for the lock. */
  readonly port?: number;
  /** `beside`: without taking hold of the home and without recovery, while another process serves it. Default `alone`. */
  readonly hold?: "alone" | "beside";
  /** The steps of the tables; another list is for tests alone. */
  readonly steps?: readonly TablesStep[];
}

/** An open store, and what opening it found. */
export interface OpenedStore {
  readonly store: Store;
  /** What a start after a crash found and did, in plain sentences; empty after an orderly end. */
  readonly recovered: string[];
  /** Path of the copy made before the tables were turned into a newer form. */
  readonly migratedCopy?: string;
  /** The hold on the home; absent when opened beside another process. Released by the store's close. */
  readonly lock?: HomeLock;
}

/**
 * Opens the record in a home folder, made if it is not there.
 * @throws Refusal `store.newerVersion` (nothing is touched), `store.corrupt`, `store.unwritable`, `store.full`,
 * `server.alreadyRunning`
 */
export async function openStore(home: string, options: OpenOptions = {}): Promise<OpenedStore> {
  const folder = resolve(home);
  const opened: { lock?: HomeLock; database?: OpenDatabase } = {};
  try {
    return await open(folder, options, opened);
  } catch (error) {
    await opened.database?.close().catch(() => undefined);
    opened.lock?.release();
    throw refusalOfDisk(error, folder);
  }
}

async function open(
  home: string,
  { port, hold = "alone", steps = tablesSteps }: OpenOptions,
  opened: { lock?: HomeLock; database?: OpenDatabase },
): Promise<OpenedStore> {
  const restored = finishRestore(home);
  const found = checkVersion(home, steps.at(-1)?.version ?? 0);
  mkdirSync(home, { recursive: true });
  if (hold === "alone") opened.lock = lockHome(home, port);
  const database = openDatabase(databaseFile(home));
  opened.database = database;
  const migratedCopy = await migrate(database, home, found, steps);
  await renewFacts(database.db);
  const { lock } = opened;
  const recovered = lock === undefined ? [] : await recover(database.db, home);
  const takenOver = lock?.takenOver;
  return {
    store: storeOn(database, home, lock),
    recovered: [...restored, ...(takenOver === undefined ? [] : [takenOver]), ...recovered],
    ...(migratedCopy === undefined ? {} : { migratedCopy }),
    ...(lock === undefined ? {} : { lock }),
  };
}
