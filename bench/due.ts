import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "libsql";
import { visit } from "../scripts/demo/cases/usual-bodies.ts";
import { dueCalendar } from "../src/export/calendar/due-calendar.ts";
import { databaseFile } from "../src/store/migrate.ts";
import { openStore } from "../src/store/open-store.ts";
import { newCase, put, recording } from "../test/samples/gestures.ts";
import { machine, measured, millisecondsOf, tableOf } from "./timing.ts";

const cases = 10_000;

/** Prints how long what is due takes over ten thousand cases: the head's count, the whole list, a calendar file. */
export async function bench(): Promise<void> {
  const home = mkdtempSync(join(tmpdir(), "canalog-due-"));
  await fill(home);
  const { store } = await openStore(home);
  const today = "2026-11-30";
  const due = await store.due({ today });
  console.log(`${cases} cases owe ${due.length} things, seen from ${today}`);
  const times = (name: string, work: () => Promise<unknown>) => measured(name, "ms", 7, () => millisecondsOf(work));
  const all = [
    await times("what is due within a week", () => store.due({ today, until: "2026-12-06" })),
    await times("all that is due", () => store.due({ today })),
    await times("a calendar file of 1000", async () => dueCalendar(due.slice(0, 1000), recording.at)),
  ];
  console.log(`\n${tableOf(all)}\n\nOn ${machine()}.`);
  await store.close();
  rmSync(home, { recursive: true, force: true });
}

/** One case by the store, and its rows repeated on other days; nothing that lists read is left out. */
async function fill(home: string): Promise<void> {
  const { store } = await openStore(home);
  await store.createCase("case-0", newCase(), recording);
  const medicament = { kind: "calciumHydroxide", changeBy: "2026-03-20" } as const;
  const body = visit({ on: "2026-03-01", aim: "", nextOn: "2026-03-15", medicament });
  await store.record("case-0", put("visit-1", "visit", 0, body), recording);
  await store.close();
  const database = new Database(databaseFile(home));
  const counted = `WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < ${cases - 1})`;
  const later = (day: string) => `date(${day}, printf('%+d days', i % 700 - 200))`;
  database.exec(`${counted} INSERT INTO due_things (case_id, part_id, kind, day, asked_until)
    SELECT 'case-' || i, part_id, kind, ${later("day")}, ${later("asked_until")} FROM due_things, n`);
  for (const table of ["case_facts", "parts"]) {
    const columns = database.prepare(`SELECT name FROM pragma_table_info('${table}')`).all() as { name: string }[];
    const names = columns.map(({ name }) => name).filter((name) => name !== "case_id");
    database.exec(
      `${counted} INSERT INTO ${table} (case_id, ${names.join()}) SELECT 'case-' || i, ${names.join()} FROM ${table}, n`,
    );
  }
  database.close();
}
