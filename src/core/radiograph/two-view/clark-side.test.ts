import { describe, expect, it } from "vitest";
import { clarkSide } from "./clark-side.ts";

// Clark CA, Proc R Soc Med 1910;3:87-90 (memory), by the tube; Richards, "The buccal object rule" (seen), by the beam:
// tube moved to mesial = beam points to distal = what lies to buccal moves to distal. Both phrasings are one rule.
describe("the movement of an image (C15)", () => {
  it.each([
    ["mesial", 1, "buccal"],
    ["mesial", -1, "lingual"],
    ["distal", 1, "lingual"],
    ["distal", -1, "buccal"],
  ] as const)("tube to %s, image %d mm to distal: %s", (moved, distalMm, side) => {
    expect(clarkSide(distalMm, moved, 0.3)).toBe(side);
  });

  it("a movement that noise and foreshortening explain tells nothing", () => {
    expect(clarkSide(0.3, "mesial", 0.3)).toBe("undetermined");
  });
});
