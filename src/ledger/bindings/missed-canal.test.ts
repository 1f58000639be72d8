import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../../test/sample-case.ts";
import type { BodyOf, Part } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { deriveLedger } from "../derive-ledger.ts";
import { missedCanalBinding } from "./missed-canal.ts";

const search = (change: Partial<BodyOf<"search">> = {}, id = "search-1"): Part =>
  part("search", id, { feature: "secondMesiobuccal", looks: [], ...change });

const look = (change: Partial<BodyOf<"search">["looks"][number]> = {}): BodyOf<"search">["looks"][number] => ({
  ...{ on: "2024-03-04", kind: "cbct", result: "notSeen", note: "smallest field" },
  ...change,
});

const derived = (parts: readonly Part[]) =>
  deriveLedger(
    { caseId: "case-sample", parts, settings: firstSettings, at: "2024-10-01T10:00:00Z", known: () => undefined },
    [missedCanalBinding],
  );

describe("a search for a hidden canal", () => {
  it("is one question, with the path of each value", () => {
    const looks = [
      look(),
      look({ kind: "troughing", depthMm: 1, sensitivity: 0.8, specificity: 0.99, from: "own ten" }),
    ];
    const asked = search({ population: "China", wallKnownMm: 1.4, lessWasNotEnough: "The floor is covered.", looks });
    const [entry, ...others] = derived([...sampleParts(), asked]);
    expect(others).toEqual([]);
    expect(entry?.subject).toBe("missedCanal of search-1");
    expect(entry?.input).toEqual({
      tooth: "26",
      feature: "secondMesiobuccal",
      population: "China",
      wallKnownMm: 1.4,
      lessWasNotEnough: "The floor is covered.",
      evidence: [
        { kind: "cbct", result: "notSeen" },
        { kind: "troughing", result: "notSeen", depthMm: 1, sensitivity: 0.8, specificity: 0.99, from: "own ten" },
      ],
    });
    expect(entry?.inputPaths).toEqual([
      { input: "tooth", record: "about/tooth" },
      { input: "feature", record: "search-1/feature" },
      { input: "population", record: "search-1/population" },
      { input: "wallKnownMm", record: "search-1/wallKnownMm" },
      { input: "lessWasNotEnough", record: "search-1/lessWasNotEnough" },
      { input: "evidence[0]", record: "search-1/looks/0" },
      { input: "evidence[1]", record: "search-1/looks/1" },
    ]);
    expect(entry?.output).toMatchObject({ steps: [{ evidence: 0 }, { evidence: 1 }] });
  });

  it("takes a field that was emptied again as absent", () => {
    const [entry] = derived([
      ...sampleParts(),
      search({ population: "", lessWasNotEnough: "", looks: [look({ from: "" })] }),
    ]);
    expect(entry?.input).toEqual({
      ...{ tooth: "26", feature: "secondMesiobuccal" },
      evidence: [{ kind: "cbct", result: "notSeen" }],
    });
    expect(entry?.output).toBeDefined();
  });

  it("is asked for each search, and of no case without one or without a tooth", () => {
    const two = [search(), search({ feature: "thirdRoot" }, "search-2")];
    const entries = derived([...sampleParts(), ...two]);
    expect(entries.map(({ subject }) => subject)).toEqual(["missedCanal of search-1", "missedCanal of search-2"]);
    expect(entries[1]?.refused?.[0]).toContain("feature: the upper left first molar can't have a third root");
    expect(derived(sampleParts())).toEqual([]);
    expect(derived([search()])).toEqual([]);
  });

  it("keeps its entry when a note or a day is mended", () => {
    const before = derived([...sampleParts(), search({ looks: [look()] })])[0];
    const after = derived([...sampleParts(), search({ looks: [look({ on: "2024-03-05", note: "" })] })])[0];
    expect(after?.id).toBe(before?.id);
  });
});
