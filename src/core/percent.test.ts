import { expect, it } from "vitest";
import { percent } from "./percent.ts";

it.each([
  [0, "0 %"],
  [0.004, "0 %"],
  [0.873, "87 %"],
  [0.125, "13 %"],
  [1, "100 %"],
  [1.2, "120 %"],
])("a share of %d is %s", (share, text) => {
  expect(percent(share)).toBe(text);
});
