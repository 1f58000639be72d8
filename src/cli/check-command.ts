import { openStore } from "../store/open-store.ts";
import type { Store, UnusedFilm } from "../store/store.ts";
import { progressLine } from "./progress-line.ts";
import { recordHome } from "./record-home.ts";

/**
 * `canalog check`: verifies chains, states, facts, films and documents; exit 3 when anything is wrong. Names the kept films
 * that no change ever named; takes them away where that is asked and nothing is wrong.
 */
export async function checkCommand({ removeUnused = false }: { readonly removeUnused?: boolean } = {}): Promise<void> {
  const hold = removeUnused ? "alone" : "beside";
  const { store } = await openStore(recordHome("check the record"), { hold });
  try {
    const line = progressLine("Checking");
    const faults = await store.verify(line.show);
    for (const { what, where, says } of faults) console.log(`${what} ${where}: ${says}`);
    line.end(
      faults.length === 0
        ? `Checked ${(await store.cases()).length} cases with their films and documents: nothing wrong`
        : `Checked: ${faults.length} things are wrong, listed above; restore a backup or keep the folder as it is and ask for help`,
    );
    if (faults.length > 0) process.exitCode = 3;
    else await sayUnused(store, removeUnused);
  } finally {
    await store.close();
  }
}

/** What was kept and never used: an import that was refused or cut short after its pixels were kept. */
async function sayUnused(store: Store, remove: boolean): Promise<void> {
  const unused = await store.unusedFilms();
  if (unused.length === 0) return;
  if (!remove) {
    for (const { hash, keptAt } of unused) console.log(`film ${hash}, kept ${keptAt}: no change ever named it`);
    console.log(`${inAll(unused)}; \`canalog check --remove-unused\` takes them away while nothing runs`);
    return;
  }
  await store.removeUnusedFilms();
  console.log(`${inAll(unused)}: removed`);
}

function inAll(unused: readonly UnusedFilm[]): string {
  const megabytes = unused.reduce((sum, { bytes }) => sum + bytes, 0) / 1_000_000;
  return `${unused.length} unused ${unused.length === 1 ? "film" : "films"}, ${megabytes.toFixed(1)} MB`;
}
