import { type FileUse, type FileUseOfCase, fileUsesOf } from "../record/file-uses.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { Standing } from "../record/standing.ts";
import { ledgerFromRow } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import { inPortions } from "./in-portions.ts";
import type { FileUseRow } from "./tables.ts";

/** Writes the uses of counted files of a case anew from its parts. Called inside a transaction. */
export async function writeFileUses(db: Db, { caseId, parts }: Pick<Standing, "caseId" | "parts">): Promise<void> {
  await db.deleteFrom("fileUses").where("caseId", "=", caseId).execute();
  const rows = fileUsesOf(parts).map((use) => fileUseToRow(caseId, use));
  await inPortions(rows, (some) => db.insertInto("fileUses").values(some).execute());
}

/** A use of a counted file as a row of a case. */
export function fileUseToRow(caseId: string, { on, ...use }: FileUse): FileUseRow {
  return { caseId, ...use, day: on };
}

/** The uses of counted files in all cases, by case, visit and row. */
export async function readFileUses(db: Db): Promise<FileUseOfCase[]> {
  const rows = await db
    .selectFrom("fileUses")
    .innerJoin("caseFacts", "caseFacts.caseId", "fileUses.caseId")
    .selectAll("fileUses")
    .select("caseFacts.demo")
    .orderBy("fileUses.caseId")
    .orderBy("fileUses.visitId")
    .orderBy("fileUses.row")
    .execute();
  return rows.map(({ day, demo, ...use }) => ({ ...use, on: day, demo: demo !== 0 }));
}

/** The entries of one topic that hold now in the cases that used a counted file. */
export async function readEntriesOfFileUsers(db: Db, topic: string): Promise<LedgerEntry[]> {
  const rows = await db
    .selectFrom("ledgerCurrent")
    .innerJoin("ledgerEntries", (join) =>
      join
        .onRef("ledgerEntries.caseId", "=", "ledgerCurrent.caseId")
        .onRef("ledgerEntries.id", "=", "ledgerCurrent.entryId"),
    )
    .where("ledgerCurrent.caseId", "in", (from) => from.selectFrom("fileUses").select("caseId").distinct())
    .where("ledgerEntries.topic", "=", topic)
    .selectAll("ledgerEntries")
    .orderBy("ledgerCurrent.caseId")
    .orderBy("ledgerCurrent.place")
    .execute();
  return rows.map(ledgerFromRow);
}
