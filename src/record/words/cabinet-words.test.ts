import { expect, it } from "vitest";
import { limitInWords } from "./cabinet-words.ts";

it.each([
  [{ name: "canals" as const, limit: 8, found: 9 }, "9 canals, 1 above the limit of 8"],
  [{ name: "uses" as const, limit: 5, found: 5 }, "5 visits in use, at the limit"],
  [{ name: "canals" as const, limit: 1, found: 1 }, "1 canal, at the limit"],
  [{ name: "sterilisations" as const, limit: 0, found: 3 }, "3 sterilisations, 3 above the limit of 0"],
  [{ name: "turns" as const, limit: 1000, found: 12_600.4 }, "12\u202f600 turns, 11\u202f600 above the limit of 1000"],
])("%o is %s", (reached, words) => {
  expect(limitInWords(reached)).toBe(words);
});
