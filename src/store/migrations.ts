import type { Kysely, Migration } from "kysely";

/** One numbered step of the tables; step n turns version n - 1 into version n and is never changed once released. */
export interface TablesStep {
  readonly version: number;
  readonly up: Migration["up"];
}

/** The steps of the tables, first to last. Text, integer and real only: PostgreSQL reads the same statements. */
export const tablesSteps: readonly TablesStep[] = [
  {
    version: 1,
    up: async (db) => {
      await chainTables(db);
      await factsTable(db);
      await ledgerTables(db);
      await fileTables(db);
    },
  },
  { version: 2, up: exercisesTable },
  { version: 3, up: cabinetTables },
  { version: 4, up: dueTable },
];

/** Exercises of the calibration room. */
async function exercisesTable(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("exercises")
    .addColumn("id", "text", (c) => c.primaryKey())
    .addColumn("at", "text", (c) => c.notNull())
    .addColumn("row", "text", (c) => c.notNull())
    .addColumn("seal", "text", (c) => c.notNull())
    .execute();
}

/** What cases owe, by day. */
async function dueTable(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("due_things")
    .addColumn("case_id", "text", (c) => c.notNull())
    .addColumn("part_id", "text", (c) => c.notNull())
    .addColumn("kind", "text", (c) => c.notNull())
    .addColumn("day", "text", (c) => c.notNull())
    .addColumn("asked_until", "text")
    .addPrimaryKeyConstraint("due_things_key", ["case_id", "part_id", "kind"])
    .execute();
  await db.schema.createIndex("due_things_day").on("due_things").column("day").execute();
}

/** The clinic's cabinet, and what cases say of its counted files. */
async function cabinetTables(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("cabinet_changes")
    .addColumn("sequence", "integer", (c) => c.primaryKey())
    .addColumn("at", "text", (c) => c.notNull())
    .addColumn("who", "text", (c) => c.notNull())
    .addColumn("words", "text", (c) => c.notNull())
    .addColumn("patches", "text", (c) => c.notNull())
    .addColumn("inverts", "integer")
    .addColumn("previous_hash", "text", (c) => c.notNull())
    .addColumn("hash", "text", (c) => c.notNull())
    .execute();
  await db.schema
    .createTable("cabinet_items")
    .addColumn("id", "text", (c) => c.primaryKey())
    .addColumn("place", "integer", (c) => c.notNull())
    .addColumn("kind", "text", (c) => c.notNull())
    .addColumn("version", "integer", (c) => c.notNull())
    .addColumn("revision", "integer", (c) => c.notNull())
    .addColumn("body", "text")
    .execute();
  await db.schema
    .createTable("file_uses")
    .addColumn("case_id", "text", (c) => c.notNull())
    .addColumn("visit_id", "text", (c) => c.notNull())
    .addColumn("row", "integer", (c) => c.notNull())
    .addColumn("file_id", "text", (c) => c.notNull())
    .addColumn("day", "text", (c) => c.notNull())
    .addColumn("canal", "text")
    .addColumn("seconds", "double precision")
    .addColumn("turns_net", "double precision")
    .addColumn("turns_swept", "double precision")
    .addPrimaryKeyConstraint("file_uses_key", ["case_id", "visit_id", "row"])
    .execute();
}

async function chainTables(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("meta")
    .addColumn("name", "text", (c) => c.primaryKey())
    .addColumn("value", "text", (c) => c.notNull())
    .execute();
  await db.schema
    .createTable("changes")
    .addColumn("case_id", "text", (c) => c.notNull())
    .addColumn("sequence", "integer", (c) => c.notNull())
    .addColumn("at", "text", (c) => c.notNull())
    .addColumn("who", "text", (c) => c.notNull())
    .addColumn("words", "text", (c) => c.notNull())
    .addColumn("patches", "text", (c) => c.notNull())
    .addColumn("inverts", "integer")
    .addColumn("previous_hash", "text", (c) => c.notNull())
    .addColumn("hash", "text", (c) => c.notNull())
    .addPrimaryKeyConstraint("changes_key", ["case_id", "sequence"])
    .execute();
  await db.schema
    .createTable("parts")
    .addColumn("case_id", "text", (c) => c.notNull())
    .addColumn("id", "text", (c) => c.notNull())
    .addColumn("place", "integer", (c) => c.notNull())
    .addColumn("kind", "text", (c) => c.notNull())
    .addColumn("version", "integer", (c) => c.notNull())
    .addColumn("revision", "integer", (c) => c.notNull())
    .addColumn("body", "text", (c) => c.notNull())
    .addPrimaryKeyConstraint("parts_key", ["case_id", "id"])
    .execute();
  await db.schema
    .createTable("part_revisions")
    .addColumn("case_id", "text", (c) => c.notNull())
    .addColumn("id", "text", (c) => c.notNull())
    .addColumn("revision", "integer", (c) => c.notNull())
    .addPrimaryKeyConstraint("part_revisions_key", ["case_id", "id"])
    .execute();
}

async function factsTable(db: Kysely<unknown>): Promise<void> {
  let table = db.schema.createTable("case_facts").addColumn("case_id", "text", (c) => c.primaryKey());
  for (const name of ["pseudonym", "sex", "tooth", "treatment", "presented_on", "last_on"])
    table = table.addColumn(name, "text", (c) => c.notNull());
  for (const name of ["birth_year", "demo", "visits", "films", "mishaps", "canals"])
    table = table.addColumn(name, "integer", (c) => c.notNull());
  for (const name of ["pulpal", "apical", "filled_on", "last_recall_on", "symptoms", "next_on", "help"])
    table = table.addColumn(name, "text");
  await table
    .addColumn("filling_end_mm", "double precision")
    .addColumn("last_score", "integer")
    .addColumn("retained", "integer")
    .execute();
  for (const name of ["last_on", "tooth", "pseudonym", "next_on", "demo"])
    await db.schema.createIndex(`case_facts_${name}`).on("case_facts").column(name).execute();
}

async function ledgerTables(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("ledger_entries")
    .addColumn("case_id", "text", (c) => c.notNull())
    .addColumn("id", "text", (c) => c.notNull())
    .addColumn("subject", "text", (c) => c.notNull())
    .addColumn("topic", "text", (c) => c.notNull())
    .addColumn("topic_version", "integer", (c) => c.notNull())
    .addColumn("input", "text", (c) => c.notNull())
    .addColumn("input_paths", "text", (c) => c.notNull())
    .addColumn("output", "text")
    .addColumn("refused", "text")
    .addColumn("at", "text", (c) => c.notNull())
    .addColumn("seal", "text", (c) => c.notNull())
    .addPrimaryKeyConstraint("ledger_entries_key", ["case_id", "id"])
    .execute();
  await db.schema.createIndex("ledger_entries_id").on("ledger_entries").column("id").execute();
  await db.schema
    .createTable("ledger_current")
    .addColumn("case_id", "text", (c) => c.notNull())
    .addColumn("place", "integer", (c) => c.notNull())
    .addColumn("entry_id", "text", (c) => c.notNull())
    .addPrimaryKeyConstraint("ledger_current_key", ["case_id", "place"])
    .addForeignKeyConstraint("ledger_current_entry", ["case_id", "entry_id"], "ledger_entries", ["case_id", "id"])
    .execute();
}

async function fileTables(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("films")
    .addColumn("hash", "text", (c) => c.primaryKey())
    .addColumn("bytes", "bigint", (c) => c.notNull())
    .addColumn("kept_at", "text", (c) => c.notNull())
    .addColumn("seal", "text", (c) => c.notNull())
    .execute();
  await db.schema
    .createTable("film_uses")
    .addColumn("case_id", "text", (c) => c.notNull())
    .addColumn("hash", "text", (c) => c.notNull().references("films.hash"))
    .addPrimaryKeyConstraint("film_uses_key", ["case_id", "hash"])
    .execute();
  await db.schema.createIndex("film_uses_hash").on("film_uses").column("hash").execute();
  await db.schema
    .createTable("documents")
    .addColumn("id", "text", (c) => c.primaryKey())
    .addColumn("case_id", "text", (c) => c.notNull())
    .addColumn("at", "text", (c) => c.notNull())
    .addColumn("row", "text", (c) => c.notNull())
    .addColumn("seal", "text", (c) => c.notNull())
    .execute();
  await db.schema.createIndex("documents_case_id").on("documents").column("case_id").execute();
  await db.schema
    .createTable("settings")
    .addColumn("name", "text", (c) => c.primaryKey())
    .addColumn("value", "text", (c) => c.notNull())
    .addColumn("seal", "text", (c) => c.notNull())
    .execute();
  await db.schema
    .createTable("tombstones")
    .addColumn("case_id", "text", (c) => c.notNull())
    .addColumn("head_hash", "text", (c) => c.notNull())
    .addColumn("at", "text", (c) => c.notNull())
    .addColumn("who", "text", (c) => c.notNull())
    .addColumn("seal", "text", (c) => c.notNull())
    .addPrimaryKeyConstraint("tombstones_key", ["case_id", "head_hash"])
    .execute();
  await db.schema
    .createTable("unfinished_files")
    .addColumn("path", "text", (c) => c.primaryKey())
    .execute();
}
