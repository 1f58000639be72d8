import { expect, it } from "vitest";
import { ofHundred } from "./of-hundred.ts";

it.each([
  [0, "almost none of 100"],
  [0.0049, "almost none of 100"],
  [0.005, "about 1 of 100"],
  [0.049, "about 5 of 100"],
  [0.864, "about 86 of 100"],
  [0.888, "about 89 of 100"],
  [0.994, "about 99 of 100"],
  [0.995, "almost all of 100"],
  [1, "almost all of 100"],
])("a share of %f is said as %s", (share, words) => {
  expect(ofHundred(share)).toBe(words);
});
