import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { Refusal } from "../core/refusal.ts";
import { sumsDone } from "../ledger/sums-done.ts";
import { homeFolder } from "../store/home.ts";
import { openStore } from "../store/open-store.ts";
import { buildApp } from "./app.ts";
import type { Bench } from "./bench.ts";
import { comparingAside } from "./comparing/comparing-aside.ts";
import { comparisonsOn } from "./comparing/comparisons.ts";
import { pictureCache } from "./comparing/picture-cache.ts";
import { demoOf } from "./demo.ts";
import { documentsAside } from "./documents/documents-aside.ts";
import { makeDoorKey, openAddress } from "./door-key.ts";
import { filmWorkAside } from "./film-work-aside.ts";
import { makeJobs } from "./jobs.ts";
import { ledgerBy } from "./ledger-by.ts";
import { makeSessions } from "./sessions.ts";
import { sumsAside } from "./sums/sums-aside.ts";
import { followSettings, followSums } from "./write-settings.ts";

/** How to serve: where the program's own files are, where the record is kept, which port is wanted. */
export interface ServeOptions {
  readonly shipped: string;
  readonly env: NodeJS.ProcessEnv;
  readonly port: number;
  readonly say: (line: string) => void;
  /** Ends the start early: what long step is under way stops at its next case, and nothing listens. */
  readonly signal?: AbortSignal;
}

/** A server that listens. */
export interface Serving {
  readonly port: number;
  /** The address with its one-time code. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/**
 * Opens the record and listens on 127.0.0.1 alone; a port in use picks the next.
 * @throws Refusal `server.alreadyRunning` with the address where it runs, and the store's refusals
 */
export async function serve(options: ServeOptions): Promise<Serving> {
  const { shipped, say, signal } = options;
  const home = homeFolder(options.env);
  const { store, lock, recovered, migratedCopy } = await openStore(home);
  for (const line of recovered) say(`Recovered: ${line}`);
  if (migratedCopy !== undefined) say(`The record now has this version's form; the copy from before: ${migratedCopy}`);
  const door = await makeDoorKey(home);
  const films = filmWorkAside(join(shipped, "dist", "film-worker.mjs"));
  const documents = documentsAside(join(shipped, "dist", "document-worker.mjs"));
  const sums = sumsAside(join(shipped, "dist", "sum-worker.mjs"));
  const deriveLedger = ledgerBy(sums.do);
  const end = new AbortController();
  const jobs = makeJobs();
  const now = () => new Date().toISOString();
  const comparing = comparingAside(join(shipped, "dist", "comparing-worker.mjs"));
  const comparisons = comparisonsOn({ store, deriveLedger, jobs, comparing, cache: pictureCache(home), now });
  try {
    const bench: Bench = {
      ...{ store, home, shipped, recovered, doorKey: door.key },
      ...{ version: await versionOf(shipped), pages: join(shipped, "dist", "web") },
      ...{ sessions: makeSessions(), jobs, films, documents, sums, comparisons, now },
      ...{ deriveLedger, ending: end.signal },
      demo: await demoOf({ store, deriveLedger, home, shipped, say, ...(signal === undefined ? {} : { signal }) }),
    };
    signal?.throwIfAborted();
    const app = await buildApp(bench);
    const port = await listen(app, options.port);
    lock?.servesAt(port);
    const behind = workBehind(bench, say);
    const close = async (): Promise<void> => {
      end.abort();
      await comparisons.close();
      await behind;
      await films.close();
      await documents.close();
      await app.close();
      await door.release();
      await store.close();
      await sums.close();
    };
    return { port, address: openAddress(port, bench.sessions.newCode()), close };
  } catch (thrown) {
    await door.release();
    await store.close();
    await sums.close();
    throw thrown;
  }
}

/**
 * What nobody waits for at a start: ledgers follow settings where the last run was cut short, and hold the sums that came
 * with this version; pictures of removed cases go, and the demo's films are compared.
 */
async function workBehind(bench: Bench, say: ServeOptions["say"]): Promise<void> {
  const why = (thrown: unknown): string => (thrown instanceof Error ? thrown.message : String(thrown));
  await followSettings(bench).catch((thrown) => say(`Not all cases follow your settings yet: ${why(thrown)}`));
  await followSums(bench, sumsDone()).catch((thrown) =>
    say(`Not all cases hold this version's sums yet: ${why(thrown)}`),
  );
  try {
    await bench.comparisons.sweep();
    await bench.comparisons.catchUp();
  } catch (thrown) {
    say(`Films of the demo are not compared: ${why(thrown)}`);
  }
}

type Listening = Awaited<ReturnType<typeof buildApp>>;

/** Listens on the first free port from the wanted one on. */
async function listen(app: Listening, wanted: number): Promise<number> {
  for (let port = wanted; port < wanted + 50; port += 1) {
    try {
      await app.listen({ host: "127.0.0.1", port });
      const address = app.server.address();
      return typeof address === "object" && address !== null ? address.port : port;
    } catch (thrown) {
      if (!(thrown instanceof Error) || Reflect.get(thrown, "code") !== "EADDRINUSE") throw thrown;
    }
  }
  throw new Refusal(
    "server.portInUse",
    `Cannot listen: ports ${wanted} to ${wanted + 49} are all in use; name another with -- --port N`,
  );
}

async function versionOf(shipped: string): Promise<string> {
  const read: unknown = JSON.parse(await readFile(join(shipped, "package.json"), "utf8"));
  const version: unknown = typeof read === "object" && read !== null ? Reflect.get(read, "version") : undefined;
  return typeof version === "string" ? version : "unknown";
}
