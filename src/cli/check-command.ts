import { openStore } from "../store/open-store.ts";
import { progressLine } from "./progress-line.ts";
import { recordHome } from "./record-home.ts";

/** `canalog check`: verifies chains, states, facts, films and documents; exit 3 when anything is wrong. */
export async function checkCommand(): Promise<void> {
  const { store } = await openStore(recordHome("check the record"), { hold: "beside" });
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
  } finally {
    await store.close();
  }
}
