import { type Due, type DueOfCase, dueOf } from "../record/due.ts";
import type { Standing } from "../record/standing.ts";
import type { Db } from "./dialect.ts";
import { inPortions } from "./in-portions.ts";
import type { DueRow } from "./tables.ts";

/** From which day what is due is seen, and how far it is looked ahead; without an end, all of it. */
export interface DueAsked {
  readonly today: string;
  readonly until?: string | undefined;
}

/** Writes what a case owes anew from its parts. Called inside a transaction. */
export async function writeDue(db: Db, { caseId, parts }: Pick<Standing, "caseId" | "parts">): Promise<void> {
  await db.deleteFrom("dueThings").where("caseId", "=", caseId).execute();
  const rows = dueOf(parts).map((due) => dueToRow(caseId, due));
  await inPortions(rows, (some) => db.insertInto("dueThings").values(some).execute());
}

/** A thing that is due as a row of a case. */
export function dueToRow(caseId: string, { on, ...due }: Due): DueRow {
  return { caseId, ...due, day: on };
}

/** What is due in all cases, by day; what is no longer asked for on that day is left out. */
export async function readDue(db: Db, { today, until }: DueAsked): Promise<DueOfCase[]> {
  const rows = await db
    .selectFrom("dueThings")
    .innerJoin("caseFacts", "caseFacts.caseId", "dueThings.caseId")
    .innerJoin("parts", (join) =>
      join.onRef("parts.caseId", "=", "dueThings.caseId").onRef("parts.id", "=", "dueThings.partId"),
    )
    .select(["dueThings.caseId", "dueThings.partId", "dueThings.kind", "dueThings.day", "parts.revision"])
    .select(["caseFacts.pseudonym", "caseFacts.tooth", "caseFacts.demo"])
    .where((where) => where.or([where("askedUntil", "is", null), where("askedUntil", ">=", today)]))
    .$if(until !== undefined, (query) => query.where("dueThings.day", "<=", until ?? ""))
    .orderBy("dueThings.day")
    .orderBy("dueThings.caseId")
    .orderBy("dueThings.partId")
    .orderBy("dueThings.kind")
    .execute();
  return rows.map(({ day, demo, ...due }) => ({ ...due, on: day, demo: demo !== 0 }));
}
