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
});
