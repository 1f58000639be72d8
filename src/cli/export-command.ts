import { rename, writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { faultAt } from "../core/refusal.ts";
import { documentKinds } from "../record/document-kind.ts";
import { comparingHere } from "../server/comparing/comparing-here.ts";
import { comparisonsOn } from "../server/comparing/comparisons.ts";
import { pictureCache } from "../server/comparing/picture-cache.ts";
import { documentsHere } from "../server/documents/documents-aside.ts";
import { makeJobs } from "../server/jobs.ts";
import { ledgerBy } from "../server/ledger-by.ts";
import { sumsHere } from "../server/sums/sums.ts";
import { writeDocument } from "../server/write-document.ts";
import { openStore } from "../store/open-store.ts";
import { progressLine } from "./progress-line.ts";
import { recordHome } from "./record-home.ts";
import { shipped } from "./shipped.ts";

/** `canalog export CASE --as deck|handout|consent|piece|letter`: a document, written whole or not at all. */
export async function exportCommand(caseId: string, options: { as: string; to?: string }): Promise<void> {
  const as = documentKinds.find((kind) => kind === options.as);
  if (as === undefined)
    throw faultAt("--as", `"${options.as}" is none of ${documentKinds.join(", ")}`, "input.invalid");
  const home = recordHome(`make a ${as}`);
  const { store } = await openStore(home, { hold: "beside" });
  try {
    const line = progressLine("Writing");
    const now = (): string => new Date().toISOString();
    const cache = pictureCache(home);
    const deriveLedger = ledgerBy(sumsHere.do);
    const comparisons = comparisonsOn({ store, deriveLedger, jobs: makeJobs(), comparing: comparingHere, cache, now });
    const place = { store, shipped, now, comparisons, documents: documentsHere };
    const row = await writeDocument(place, { caseId, as }, (fraction) => line.show(Math.round(fraction * 100), 100));
    const { bytes } = await store.readDocument(row.id);
    const target = resolve(options.to ?? row.fileName);
    await writeFile(`${target}.part`, bytes);
    await rename(`${target}.part`, target);
    line.end(`Written: ${target}`);
  } finally {
    await store.close();
  }
}
