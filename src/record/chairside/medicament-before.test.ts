import { describe, expect, it } from "vitest";
import { partId } from "../../core/ids.ts";
import type { BodyOf, Part } from "../parts.ts";
import { medicamentBefore } from "./medicament-before.ts";
import { emptyVisit } from "./visit-for-tests.ts";

const visit = (id: string, on: string, more: Partial<BodyOf<"visit">> = {}): Part => ({
  ...{ id: partId(id), kind: "visit" as const, revision: 1, body: { ...emptyVisit, on, ...more } },
});
const left = { medicament: { kind: "calciumHydroxide" } } as const;

describe("the medicament of the visit before", () => {
  it("is that of the last visit before, in whatever order they stand", () => {
    const parts = [visit("c", "2026-03-01"), visit("b", "2026-02-01", left), visit("a", "2026-01-01")];
    expect(medicamentBefore(parts, "c")).toEqual({ kind: "calciumHydroxide" });
    expect(medicamentBefore(parts, "b")).toBeUndefined();
  });

  it("is none after a visit that left none, before the first, or of a visit that is not there", () => {
    const parts = [visit("a", "2026-01-01", left), visit("b", "2026-02-01"), visit("c", "2026-03-01")];
    expect(medicamentBefore(parts, "c")).toBeUndefined();
    expect(medicamentBefore(parts, "a")).toBeUndefined();
    expect(medicamentBefore(parts, "z")).toBeUndefined();
    const none = [visit("a", "2026-01-01", { medicament: { kind: "none" } }), visit("b", "2026-02-01")];
    expect(medicamentBefore(none, "b")).toBeUndefined();
  });
});
