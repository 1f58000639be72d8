import { cpSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { putItem } from "../../test/samples/cabinet.ts";
import { recording } from "../../test/samples/gestures.ts";
import { temporaryFolder } from "../../test/samples/home.ts";
import { firstSettings } from "../record/settings.ts";
import { openStore } from "../store/open-store.ts";
import { demoOf } from "./demo.ts";

/** A program that ships the demo's cabinet and no cases. */
function shippedCabinet(): string {
  const shipped = temporaryFolder();
  mkdirSync(join(shipped, "data/demo/cases"), { recursive: true });
  cpSync("data/demo/cabinet.json", join(shipped, "data/demo/cabinet.json"));
  return shipped;
}

test("the demo's cabinet comes at the first start, goes with the demo, comes back when asked, and is no one's own", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  await store.writeSettings({ ...firstSettings, who: "A. Writer" });
  const own = putItem("mine", "instrument");
  await store.recordInCabinet(own, recording);
  const place = { store, deriveLedger: () => recording.deriveLedger, home, shipped: shippedCabinet(), say: () => {} };
  const demo = await demoOf(place);
  expect(demo.state()).toBe("loaded");
  const loaded = await store.cabinet();
  expect(loaded.items.length).toBeGreaterThan(10);
  expect(loaded.items.filter(({ body }) => body.demo !== true).map(({ id }) => id)).toEqual(["mine"]);
  expect((await store.cabinetChanges()).at(-1)).toMatchObject({ who: "A. Writer", words: "The demo's cabinet added" });
  await demo.load();
  expect((await store.cabinet()).sequence).toBe(loaded.sequence);
  await demo.remove();
  expect((await store.cabinet()).items.map(({ id }) => id)).toEqual(["mine"]);
  await demo.load();
  expect((await store.cabinet()).items.map(({ id, body }) => [id, body])).toEqual(
    loaded.items.map(({ id, body }) => [id, body]),
  );
  expect(await store.verify()).toEqual([]);
  await store.close();
});

test("a program that ships no cabinet loads its demo all the same", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  const place = { store, deriveLedger: () => recording.deriveLedger, home, shipped: home, say: () => {} };
  const demo = await demoOf(place);
  expect([demo.state(), (await store.cabinet()).items]).toEqual(["loaded", []]);
  await demo.remove();
  expect([demo.state(), (await store.cabinet()).sequence]).toEqual(["removed", 0]);
  await store.close();
});
