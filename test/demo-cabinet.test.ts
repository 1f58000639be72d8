import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { demoCabinet } from "../scripts/demo/cabinet/demo-cabinet.ts";
import { fileTallies, shownInstruments } from "../src/ledger/cabinet-read.ts";
import { cabinetPatchesOf } from "../src/record/cabinet/cabinet-change.ts";
import { cabinetGestureSchema } from "../src/record/cabinet/cabinet-gesture.ts";
import type { CabinetItem } from "../src/record/cabinet/cabinet-item.ts";
import { caseFileSchema } from "../src/record/case-file.ts";
import { apply } from "../src/record/change.ts";
import { type FileUseOfCase, fileUsesOf } from "../src/record/file-uses.ts";
import { type Part, partsOf } from "../src/record/parts.ts";
import { chainOf } from "../src/store/load-case-file.ts";

const gesture = cabinetGestureSchema.parse(JSON.parse(readFileSync("data/demo/cabinet.json", "utf8")));
const items = apply<CabinetItem>([], cabinetPatchesOf(gesture, []));
const cases: { caseId: string; parts: readonly Part[] }[] = readdirSync("data/demo/cases")
  .flatMap((name): unknown => JSON.parse(readFileSync(join("data/demo/cases", name), "utf8")))
  .map((file) => chainOf(caseFileSchema.parse(file)).after);
const uses: FileUseOfCase[] = cases.flatMap(({ caseId, parts }) =>
  fileUsesOf(parts).map((use) => ({ ...use, caseId, demo: true })),
);
const tallies = fileTallies({ items, uses, lives: [] });

describe("the demo's cabinet", () => {
  it("is what the generator makes, and all of it is marked", () => {
    const made = `${JSON.stringify(demoCabinet(), null, 1)}\n`;
    const shipped = readFileSync("data/demo/cabinet.json", "utf8");
    expect(shipped === made, "run node scripts/demo/make-cabinet.mjs").toBe(true);
    expect(items.every(({ body }) => body.demo === true)).toBe(true);
    const counts = (["instrument", "file", "sequence", "stock", "template"] as const).map(
      (of) => items.filter(({ kind }) => kind === of).length,
    );
    expect(counts).toEqual([10, 4, 2, 12, 2]);
  });

  it("has templates that offer only what the cabinet holds", () => {
    const stock = new Set(items.flatMap(({ kind, id }) => (kind === "stock" ? [id] : [])));
    const offered = items.flatMap((item) => (item.kind === "template" ? item.body.stock : []));
    expect(offered.length).toBeGreaterThan(10);
    expect(offered.filter((id) => !stock.has(id))).toEqual([]);
  });

  it("holds instruments that can be; one is of no size of the series", () => {
    const shown = Object.entries(shownInstruments(items));
    expect(shown.flatMap(([id, told]) => ("output" in told ? [] : [id]))).toEqual([]);
    expect(shown.flatMap(([id, told]) => ("output" in told && told.output.custom ? [id] : []))).toEqual(["demo-17-04"]);
  });

  // 39, 40 and 54 s at 300 turns a minute; 3, 3 and 4 canals.
  it("holds one file over two limits, and none other over any", () => {
    expect(tallies["demo-file-red-04-a"]).toMatchObject({ uses: 3, canals: 10, cases: 3, turnsNet: 665, untimed: 0 });
    expect(Object.entries(tallies).flatMap(([id, { over }]) => over.map((one) => ({ id, ...one })))).toEqual([
      { id: "demo-file-red-04-a", name: "uses", limit: 2, found: 3 },
      { id: "demo-file-red-04-a", name: "canals", limit: 8, found: 10 },
    ]);
    expect(tallies["demo-file-variable-a"]).toMatchObject({ uses: 0, turnsNet: 0 });
  });

  it("agrees with what the visits say stood against a file before them", () => {
    const named = cases.flatMap(({ caseId, parts }) =>
      partsOf(parts, "visit").flatMap(({ body }) =>
        body.instruments.flatMap(({ file }) => (file === undefined ? [] : [{ caseId, on: body.on, file }])),
      ),
    );
    expect(named.length).toBeGreaterThan(10);
    for (const { caseId, on, file } of named) {
      const stood = fileTallies({ items, uses: uses.filter((use) => use.on < on), lives: [] })[file.id];
      const item = items.find(({ id }) => id === file.id);
      const sterilised = item?.kind === "file" ? item.body.sterilisedOn.filter((day) => day <= on).length : undefined;
      expect(
        { uses: file.usesBefore, turns: file.turnsBefore, sterilisations: file.sterilisationsBefore },
        `${caseId} on ${on}: ${file.id}`,
      ).toEqual({ uses: stood?.uses, turns: stood?.turnsNet, sterilisations: sterilised });
    }
  });
});
