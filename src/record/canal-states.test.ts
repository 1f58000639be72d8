import { describe, expect, it } from "vitest";
import { canalStatesOn } from "./canal-states.ts";
import type { Part } from "./parts.ts";

const anatomy = {
  id: "roots",
  kind: "anatomy",
  revision: 1,
  body: {
    roots: [
      { name: "MB", levels: [2, 1] },
      { name: "P", levels: [1] },
    ],
    foundBy: [],
    filledBefore: ["P"],
  },
} as unknown as Part;

const visit = (on: string, canals: { canal: string; state: string; blockedBy?: string }[]): Part =>
  ({ id: `visit-${on}`, kind: "visit", revision: 1, body: { on, canals } }) as unknown as Part;

describe("canalStatesOn", () => {
  it("calls a canal that no visit names not found, or filled where it came filled", () => {
    expect(canalStatesOn([anatomy])).toEqual({
      MB1: { state: "notFound" },
      MB2: { state: "notFound" },
      P: { state: "filled" },
    });
  });

  it("takes the latest visit up to the day, in whatever order the parts stand", () => {
    const parts = [
      visit("2024-03-20", [{ canal: "MB1", state: "filled" }]),
      anatomy,
      visit("2024-03-06", [{ canal: "MB1", state: "blocked", blockedBy: "piece of an instrument" }]),
    ];
    expect(canalStatesOn(parts, "2024-03-05").MB1).toEqual({ state: "notFound" });
    expect(canalStatesOn(parts, "2024-03-06").MB1).toEqual({ state: "blocked", with: "piece of an instrument" });
    expect(canalStatesOn(parts).MB1).toEqual({ state: "filled" });
  });

  it("says that nobody said what blocks a canal", () => {
    expect(canalStatesOn([visit("2024-03-06", [{ canal: "D", state: "blocked" }])]).D).toEqual({
      state: "blocked",
      with: "not said",
    });
  });

  it("puts a block into the third that the canal's last mishap up to the day names", () => {
    const mishap = (on: string, canal: string, third: string): Part =>
      ({ id: `mishap-${on}`, kind: "mishap", revision: 1, body: { on, canal, third } }) as unknown as Part;
    const parts = [
      visit("2024-03-06", [{ canal: "MB1", state: "blocked", blockedBy: "ledge" }]),
      mishap("2024-03-20", "MB1", "apical"),
      mishap("2024-03-06", "MB1", "middle"),
      mishap("2024-03-06", "P", "coronal"),
      mishap("2024-04-01", "MB1", "notRecorded"),
    ];
    expect(canalStatesOn(parts, "2024-03-06").MB1).toEqual({ state: "blocked", with: "ledge", at: 1 / 2 });
    expect(canalStatesOn(parts).MB1).toEqual({ state: "blocked", with: "ledge", at: 5 / 6 });
    expect(canalStatesOn(parts, "2024-03-05")).toEqual({});
  });

  it("takes a canal as an examination met it, before what a visit of that day did", () => {
    const findings = (takenOn: string, ...existing: { canal: string; is: string }[]): Part =>
      ({ id: `findings-${takenOn}`, kind: "findings", revision: 1, body: { takenOn, existing } }) as unknown as Part;
    const parts = [
      anatomy,
      visit("2024-03-06", [{ canal: "MB2", state: "shaped" }]),
      findings("2024-03-06", { canal: "MB1", is: "opened" }, { canal: "MB2", is: "untouched" }),
      findings("2024-09-06", { canal: "MB1", is: "medicated" }, { canal: "MB2", is: "opened" }),
      findings("2025-03-06", { canal: "MB1", is: "filled" }, { canal: "P", is: "untouched" }),
    ];
    const on = (day: string) => Object.values(canalStatesOn(parts, day)).map(({ state }) => state);
    expect(on("2024-03-05")).toEqual(["notFound", "notFound", "filled"]);
    expect(on("2024-03-06")).toEqual(["located", "shaped", "filled"]);
    expect(on("2024-09-06")).toEqual(["medicated", "shaped", "filled"]);
    expect(on("2025-03-06")).toEqual(["filled", "shaped", "filled"]);
  });
});
