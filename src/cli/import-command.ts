import { readFile, stat } from "node:fs/promises";
import { basename } from "node:path";
import { faultsOf } from "../core/faults-of.ts";
import { faultAt, Refusal } from "../core/refusal.ts";
import { caseFileSchema } from "../record/case-file.ts";
import { filmImportSchema } from "../server/api.ts";
import { filmWorkHere } from "../server/film-work.ts";
import { ledgerBy } from "../server/ledger-by.ts";
import { sumsHere } from "../server/sums/sums.ts";
import { takeInFilm } from "../server/take-in-film.ts";
import { openStore } from "../store/open-store.ts";
import type { Store } from "../store/store.ts";

import { recordHome } from "./record-home.ts";

interface ImportOptions {
  readonly case?: string;
  readonly takenOn?: string;
  readonly purpose: string;
}

const fileLimit = 256 * 1024 * 1024;

/** `canalog import FILE`: a film into a case, or a case file into the record. */
export async function importCommand(file: string, options: ImportOptions): Promise<void> {
  const bytes = await readWithin(file);
  const { store } = await openStore(recordHome(`import ${file}`), { hold: "beside" });
  try {
    console.log(
      file.endsWith(".json") ? await importCase(store, file, bytes) : await importFilm(store, { file, bytes, options }),
    );
  } finally {
    await store.close();
  }
}

async function readWithin(file: string): Promise<Buffer> {
  const facts = await stat(file).catch(() => undefined);
  if (facts === undefined || !facts.isFile())
    throw new Refusal("file.missing", `Cannot import ${file}: there is no such file`);
  if (facts.size > fileLimit)
    throw new Refusal("file.tooLarge", `Cannot import ${file}: ${facts.size} bytes, ${fileLimit} are accepted`);
  return readFile(file);
}

async function importFilm(
  store: Store,
  from: { file: string; bytes: Buffer; options: ImportOptions },
): Promise<string> {
  const { file, bytes, options } = from;
  if (options.case === undefined) throw faultAt("--case", "missing; a film belongs to a case", "input.invalid");
  if (options.takenOn === undefined)
    throw faultAt("--taken-on", "missing; the day on which the film was taken, YYYY-MM-DD", "input.invalid");
  const asked = { name: basename(file), takenOn: options.takenOn, purpose: options.purpose };
  const parsed = filmImportSchema.safeParse(asked);
  if (!parsed.success) throw new Refusal("input.invalid", `Cannot import ${file}`, {}, faultsOf(parsed.error, asked));
  await store.readCase(options.case);
  const { partId, gesture } = await takeInFilm({ store, films: filmWorkHere }, bytes, parsed.data);
  const recording = {
    who: (await store.settings()).who,
    at: new Date().toISOString(),
    deriveLedger: ledgerBy(sumsHere.do)(),
  };
  await store.record(options.case, gesture, recording);
  return `Taken in as ${partId}`;
}

async function importCase(store: Store, file: string, bytes: Buffer): Promise<string> {
  const read = jsonOf(file, bytes);
  const parsed = caseFileSchema.safeParse(read);
  if (!parsed.success)
    throw new Refusal("input.invalid", "Cannot import: the case file has faults", {}, faultsOf(parsed.error, read));
  await store.loadCaseFile(parsed.data, new Map(), ledgerBy(sumsHere.do)());
  return `Taken in as ${parsed.data.caseId}`;
}

function jsonOf(file: string, bytes: Buffer): unknown {
  try {
    return JSON.parse(bytes.toString("utf8"));
  } catch {
    throw new Refusal("input.invalid", `Cannot import ${file}: it is called a case file but can't be read as JSON`);
  }
}
