import { inBrowser } from "./in-browser.ts";
import { startUp } from "./start-up.ts";
import { machine, tableOf } from "./timing.ts";

/** Measures what a person waits for, and prints it with the machine's name. */
export async function bench(): Promise<void> {
  const where = machine();
  const all = [...(await startUp()), ...(await inBrowser())];
  console.log(`\n${tableOf(all)}\n\nOn ${where}; browser without a graphics card.`);
}
