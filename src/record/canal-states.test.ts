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

const bare = { ...anatomy, body: { ...anatomy.body, filledBefore: undefined } } as unknown as Part;

const findings = (takenOn: string, ...existing: { canal: string; is: string }[]): Part =>
  ({ id: `findings-${takenOn}`, kind: "findings", revision: 1, body: { takenOn, existing } }) as unknown as Part;

describe("canalStatesOn", () => {
  const awaited = { state: "notFound", looked: false };

  it("says that nobody has looked for a canal until the day of the first visit that names one", () => {
    const parts = [bare, visit("2024-03-05", []), visit("2024-03-06", [{ canal: "MB1", state: "located" }])];
    const before = { MB1: awaited, MB2: awaited, P: awaited };
    expect(canalStatesOn([bare])).toEqual(before);
    expect(canalStatesOn(parts, "2024-03-05")).toEqual(before);
    const after = { MB1: { state: "located" }, MB2: { state: "notFound" }, P: { state: "notFound" } };
    expect(canalStatesOn(parts, "2024-03-06")).toEqual(after);
    expect(canalStatesOn(parts)).toEqual(after);
  });

  it("takes a visit's word that a canal was not found, though it is the only one that it names", () => {
    const states = canalStatesOn([bare, visit("2024-03-06", [{ canal: "MB2", state: "notFound" }])]);
    expect(states.MB2).toEqual({ state: "notFound" });
  });

  it("takes a tooth as opened once an examination met a canal that is not untouched", () => {
    const untouched = findings("2024-03-05", { canal: "MB1", is: "untouched" });
    const opened = findings("2024-03-06", { canal: "MB1", is: "untouched" }, { canal: "P", is: "opened" });
    expect(canalStatesOn([bare, untouched])).toEqual({ MB1: awaited, MB2: awaited, P: awaited });
    expect(canalStatesOn([bare, untouched, opened], "2024-03-05").MB2).toEqual(awaited);
    expect(canalStatesOn([bare, untouched, opened])).toEqual({
      ...{ MB1: { state: "notFound" }, MB2: { state: "notFound" }, P: { state: "located" } },
    });
  });

  it("takes an empty list of canals that came filled as none", () => {
    const none = { ...anatomy, body: { ...anatomy.body, filledBefore: [] } } as unknown as Part;
    expect(canalStatesOn([none]).P).toEqual(awaited);
  });

  it("calls a canal that came filled so, and one that was passed by not found", () => {
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
