import { describe, expect, it } from "vitest";
import { sampleWays } from "../../../../../test/sample-ways.ts";
import { entryName, ledgerLines, valueName } from "./ledger-lines.ts";

describe("an answer that is a list", () => {
  it("says how many ways are open and how many wait, and names each", () => {
    const lines = ledgerLines({ topic: "plan", output: sampleWays() });
    expect(entryName("plan")).toBe("Ways of this tooth");
    expect(lines.map(({ name, value }) => `${name}: ${value}`)).toEqual([
      "Ways of this tooth: 2 open, 1 to answer",
      "Retreatment: open",
      "Extraction: open",
      "Apical surgery: needs an answer first",
    ]);
  });

  it("says how many facts make a tooth harder, and each under what it makes harder", () => {
    const fact = { id: "bend", group: "shape", canal: "MB", says: "a bend of 31°", because: "it bends", value: 31 };
    const threshold = { value: 20, source: "known-2001", mark: "memory", is: "above" };
    const output = {
      ...{
        facts: [{ ...fact, threshold, lies: "above", by: 11 }],
        within: [],
        asked: [],
        cautions: [],
        notComputed: [],
      },
      basis: { formula: "rows", assumptions: [], sources: [] },
    };
    const lines = ledgerLines({ topic: "difficulty", output });
    expect(lines.map(({ name, value }) => `${name}: ${value}`)).toEqual([
      "What makes it harder: 1 fact",
      "Harder to shape: A bend of 31°",
    ]);
  });

  it("has no lines where it was refused or stands in an older form", () => {
    expect(ledgerLines({ topic: "plan", output: undefined })).toEqual([]);
    expect(ledgerLines({ topic: "difficulty", output: { facts: 3 } })).toEqual([]);
  });

  it("calls a value by its way and never by the field of the record", () => {
    expect(valueName("plan", "options[8].outcomes[0].events")).toBe("Retreatment, had it");
    expect(valueName("plan", "options[8].plain.chances[1].says")).toBe("Retreatment, to the patient");
    expect(valueName("plan", "options[11].plain.whatItIs[0]")).toBe("Extraction, to the patient");
  });
});
