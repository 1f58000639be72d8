import { describe, expect, it } from "vitest";
import { depthOfKey, placeOfArrow } from "./depth-of-key.ts";
import { readDepths } from "./read-depths.ts";

describe("a key in a place of a probing", () => {
  it("writes a digit, and with a plus before it the second digit of ten and more", () => {
    expect(depthOfKey("7", false)).toEqual({ writes: 7 });
    expect(depthOfKey("0", false)).toEqual({ writes: 0 });
    expect(depthOfKey("+", false)).toEqual({ waits: "ten" });
    expect(depthOfKey("2", true)).toEqual({ writes: 12 });
  });

  it("takes a depth out with a dash or x, and leaves other keys alone", () => {
    for (const key of ["-", "x", "X"]) expect(depthOfKey(key, false)).toEqual({ writes: undefined });
    for (const key of ["Tab", "Backspace", "a", "."]) expect(depthOfKey(key, false)).toBeUndefined();
  });

  it("walks with arrows among three over three and out at the edges", () => {
    expect(placeOfArrow("ArrowRight", 0)).toBe(1);
    expect(placeOfArrow("ArrowDown", 1)).toBe(4);
    expect(placeOfArrow("ArrowUp", 5)).toBe(2);
    expect(placeOfArrow("ArrowLeft", 5)).toBe(4);
    for (const [key, from] of [
      ["ArrowRight", 2],
      ["ArrowLeft", 3],
      ["ArrowUp", 0],
      ["ArrowDown", 4],
      ["Tab", 0],
    ] as const)
      expect(placeOfArrow(key, from)).toBeUndefined();
  });
});

describe("depths as they are written", () => {
  it("are one or several, a dash for one that was not taken", () => {
    expect(readDepths("25")).toEqual({ depths: [25] });
    expect(readDepths("3 2 3 / 3 - 4,5")).toEqual({ depths: [3, 2, 3, 3, undefined, 4.5] });
    expect(readDepths("")).toEqual({ depths: [] });
  });

  it.each(["deep", "3 deep 3", "3.", "-2"])("are refused where they are no depth: %s", (text) => {
    expect(readDepths(text).depths).toBeUndefined();
    expect(readDepths(text).fault).toContain("mm");
  });
});
