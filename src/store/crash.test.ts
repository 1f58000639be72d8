import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { temporaryFolder } from "../../test/samples/home.ts";
import { buildProgram, killWriter } from "../../test/soak/kill-writer.ts";
import { openDatabase } from "./dialect.ts";
import { noteUnfinished } from "./film-rows.ts";
import { writeKeptFile } from "./kept-files.ts";
import { databaseFile } from "./migrate.ts";
import { openStore } from "./open-store.ts";

/** Four in the tests; more when asked for. */
const kills = Number(process.env.CANALOG_SOAK_KILLS ?? 4);

test(
  "a writer that is killed loses nothing that it acknowledged, and its chains are whole",
  async () => {
    const writer = await buildProgram("writer");
    const home = join(temporaryFolder(), "home");
    let acknowledged = 0;
    for (let kill = 0; kill < kills; kill += 1) {
      // Moments spread over 0 to 250 ms without any order that the writer's own rhythm could hide in.
      const afterMs = (kill * 97) % 251;
      const said = await killWriter(writer, home, afterMs);
      const { store, recovered } = await openStore(home);
      expect(recovered[0]).toContain("had not closed the record");
      const chain = new Map((await store.changes("case-1")).map(({ sequence, hash }) => [String(sequence), hash]));
      const cabinet = new Map((await store.cabinetChanges()).map(({ sequence, hash }) => [String(sequence), hash]));
      for (const line of said) {
        const [what, name = "", hash] = line.split(" ");
        if (what === "change") expect(chain.get(name)).toBe(hash);
        else if (what === "cabinet") expect(cabinet.get(name)).toBe(hash);
        else await store.readFilm(name);
        acknowledged += 1;
      }
      expect(await store.verify()).toEqual([]);
      await store.close();
    }
    rmSync(writer);
    expect(acknowledged).toBeGreaterThan(2 * kills);
  },
  60_000 + kills * 3_000,
);

test("what a crash left of files is removed at the next start, and said", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  const hash = await store.keepFilm(new Uint8Array([1, 2, 3]));
  await store.close();
  const cutShort = `films/00/${"0".repeat(64)}`;
  await writeKeptFile(home, cutShort, new Uint8Array([1]));
  writeFileSync(join(home, `${cutShort}.part`), "half");
  const database = openDatabase(databaseFile(home));
  await noteUnfinished(database.db, [cutShort]);
  await database.close();
  const again = await openStore(home);
  expect(again.recovered).toEqual([
    "1 half-written file left by a write that was cut short: removed.",
    "1 file that no case names (import or removal cut short): removed.",
  ]);
  expect(await again.store.verify()).toEqual([]);
  expect(await again.store.readFilm(hash)).toEqual(Buffer.from([1, 2, 3]));
  await again.store.close();
  const third = await openStore(home);
  expect(third.recovered).toEqual([]);
  await third.store.close();
});
