import type { Settings } from "../record/settings.ts";
import type { Bench } from "./bench.ts";

/** Hears how many of all cases have followed. */
type Following = (done: number, all: number) => void;

/** Keeps settings, and lets the sums of every case follow those that they rest on; entries that held before stay stored. */
export async function writeSettings(
  bench: Bench,
  next: Settings,
  following: Following = () => undefined,
): Promise<void> {
  const before = await bench.store.settings();
  await bench.store.writeSettings(next);
  if (before.clickSigmaPx === next.clickSigmaPx && before.stopShortMm === next.stopShortMm) return;
  const derive = await bench.deriveLedger();
  // Both settings are of marks on films: a case without a film has no sum that rests on them.
  const cases = (await bench.store.cases()).filter(({ films }) => films > 0);
  for (const [index, { caseId }] of cases.entries()) {
    await bench.store.refreshLedger(caseId, derive);
    following(index + 1, cases.length);
    // Whoever waits for something else is served between two cases.
    await new Promise((resolve) => setImmediate(resolve));
  }
}
