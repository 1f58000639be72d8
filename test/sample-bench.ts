import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { FastifyInstance, InjectOptions, LightMyRequestResponse } from "fastify";
import { buildApp } from "../src/server/app.ts";
import type { Bench } from "../src/server/bench.ts";
import { comparingHere } from "../src/server/comparing/comparing-here.ts";
import { comparisonsOn } from "../src/server/comparing/comparisons.ts";
import { pictureCache } from "../src/server/comparing/picture-cache.ts";
import { documentsHere } from "../src/server/documents/documents-aside.ts";
import { filmWorkHere } from "../src/server/film-work.ts";
import { makeJobs } from "../src/server/jobs.ts";
import { ledgerBy } from "../src/server/ledger-by.ts";
import { makeSessions } from "../src/server/sessions.ts";
import { type Sums, sumsHere } from "../src/server/sums/sums.ts";
import { openStore } from "../src/store/open-store.ts";

/** A server on a new data folder, asked without a port, with a window already let in. */
export interface SampleBench {
  readonly app: FastifyInstance;
  readonly bench: Bench;
  readonly home: string;
  /** Asks as the window that was let in. */
  readonly ask: (request: InjectOptions) => Promise<LightMyRequestResponse>;
  readonly close: () => Promise<void>;
}

/** The Host header that this server answers to. */
export const host = "127.0.0.1:4270";

/** Opens a new data folder and a server on it. Takes who does the sums of ledgers. */
export async function sampleBench(sums: Sums = sumsHere): Promise<SampleBench> {
  const home = mkdtempSync(join(tmpdir(), "canalog-bench-"));
  const { store } = await openStore(home);
  const sessions = makeSessions();
  const [jobs, now] = [makeJobs(), () => new Date().toISOString()];
  const deriveLedger = ledgerBy(sums.do);
  const bench: Bench = {
    ...{ store, sessions, home, jobs, now, version: "test", recovered: [], shipped: ".", doorKey: "door" },
    films: filmWorkHere,
    documents: documentsHere,
    sums,
    comparisons: comparisonsOn({ store, deriveLedger, jobs, comparing: comparingHere, cache: pictureCache(home), now }),
    demo: { state: () => "removed", load: async () => undefined, remove: async () => undefined },
    ...{ deriveLedger, ending: new AbortController().signal },
  };
  const app = await buildApp(bench);
  const token = sessions.redeem(sessions.newCode()) ?? "";
  return {
    ...{ app, bench, home },
    ask: (request) =>
      app.inject({ ...request, headers: { host, cookie: `canalog_session=${token}`, ...request.headers } }),
    close: async () => {
      await bench.comparisons.close();
      await app.close();
      await store.close();
      rmSync(home, { recursive: true, force: true });
    },
  };
}

/** A hash over every file of a folder by name and content; the database's own log of the moment left out. */
export function folderHash(folder: string): string {
  const hash = createHash("sha256");
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/\.(sqlite-(wal|shm)|lock)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  for (const file of files) hash.update(file).update(readFileSync(file));
  return hash.digest("hex");
}
