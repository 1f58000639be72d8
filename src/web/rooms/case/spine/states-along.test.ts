import { describe, expect, it } from "vitest";
import type { Part } from "../../../../record/parts.ts";
import { canalRowAtStart, newBodies } from "../new-bodies.ts";
import { spineMoments } from "./spine-moments.ts";
import { statesAlong } from "./states-along.ts";

const part = (id: string, kind: string, body: unknown): Part => ({ id, kind, revision: 1, body }) as Part;
const about = part("case-1", "case", { presentedOn: "2024-02-20", treatment: "retreatment" });
const roots = part("roots-1", "anatomy", {
  roots: [
    { name: "MB", levels: [1] },
    { name: "P", levels: [1] },
  ],
  foundBy: [],
  filledBefore: ["P"],
});
const visit = (id: string, on: string, state: "shaped" | "filled") =>
  part(id, "visit", { ...newBodies.visit(on, {}), canals: [{ ...canalRowAtStart("MB"), state }] });
const recall = (on: string) => part(`recall-${on}`, "recall", newBodies.recall(on));
const along = (parts: readonly Part[]) => statesAlong(parts, spineMoments(parts, null, "2026-01-01"));

describe("the canals along the spine", () => {
  it("stand at each moment as its day left them", () => {
    const states = along([about, roots, visit("v-a", "2024-03-05", "shaped"), visit("v-b", "2024-03-19", "filled")]);
    expect([...states.values()].map((one) => one.states.MB?.state)).toEqual(["notFound", "shaped", "filled"]);
    expect([...states.values()].every((one) => one.states.P?.state === "filled")).toBe(true);
  });

  it("are marked where the moment before left them otherwise, and at the first", () => {
    const parts = [about, roots, visit("v-a", "2024-03-05", "filled"), recall("2024-09-05"), recall("2025-03-05")];
    expect([...along(parts).values()].map(({ changed }) => changed)).toEqual([true, true, false, false]);
  });

  it("are nowhere marked before any are known", () => {
    expect([...along([about]).values()]).toEqual([{ states: {}, changed: false }]);
  });
});
