import { sealOf } from "./column-codecs.ts";
import type { Db, OpenDatabase } from "./dialect.ts";
import { tablesSteps } from "./migrations.ts";
import type { StoreFault } from "./store.ts";

/** What the database itself finds wrong with its tables and indexes. */
export function tableFaults({ integrityFaults }: OpenDatabase): StoreFault[] {
  const says = integritySays(integrityFaults);
  return says.map((one) => ({ what: "schema", where: "database", says: one }));
}

function integritySays(integrityFaults: () => string[]): string[] {
  try {
    return integrityFaults().slice(0, 20);
  } catch (error) {
    return [error instanceof Error ? error.message : "the database can't be read"];
  }
}

/** Rows of settings, exercises, tombstones and the tables' own version that are not what was written. */
export async function sealedRowFaults(db: Db): Promise<StoreFault[]> {
  const settings = await db.selectFrom("settings").selectAll().execute();
  const tombstones = await db.selectFrom("tombstones").selectAll().execute();
  const exercises = await db.selectFrom("exercises").selectAll().execute();
  const version = await db.selectFrom("meta").select("value").where("name", "=", "tablesVersion").executeTakeFirst();
  const known = String(tablesSteps.at(-1)?.version);
  const says = "its row is not what was written";
  return [
    ...settings.filter(isChanged).map(({ name }) => ({ what: "settings", where: name, says }) as const),
    ...missingExercise(settings, exercises),
    ...exercises.filter(isChanged).map(({ id }) => ({ what: "exercise", where: id, says }) as const),
    ...tombstones.filter(isChanged).map(({ caseId }) => ({ what: "tombstone", where: caseId, says }) as const),
    ...(version?.value === known
      ? []
      : [{ what: "schema", where: "meta", says: `its version is not ${known}` } as const]),
  ];
}

/** The settings name the exercise that the click's error was measured by. */
function missingExercise(
  settings: readonly { readonly name: string; readonly value: string }[],
  exercises: readonly { readonly id: string }[],
): StoreFault[] {
  return settings.flatMap(({ name, value }) => {
    const [, named] = /"exerciseId":"([^"]*)"/.exec(value) ?? [];
    if (named === undefined || exercises.some(({ id }) => id === named)) return [];
    return [{ what: "settings", where: name, says: `the exercise ${named} that they name is missing` }];
  });
}

function isChanged({ seal, ...row }: { readonly seal: string }): boolean {
  return sealOf(row) !== seal;
}
