import { z } from "zod";
import { caseId as namedCase } from "../../core/ids.ts";
import { Refusal } from "../../core/refusal.ts";
import type { WaitingSum } from "../../ledger/derive-ledger.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import { partsOf } from "../../record/parts.ts";
import type { CaseState, Store } from "../../store/store.ts";
import type { Job } from "../api.ts";
import type { Jobs, Progress } from "../jobs.ts";
import type { LedgerNow } from "../ledger-by.ts";
import type { Comparing, FilmsCompared, PictureName } from "./comparing.ts";
import { pictureNames } from "./comparing.ts";
import type { PictureCache } from "./picture-cache.ts";

/** Films compared on demand: the entries that the ledger waits for, and the pictures that belong to them. */
export interface Comparisons {
  /**
   * Starts the comparison of a part, or joins it where it is under way; the job ends when its entry is in the ledger.
   * @throws Refusal `record.notFound`, `input.impossible` with what is missing
   */
  readonly start: (caseId: string, partId: string) => Promise<Job>;
  /** A picture of an entry, made again where it is not kept. @throws Refusal `record.notFound` */
  readonly picture: (entryId: string, name: PictureName) => Promise<Uint8Array>;
  /** Compares whatever waits in the cases of the demo, one after the other. */
  readonly catchUp: () => Promise<void>;
  /** Takes away the pictures of cases that are gone. */
  readonly sweep: () => Promise<void>;
  /** Ends what is under way. */
  readonly close: () => Promise<void>;
}

/** What comparisons work with. */
interface ComparisonsPlace {
  readonly store: Store;
  readonly deriveLedger: LedgerNow;
  readonly jobs: Jobs;
  readonly comparing: Comparing;
  readonly cache: PictureCache;
  readonly now: () => string;
}

/** A comparison under way. */
interface Running {
  readonly job: Job;
  readonly done: Promise<unknown>;
}

/** Comparisons on a store. */
export function comparisonsOn(place: ComparisonsPlace): Comparisons {
  const { store, jobs, cache } = place;
  const running = new Map<string, Running>();
  const closing = new AbortController();
  const pictures = picturesAgain(place, closing.signal);

  const begin = async (caseId: string, partId: string): Promise<Running> => {
    const sum = await sumOf(place, caseId, partId);
    if ("at" in sum) {
      const job = jobs.start("Compared already", async () => ({ entryId: sum.id }));
      return { job, done: Promise.resolve() };
    }
    const known = running.get(sum.id);
    if (known !== undefined) return known;
    let done: Promise<unknown> = Promise.resolve();
    const job = jobs.start("Waiting for another comparison", (progress, signal) => {
      const either = AbortSignal.any([signal, closing.signal]);
      const work = compareAndKeep(place, { caseId, sum }, progress, either).finally(() => running.delete(sum.id));
      done = work.catch(() => undefined);
      return work;
    });
    const now = { job, done };
    running.set(sum.id, now);
    return now;
  };

  return {
    start: async (caseId, partId) => (await begin(caseId, partId)).job,
    picture: async (entryId, name) => {
      const entry = await store.ledgerEntry(entryId);
      if (entry.topic !== "compareFilms" || entry.output === undefined) throw noPicture(name, "it compares no films");
      const kept = await cache.read({ caseId: entry.caseId, entryId, name });
      const png = kept ?? (await pictures.of(entry))[name];
      if (png === undefined) throw noPicture(name, "its films can't be compared");
      return png;
    },
    catchUp: async () => {
      for (const { caseId, demo, films } of await store.cases()) {
        if (!demo || films < 2) continue;
        const { parts } = await store.readCase(caseId).catch(noParts);
        for (const { id } of partsOf(parts, "comparison"))
          if (!closing.signal.aborted) await begin(caseId, id).then(({ done }) => done, unlessRefused);
      }
    },
    sweep: async () => cache.keepOnly((await store.cases()).map(({ caseId }) => caseId)),
    close: async () => {
      closing.abort(new Refusal("record.conflict", "Cannot compare the films: the program is ending"));
      await Promise.all([pictures.ended(), ...[...running.values()].map(({ done }) => done)]);
    },
  };
}

/** A case may be removed while others are compared. */
function noParts(thrown: unknown): Pick<CaseState, "parts"> {
  unlessRefused(thrown);
  return { parts: [] };
}

/** What can't be compared yet says so in the ledger. */
function unlessRefused(thrown: unknown): void {
  if (!(thrown instanceof Refusal)) throw thrown;
}

const noPicture = (name: PictureName, why: string): Refusal =>
  new Refusal("record.notFound", `Cannot show the ${name} picture of this entry: ${why}`);

/** Makes the pictures of entries again, each once however often it is asked for meanwhile. */
function picturesAgain({ store, comparing, cache }: ComparisonsPlace, signal: AbortSignal) {
  const making = new Map<string, Promise<FilmsCompared["pictures"]>>();
  const made = async ({ id, caseId, input }: LedgerEntry): Promise<FilmsCompared["pictures"]> => {
    const { pictures } = await comparing({ input, ...(await filmsOf(store, input)) }, () => undefined, signal);
    await keepPictures(cache, { id, caseId }, pictures);
    return pictures;
  };
  return {
    of: (entry: LedgerEntry): Promise<FilmsCompared["pictures"]> => {
      const known = making.get(entry.id);
      if (known !== undefined) return known;
      const fresh = made(entry).finally(() => making.delete(entry.id));
      making.set(entry.id, fresh);
      return fresh;
    },
    ended: () => Promise.allSettled(making.values()),
  };
}

/** Compares, puts the entry into the ledger, and keeps the pictures. */
async function compareAndKeep(
  { store, deriveLedger, comparing, cache, now }: ComparisonsPlace,
  { caseId, sum }: { caseId: string; sum: WaitingSum },
  progress: Progress,
  signal: AbortSignal,
): Promise<{ entryId: string }> {
  const { outcome, pictures } = await comparing(
    { input: sum.input, ...(await filmsOf(store, sum.input)) },
    progress,
    signal,
  );
  progress(0.95, "Putting it into the ledger");
  const { id, subject, input, inputPaths, topic } = sum;
  const about = { subject, topic: topic.name, topicVersion: topic.version };
  const fresh: LedgerEntry = { id, caseId: namedCase(caseId), ...about, input, inputPaths, ...outcome, at: now() };
  await store.refreshLedger(caseId, deriveLedger({ fresh }));
  const stands = (await store.ledger(caseId)).some((entry) => entry.id === id);
  if (!stands)
    throw new Refusal("record.conflict", "Cannot keep this comparison: it was changed meanwhile; press Compare again");
  await keepPictures(cache, { id, caseId }, pictures);
  return { entryId: id };
}

/**
 * What a comparison waits with, or its entry where it waits no more.
 * @throws Refusal `record.notFound`, `input.impossible` with what is missing
 */
async function sumOf(
  { store, deriveLedger }: ComparisonsPlace,
  caseId: string,
  partId: string,
): Promise<WaitingSum | LedgerEntry> {
  const waiting: WaitingSum[] = [];
  await store.refreshLedger(caseId, deriveLedger({ waits: (sum) => waiting.push(sum) }));
  const subject = `compareFilms of ${partId}`;
  const sum = waiting.find((one) => one.subject === subject);
  if (sum !== undefined) return sum;
  const entry = (await store.ledger(caseId)).find((one) => one.subject === subject);
  if (entry === undefined)
    throw new Refusal("record.notFound", `Cannot compare ${partId}: the case holds no comparison of that id`);
  if (entry.output !== undefined) return entry;
  throw new Refusal("input.impossible", `Cannot compare the films: ${(entry.refused ?? []).join("; ")}`);
}

const hashes = z.object({ before: z.object({ hash: z.string() }), after: z.object({ hash: z.string() }) });

async function filmsOf(store: Store, input: unknown): Promise<{ before: Uint8Array; after: Uint8Array }> {
  const { before, after } = hashes.parse(input);
  return { before: await store.readFilm(before.hash), after: await store.readFilm(after.hash) };
}

/** Keeps what pictures there are; one that can't be kept is made again when it is wanted. */
async function keepPictures(
  cache: PictureCache,
  { id, caseId }: { id: string; caseId: string },
  pictures: FilmsCompared["pictures"],
): Promise<void> {
  for (const name of pictureNames) {
    const png = pictures[name];
    if (png !== undefined) await cache.keep({ caseId, entryId: id, name }, png).catch(() => undefined);
  }
}
