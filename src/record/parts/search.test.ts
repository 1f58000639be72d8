import { describe, expect, it } from "vitest";
import { patchesOf } from "../change.ts";
import type { Part } from "../parts.ts";
import { searchPart } from "./search.ts";

const faults = (body: unknown) =>
  searchPart.body.safeParse(body).error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
const look = { on: "2024-03-04", kind: "cbct", result: "seen", note: "" };
const one = (change: object) => ({ feature: "secondMesiobuccal", looks: [{ ...look, ...change }] });

describe("a search for a hidden canal", () => {
  it("holds looks in their order, with the person's own figures", () => {
    const trough = { ...look, kind: "troughing", result: "notSeen", depthMm: 1.5, sensitivity: 0.8, specificity: 1 };
    const body = {
      ...{ feature: "middleMesial", population: "China", wallKnownMm: 1.2, lessWasNotEnough: "The floor is covered." },
      looks: [look, { ...trough, from: "our own forty teeth" }, { ...look, kind: "lesionOnOneRoot", result: "yes" }],
    };
    expect(searchPart.body.parse(body)).toEqual(body);
    expect(searchPart.body.parse({ feature: "cShaped", looks: [] })).toEqual({ feature: "cShaped", looks: [] });
  });

  it.each([
    ["a look that is yes", one({ result: "yes" }), "looks.0.result: is no result of cbct; seen or notSeen is"],
    [
      "a sign that is seen",
      one({ kind: "offCentreInstrument" }),
      "looks.0.result: is no result of offCentreInstrument; yes or no is",
    ],
    ["a depth of no trough", one({ depthMm: 1 }), "looks.0.depthMm: is a depth of troughing, not of cbct"],
  ])("refuses %s", (_, body, says) => {
    expect(faults(body)).toEqual([says]);
  });

  it.each([
    one({ sensitivity: 87 }),
    one({ specificity: -0.1 }),
    one({ kind: "guess" }),
    one({ kind: "troughing", depthMm: 6 }),
    one({ on: "yesterday" }),
    { feature: "fourthRoot", looks: [] },
    { feature: "thirdRoot", looks: [], wallKnownMm: -1 },
    { feature: "thirdRoot", looks: Array.from({ length: 41 }, () => look) },
  ])("refuses what lies outside its form: %o", (body) => {
    expect(faults(body)).toHaveLength(1);
  });
});

describe("a case", () => {
  const put = (id: string, feature: string, revision = 0) =>
    ({ op: "put", id, kind: "search", baseRevision: revision, body: { feature, looks: [] } }) as const;
  const standing = [
    { id: "search-1", kind: "search", revision: 1, body: { feature: "thirdRoot", looks: [] } },
  ] as unknown as readonly Part[];

  it("has one search for each thing that may hide", () => {
    const words = "a search begun";
    expect(patchesOf({ words, operations: [put("search-2", "secondDistal")] }, standing)).toHaveLength(1);
    expect(() => patchesOf({ words, operations: [put("search-2", "thirdRoot")] }, standing)).toThrow(
      "Cannot record a second search for thirdRoot: add the look to the first",
    );
    // Turned into a search for the other thing, while the other takes its place: none stands twice.
    const both = [...standing, { ...standing[0], id: "search-2", body: { feature: "secondDistal", looks: [] } }];
    const swap = [put("search-1", "secondDistal", 1), put("search-2", "thirdRoot", 1)];
    expect(patchesOf({ words, operations: swap }, both as readonly Part[])).toHaveLength(2);
  });
});
