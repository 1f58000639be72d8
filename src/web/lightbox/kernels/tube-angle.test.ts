import { describe, expect, it } from "vitest";
import { signedAngle, tubeAngleInWords, tubeSide } from "./tube-angle.ts";

describe("the tube's angle", () => {
  it("is above 0 to mesial and below 0 to distal, as the record has it", () => {
    expect([signedAngle(20, "mesial"), signedAngle(20, "distal"), signedAngle(0, "distal")]).toEqual([20, -20, 0]);
    expect([tubeSide(5), tubeSide(-5)]).toEqual(["mesial", "distal"]);
  });

  it("is never minus nothing", () => {
    expect(Object.is(signedAngle(0, "distal"), 0)).toBe(true);
  });

  it("takes its side from the choice where a sign is typed as well", () => {
    expect([signedAngle(-20, "mesial"), signedAngle(-20, "distal")]).toEqual([20, -20]);
  });

  it("is said in words", () => {
    expect([20, -12.5, 0].map(tubeAngleInWords)).toEqual(["20° from mesial", "12.5° from distal", "straight on"]);
  });
});
