import { Refusal } from "../core/refusal.ts";
import type { Settings } from "../record/settings.ts";
import type { Bench } from "./bench.ts";

/** Hears how many of all cases have followed. */
type Following = (done: number, all: number) => void;

type Place = Pick<Bench, "store" | "deriveLedger" | "ending">;

/** Keeps settings, and lets the sums of every case follow those that they rest on; entries that held before stay stored. */
export async function writeSettings(place: Place, next: Settings, following?: Following): Promise<void> {
  const before = await place.store.ledgersBehind();
  await place.store.writeSettings(next);
  if ((await place.store.ledgersBehind()) !== before) await followSettings(place, following);
}

/** Lets the ledgers follow the settings where they have not all done so; cut short, the next start goes on. */
export async function followSettings(
  { store, deriveLedger, ending }: Place,
  following: Following = () => undefined,
): Promise<void> {
  const behind = await store.ledgersBehind();
  if (behind === undefined) return;
  // What sums rest on is of marks on films: a case without a film has no sum that does.
  const cases = (await store.cases()).filter(({ films }) => films > 0);
  if (await refreshEach(cases, { store, deriveLedger, ending }, following)) await store.noteLedgersFollow(behind);
}

/**
 * Lets every ledger hold the sums that this program does, where the last one did others; cut short, the next start goes on.
 * Entries that are known stay as they are.
 */
export async function followSums({ store, deriveLedger, ending }: Place, done: string): Promise<void> {
  if ((await store.ledgerSums()) === done) return;
  if (await refreshEach(await store.cases(), { store, deriveLedger, ending })) await store.noteLedgerSums(done);
}

/** Works these ledgers out anew, one after the other; says whether it came to the end. */
async function refreshEach(
  cases: readonly { readonly caseId: string }[],
  { store, deriveLedger, ending }: Place,
  following: Following = () => undefined,
): Promise<boolean> {
  for (const [index, { caseId }] of cases.entries()) {
    if (ending.aborted) return false;
    await store.refreshLedger(caseId, deriveLedger()).catch(unlessGone);
    following(index + 1, cases.length);
    // Whoever waits for something else is served between two cases.
    await new Promise((resolve) => setImmediate(resolve));
  }
  return true;
}

/** A case may be removed while others follow. */
function unlessGone(thrown: unknown): void {
  if (!(thrown instanceof Refusal) || thrown.code !== "record.notFound") throw thrown;
}
