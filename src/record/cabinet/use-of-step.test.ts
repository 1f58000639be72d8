import { describe, expect, it } from "vitest";
import { instrumentUse } from "../parts/visit-materials.ts";
import { fileItem, instrumentItem } from "./cabinet-for-tests.ts";
import { type CanalEntered, useOfStep } from "./use-of-step.ts";

const step = (more: Parameters<typeof instrumentItem>[1] = {}, shortByMm?: number, seconds?: number) => ({
  ...{ instrument: instrumentItem("shaper", more), shortByMm, seconds },
  files: [],
});
const mb1: CanalEntered = { canal: "MB1", workingLengthMm: 19.5 };

describe("the row that a visit records", () => {
  it("holds geometry and motor as they stand, the canal, and the cabinet's id; the form takes it", () => {
    const profile = [
      { atMm: 0, diameterMm: 0.25 },
      { atMm: 9, diameterMm: 0.7 },
    ];
    const own = {
      ...{ profile, workingMm: 16, lengthMm: 25, maxDiameterMm: 1, section: "s" as const },
      ...{ movement: "reciprocating" as const, rpm: 300, torqueLimitNmm: 20, note: "kept in the cabinet alone" },
      reciprocation: { forwardDeg: 170, backDeg: 50, frequencyHz: 10 },
    };
    const row = useOfStep(step(own, undefined, 12), mb1);
    const { note: _, ...copied } = own;
    expect(row).toEqual({
      ...{ canal: "MB1", size: 25, taper: 0.06, alloy: "nickelTitanium", seconds: 12, depthMm: 19.5 },
      ...{ ...copied, instrument: "shaper" },
    });
    expect(instrumentUse.parse(row)).toEqual(row);
  });

  // 19.5 - 0.3 is 19.2 to a person, and 19.199999999999999 to a machine.
  it.each([
    [19.5, undefined, 19.5],
    [19.5, 0, 19.5],
    [19.5, 0.3, 19.2],
    [20, 4, 16],
  ])("goes to %d mm less %s", (workingLengthMm, shortByMm, depthMm) => {
    expect(useOfStep(step({}, shortByMm), { canal: "P", workingLengthMm }).depthMm).toBe(depthMm);
  });

  it("has no depth where the length is not known, or the step ends before the canal begins", () => {
    expect(useOfStep(step(), { canal: "P" })).not.toHaveProperty("depthMm");
    expect(useOfStep(step({}, 20), mb1)).not.toHaveProperty("depthMm");
    expect(useOfStep(step({}, 19.5), mb1)).not.toHaveProperty("depthMm");
  });

  it("goes into no canal where none is named", () => {
    expect(useOfStep(step(), {})).not.toHaveProperty("canal");
  });

  it("names the counted file with what stood against it, as far as it is known", () => {
    const file = fileItem("f-1", "shaper");
    const standing = { uses: 3, sterilisations: 2, turnsNet: 410.5 };
    expect(useOfStep(step(), mb1, { file, standing }).file).toEqual({
      ...{ id: "f-1", label: "F-1", usesBefore: 3, turnsBefore: 410.5, sterilisationsBefore: 2 },
    });
    expect(useOfStep(step(), mb1, { file, standing: undefined }).file).toEqual({ id: "f-1", label: "F-1" });
    expect(useOfStep(step(), mb1)).not.toHaveProperty("file");
  });
});
