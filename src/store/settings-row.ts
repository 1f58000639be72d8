import { faultsOf } from "../core/faults-of.ts";
import { Refusal } from "../core/refusal.ts";
import { firstSettings, type Settings, settingsSchema } from "../record/settings.ts";
import { fromJsonText, sealOf, toJsonText } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";

const name = "settings";

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
 * Writes the person's settings.
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
  const row = { name, value: toJsonText(parsed.data) };
  const sealed = { ...row, seal: sealOf(row) };
  await db
    .insertInto("settings")
    .values(sealed)
    .onConflict((it) => it.column("name").doUpdateSet(sealed))
    .execute();
}
