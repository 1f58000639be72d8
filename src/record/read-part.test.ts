import { expect, test } from "vitest";
import { z } from "zod";
import { aboutBody } from "../../test/samples/gestures.ts";
import { definePart } from "./part.ts";
import { partTypes } from "./parts.ts";
import { kindOf, readPart } from "./read-part.ts";

const stored = { id: "about", kind: "case", version: 1, revision: 3, body: aboutBody };

test("a stored part is read in today's form", () => {
  expect(readPart(stored)).toEqual({ id: "about", kind: "case", revision: 3, body: aboutBody });
});

test("a part of a newer program is refused as newer, and one that does not fit with every fault", () => {
  expect(() => readPart({ ...stored, version: 2 })).toThrow(expect.objectContaining({ code: "record.newerVersion" }));
  const body = { ...aboutBody, tooth: "99", birthYear: 3000 };
  expect(() => readPart({ ...stored, body })).toThrow(
    expect.objectContaining({
      code: "input.invalid",
      faults: [expect.objectContaining({ path: "birthYear" }), expect.objectContaining({ path: "tooth" })],
    }),
  );
});

test.each(["thing", "", "constructor", "__proto__", "toString"])("%s is no kind", (kind) => {
  expect(() => kindOf(kind)).toThrow(expect.objectContaining({ code: "input.invalid" }));
});

test("every kind has a migration from each older version", () => {
  for (const [name, type] of Object.entries(partTypes)) {
    expect(type.kind).toBe(name);
    expect(type.migrations).toHaveLength(type.version - 1);
  }
});

test("a kind's type keeps its fields", () => {
  const body = z.strictObject({ a: z.number() });
  expect(definePart({ kind: "k", version: 1, body, migrations: [], single: true }).body).toBe(body);
});
