import { expect, it } from "vitest";
import { ratioText } from "./ratio-text.ts";

it.each([
  [0, "0"],
  [0.00412, "0.0041"],
  [0.286, "0.29"],
  [1, "1"],
  [8.25, "8.3"],
  [14.4, "14"],
  [250.4, "250"],
  [4_000, "over 1000"],
])("writes a likelihood ratio of %d as %s", (ratio, text) => {
  expect(ratioText(ratio)).toBe(text);
});
