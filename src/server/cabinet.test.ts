import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { folderHash, type SampleBench, sampleBench } from "../../test/sample-bench.ts";
import { sampleParts } from "../../test/sample-case.ts";
import { cabinetBodies, putItem, removeItem } from "../../test/samples/cabinet.ts";
import { visitWithFiles } from "../../test/samples/visit-with-files.ts";
import { standardSeries } from "../record/cabinet/standard-series.ts";
import { firstSettings } from "../record/settings.ts";
import type { CabinetView, CaseView, ChangeLine, RefusalView } from "./api.ts";

let one: SampleBench;
beforeAll(async () => {
  one = await sampleBench();
  await one.bench.store.writeSettings({ ...firstSettings, who: "A. Writer" });
});
afterAll(() => one.close());

const get = async (): Promise<CabinetView> => (await one.ask({ url: "/api/cabinet" })).json<CabinetView>();
const post = (to: string, payload?: object) =>
  one.ask({ method: "POST", url: `/api/cabinet/${to}`, ...(payload === undefined ? {} : { payload }) });

describe("the cabinet over the API", () => {
  it("is empty at first, and nothing can be undone in it", async () => {
    expect(await get()).toEqual({ sequence: 0, items: [], shown: {}, files: {} });
    const undone = await post("undo");
    expect([undone.statusCode, undone.json<RefusalView>().code]).toEqual([409, "record.nothingToUndo"]);
  });

  it("takes gestures, shows what is computed, and undoes and redoes in words", async () => {
    await post("gestures", putItem("shaper", "instrument"));
    const view = (await post("gestures", putItem("file-1", "file"))).json<CabinetView>();
    expect(view.shown.shaper).toMatchObject({ output: { colour: "red", custom: false } });
    expect(view.files["file-1"]).toMatchObject({ uses: 0, sterilisations: 1, over: [] });
    expect(view.undo).toMatchObject({ sequence: 2, words: "file-1 put", who: "A. Writer", touched: ["file-1"] });
    const undone = (await post("undo", { sequence: 2 })).json<CabinetView>();
    expect(undone.items.map(({ id }) => id)).toEqual(["shaper"]);
    expect(undone.redo?.words).toBe("Undo: file-1 put");
    const redone = (await post("redo", { sequence: undone.redo?.sequence })).json<CabinetView>();
    expect(redone.items.map(({ id, revision }) => [id, revision])).toEqual([
      ["shaper", 1],
      ["file-1", 3],
    ]);
    const lines = (await one.ask({ url: "/api/cabinet/changes" })).json<ChangeLine[]>();
    expect(lines.map(({ words }) => words)).toEqual([
      "shaper put",
      "file-1 put",
      "Undo: file-1 put",
      "Redo: file-1 put",
    ]);
  });

  it("raises a file's tally with a visit that used it, and says which limit is passed", async () => {
    const about = sampleParts()[0]?.body;
    const { caseId } = (
      await one.ask({ method: "POST", url: "/api/cases", payload: { case: about } })
    ).json<CaseView>();
    const use = { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" } as const;
    const uses = ["MB1", "P"].map((canal) => ({
      ...{ ...use, canal, rpm: 300, seconds: 45, file: { id: "file-1", label: "S1" } },
    }));
    const body = visitWithFiles("2026-03-01", uses);
    const operations = [{ op: "put", id: "visit-1", kind: "visit", baseRevision: 0, body }];
    await one.ask({
      method: "POST",
      url: `/api/cases/${caseId}/gestures`,
      payload: { words: "Visit recorded", operations },
    });
    // 300 a minute for 45 s are 225 turns, in two canals 450; the sample's limit is 400.
    expect((await get()).files["file-1"]).toMatchObject({
      ...{ uses: 1, canals: 2, cases: 1, turnsNet: 450, turnsSwept: 450, untimed: 0, lastUsedOn: "2026-03-01" },
      over: [{ name: "turns", limit: 400, found: 450 }],
    });
  });

  it("takes the whole series of the standard in one gesture", async () => {
    const operations = standardSeries([]).map((body, index) => ({
      ...{ op: "put", id: `hand-${index}`, kind: "instrument", baseRevision: 0, body },
    }));
    const view = (await post("gestures", { words: "The standard's hand files added", operations })).json<CabinetView>();
    expect(view.items).toHaveLength(2 + 63);
    expect(Object.values(view.shown).every((told) => "output" in told && !told.output.custom)).toBe(true);
  });

  it("keeps an instrument that can't be, and says why in its place", async () => {
    const view = (
      await post("gestures", putItem("odd", "instrument", 0, { taper: 0.02, workingMm: 30 }))
    ).json<CabinetView>();
    expect(view.shown.odd).toEqual({ refused: [expect.stringContaining("workingMm: 30 is longer")] });
  });
});

it("takes out a file of which nothing is counted, and says of another to discard it", async () => {
  await post("gestures", putItem("file-2", "file", 0, { label: "S2", sterilisedOn: [] }));
  const gone = (await post("gestures", removeItem("file-2", "file", 1))).json<CabinetView>();
  expect(gone.items.map(({ id }) => id)).not.toContain("file-2");
  const kept = (await post("gestures", removeItem("file-1", "file", 3))).json<RefusalView>();
  expect(kept.message).toBe('Cannot record "file-1 removed": file S1 has uses: discard it, and it stays');
});

describe("bad input to the cabinet: a clear refusal, and the data folder as it was", () => {
  const { instrument } = cabinetBodies;
  const raw = (operation: object) => ({ words: "A try", operations: [operation] });
  it.each([
    ["nothing", "gestures", undefined, 400, "input.invalid", ""],
    ["no operation", "gestures", { words: "A try", operations: [] }, 400, "input.invalid", "operations"],
    [
      "an id that is none",
      "gestures",
      raw({ op: "put", id: "../x", kind: "instrument", baseRevision: 0, body: instrument }),
      400,
      "input.invalid",
      "operations[0].id",
    ],
    [
      "a wrong field of an instrument",
      "gestures",
      putItem("new", "instrument", 0, { taper: 2 }),
      400,
      "input.invalid",
      "operations[0].body.taper",
    ],
    [
      "a file of no instrument",
      "gestures",
      putItem("new", "file", 0, { instrument: "none" }),
      422,
      "input.impossible",
      "operations[0].body.instrument",
    ],
    [
      "an instrument taken out from under its file",
      "gestures",
      removeItem("shaper", "instrument", 1),
      422,
      "input.impossible",
      "operations[0].id",
    ],
    [
      "a file taken out that was used and sterilised",
      "gestures",
      removeItem("file-1", "file", 3),
      422,
      "input.impossible",
      "operations[0].id",
    ],
    ["what has changed since", "gestures", putItem("shaper", "instrument", 0), 409, "record.conflict", undefined],
    ["an undo of a change that is not at the top", "undo", { sequence: 1 }, 409, "record.conflict", undefined],
    ["an undo of no number", "undo", { sequence: "last" }, 400, "input.invalid", "sequence"],
    ["a redo of nothing", "redo", undefined, 409, "record.nothingToUndo", undefined],
  ] as const)("%s", async (_, to, payload, status, code, path) => {
    const before = folderHash(one.home);
    const reply = await post(to, payload);
    const refusal = reply.json<RefusalView>();
    expect([reply.statusCode, refusal.code, refusal.faults[0]?.path]).toEqual([status, code, path]);
    expect(folderHash(one.home)).toBe(before);
  });
});
