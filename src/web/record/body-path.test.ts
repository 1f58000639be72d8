import { describe, expect, it } from "vitest";
import { placeOfFault, valueAt, withValueAt } from "./body-path.ts";

const body = { on: "2026-01-01", canals: [{ canal: "MB1" }, { canal: "P", locatorMm: 20 }] };

describe("places of a body", () => {
  it("are read through fields and rows", () => {
    expect(valueAt(body, "canals.1.locatorMm")).toBe(20);
    expect(valueAt(body, "canals.7.locatorMm")).toBeUndefined();
    expect(valueAt(body, "")).toBe(body);
  });

  it("are written without touching the body given", () => {
    const next = withValueAt(body, "canals.0.locatorMm", 19.5);
    expect(valueAt(next, "canals.0.locatorMm")).toBe(19.5);
    expect(valueAt(next, "canals.1")).toBe(body.canals[1]);
    expect(body.canals[0]).toEqual({ canal: "MB1" });
  });

  it("lose a field that is set to nothing, and gain a group that was not there", () => {
    expect(withValueAt(body, "canals.1.locatorMm", undefined)).toEqual({
      ...body,
      canals: [{ canal: "MB1" }, { canal: "P" }],
    });
    expect(withValueAt(body, "vitalSigns.pulsePerMin", 70)).toEqual({ ...body, vitalSigns: { pulsePerMin: 70 } });
  });

  it("match the paths of faults", () => {
    expect(placeOfFault("canals[1].locatorMm")).toBe("canals.1.locatorMm");
    expect(placeOfFault("operations[0].body.holds.percent")).toBe("holds.percent");
    expect(placeOfFault("on")).toBe("on");
  });
});
