import { rename, writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { dueCalendar } from "../export/calendar/due-calendar.ts";
import { openStore } from "../store/open-store.ts";
import { recordHome } from "./record-home.ts";

/** `canalog due`: what is due as a calendar file without detail of a patient, written whole or not at all. */
export async function dueCommand({ to, demo = false }: { readonly to: string; readonly demo?: boolean }) {
  const { store } = await openStore(recordHome("write what is due"), { hold: "beside" });
  try {
    const now = new Date();
    const due = (await store.due({ today: dayHere(now) })).filter((one) => demo || !one.demo);
    const target = resolve(to);
    await writeFile(`${target}.part`, dueCalendar(due, now.toISOString()));
    await rename(`${target}.part`, target);
    console.log(`Written: ${target} (${due.length} due)`);
  } finally {
    await store.close();
  }
}

/** The day on this machine's own clock. */
function dayHere(now: Date): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
