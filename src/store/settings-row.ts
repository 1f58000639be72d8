import { randomUUID } from "node:crypto";
import { faultsOf } from "../core/faults-of.ts";
import { Refusal } from "../core/refusal.ts";
import { firstSettings, type Settings, settingsSchema, sumsDiffer } from "../record/settings.ts";
import { fromJsonText, sealOf, toJsonText } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";

const name = "settings";
/** Stands while ledgers have not all followed the settings; its value is another each time. */
const behind = "ledgersBehind";
/** Names the sums by which all ledgers were worked out last. */
const sums = "ledgerSums";

/**
 * The person's settings; those before anybody changed them where none were written. A field added since has its first
 * value.
 * @throws Refusal `store.corrupt` when the row is not what was written
 */
export async function readSettings(db: Db): Promise<Settings> {
  const row = await db.selectFrom("settings").select("value").where("name", "=", name).executeTakeFirst();
  if (row === undefined) return firstSettings;
  const parsed = settingsSchema.safeParse({ ...firstSettings, ...(fromJsonText(row.value) as Partial<Settings>) });
  if (parsed.success) return parsed.data;
  throw new Refusal("store.corrupt", "Cannot read the settings: their row has changed on disk; restore a backup");
}

/**
 * Writes the person's settings, and in the same transaction that ledgers are behind where sums rest on what changes.
 * @throws Refusal `input.invalid` with one fault for each thing that does not fit
 */
export async function writeSettings(db: Db, settings: Settings): Promise<void> {
  const parsed = settingsSchema.safeParse(settings);
  if (!parsed.success)
    throw new Refusal(
      "input.invalid",
      "Cannot keep the settings: they have faults",
      {},
      faultsOf(parsed.error, settings),
    );
  await db.transaction().execute(async (trx) => {
    if (sumsDiffer(await readSettings(trx), parsed.data)) await writeRow(trx, behind, randomUUID());
    await writeRow(trx, name, parsed.data);
  });
}

async function writeRow(db: Db, of: string, value: unknown): Promise<void> {
  const row = { name: of, value: toJsonText(value) };
  const sealed = { ...row, seal: sealOf(row) };
  await db
    .insertInto("settings")
    .values(sealed)
    .onConflict((it) => it.column("name").doUpdateSet(sealed))
    .execute();
}

/** Names the settings that ledgers have not all followed yet; undefined where they have. */
export async function readLedgersBehind(db: Db): Promise<string | undefined> {
  const row = await db.selectFrom("settings").select("value").where("name", "=", behind).executeTakeFirst();
  return row?.value;
}

/** Notes that all ledgers have followed the settings of that name; nothing where others came meanwhile. */
export async function noteLedgersFollow(db: Db, followed: string): Promise<void> {
  await db.deleteFrom("settings").where("name", "=", behind).where("value", "=", followed).execute();
}

/** Names the sums by which all ledgers were worked out last; undefined in a record that never noted it. */
export async function readLedgerSums(db: Db): Promise<string | undefined> {
  const row = await db.selectFrom("settings").select("value").where("name", "=", sums).executeTakeFirst();
  const noted = row === undefined ? undefined : fromJsonText(row.value);
  return typeof noted === "string" ? noted : undefined;
}

/** Notes by which sums all ledgers are worked out now. */
export const noteLedgerSums = (db: Db, done: string): Promise<void> => writeRow(db, sums, done);
