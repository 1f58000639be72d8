import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { Refusal } from "../core/refusal.ts";
import { cabinetGestureSchema } from "../record/cabinet/cabinet-gesture.ts";
import { demoTakenOut, withoutStanding } from "../record/cabinet/demo-items.ts";
import { caseFileSchema } from "../record/case-file.ts";
import type { Store } from "../store/store.ts";
import type { Demo } from "./bench.ts";
import type { LedgerNow } from "./ledger-by.ts";

type State = ReturnType<Demo["state"]>;

/** Where the demo comes from and goes to. */
interface DemoPlace {
  readonly store: Store;
  readonly deriveLedger: LedgerNow;
  readonly home: string;
  readonly shipped: string;
  readonly say: (line: string) => void;
  readonly signal?: AbortSignal;
}

/** The demo of a home: loaded at its first start, finished if that start was interrupted, and never brought back unasked. */
export async function demoOf(place: DemoPlace): Promise<Demo> {
  const file = join(place.home, "demo.json");
  let state: State = await readState(file);
  const put = async (next: State): Promise<void> => {
    state = next;
    await writeFile(file, JSON.stringify({ state }));
  };
  const load = async (): Promise<void> => {
    await put("loading");
    await loadCabinet(place);
    await loadAll(place);
    await put("loaded");
  };
  const remove = async (): Promise<void> => {
    const recording = await recorderOf(place);
    await removeCabinet(place, recording);
    for (const facts of await place.store.cases())
      if (facts.demo) await place.store.removeCase(facts.caseId, recording);
    await put("removed");
  };
  if (state === "loading") await load().catch(saySo(place));
  return { state: () => state, load, remove };
}

/** A demo that can't be loaded keeps nobody from their own cases; the next start tries again. */
const saySo =
  ({ say }: DemoPlace) =>
  (thrown: unknown): void => {
    if (!(thrown instanceof Refusal)) throw thrown;
    say(`The demo could not be loaded whole (${thrown.message}); the next start tries again`);
  };

async function readState(file: string): Promise<State> {
  if (!existsSync(file)) return "loading";
  const read: unknown = JSON.parse(await readFile(file, "utf8"));
  const state: unknown = typeof read === "object" && read !== null ? Reflect.get(read, "state") : undefined;
  return state === "loaded" || state === "removed" ? state : "loading";
}

const recorderOf = async ({ store }: DemoPlace) => ({
  who: (await store.settings()).who,
  at: new Date().toISOString(),
});

/** What of the demo's cabinet is not there yet. */
async function loadCabinet(place: DemoPlace): Promise<void> {
  const file = join(place.shipped, "data", "demo", "cabinet.json");
  if (!existsSync(file)) return;
  const read: unknown = JSON.parse(await readFile(file, "utf8"));
  const { items } = await place.store.cabinet();
  const gesture = withoutStanding(cabinetGestureSchema.parse(read), items);
  if (gesture !== undefined) await place.store.recordInCabinet(gesture, await recorderOf(place));
}

async function removeCabinet({ store }: DemoPlace, recorder: Awaited<ReturnType<typeof recorderOf>>): Promise<void> {
  const gesture = demoTakenOut((await store.cabinet()).items);
  if (gesture !== undefined) await store.recordInCabinet(gesture, recorder, "goes");
}

/** Every case file of the demo that is not there yet, with its films. */
async function loadAll({ store, deriveLedger, shipped, say, signal }: DemoPlace): Promise<void> {
  const folder = join(shipped, "data", "demo", "cases");
  if (!existsSync(folder)) return;
  const there = new Set<string>((await store.cases()).map((facts) => facts.caseId));
  const files = (await readdir(folder)).filter((name) => name.endsWith(".json")).sort();
  const films = await readFilms(join(shipped, "data", "demo", "films"));
  const derive = deriveLedger();
  say(`Loading the demo: ${films.size} films, all invented ...`);
  let cases = 0;
  for (const name of files) {
    const read: unknown = JSON.parse(await readFile(join(folder, name), "utf8"));
    for (const one of Array.isArray(read) ? read : [read]) {
      signal?.throwIfAborted();
      const caseFile = caseFileSchema.parse(one);
      if (!there.has(caseFile.caseId)) await store.loadCaseFile(caseFile, films, derive);
      cases += 1;
      if (cases % 50 === 0) say(`Loading the demo: ${cases} cases ...`);
    }
  }
  say(`Loaded the demo: ${cases} cases`);
}

async function readFilms(folder: string): Promise<ReadonlyMap<string, Uint8Array>> {
  if (!existsSync(folder)) return new Map();
  const names = (await readdir(folder)).filter((name) => name.endsWith(".png"));
  const films = await Promise.all(names.map((name) => readFile(join(folder, name))));
  return new Map(films.map((bytes) => [createHash("sha256").update(bytes).digest("hex"), bytes]));
}
