import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { filmImportSchema } from "../../../server/api.ts";
import { importQuery, largestFile, refusedFile } from "./import-query.ts";

const picture = { columns: 1054, rows: 640 };
const choice = { takenOn: "2026-03-12", purpose: "diagnostic", invert: true } as const;
const readBack = (query: string) => filmImportSchema.parse(Object.fromEntries(new URLSearchParams(query)));

describe("the question that goes with a film", () => {
  it("is what the API reads, with a crop or without, whatever the file is called", () => {
    const side = fc.integer({ min: 24, max: 500 });
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), fc.option(fc.tuple(side, side)), (name, sides) => {
        const crop = sides === null ? undefined : { column: 3, row: 5, columns: sides[0], rows: sides[1] };
        const read = readBack(importQuery(name, { ...choice, crop }, picture));
        expect(read).toMatchObject({ takenOn: "2026-03-12", purpose: "diagnostic", invert: "yes" });
        expect(read.cropColumns).toBe(crop?.columns);
        expect(read.cropRow).toBe(crop?.row);
      }),
    );
  });

  it("names no crop where the whole picture is meant", () => {
    const read = readBack(importQuery("a.png", { ...choice, crop: { column: 0, row: 0, ...picture } }, picture));
    expect(read.cropColumns).toBeUndefined();
  });
});

describe("a file seen from outside", () => {
  it("is refused in words where it is empty or too large, before it is sent", () => {
    expect(refusedFile({ name: "a.png", size: 0 })).toContain("empty");
    expect(refusedFile({ name: "a.png", size: largestFile + 1 })).toContain("a film may have 256");
    expect(refusedFile({ name: "a.png", size: largestFile })).toBeUndefined();
    expect(refusedFile({ name: "a.png", size: 1 })).toBeUndefined();
  });
});
