import { expect, it } from "vitest";
import { sourcesInWords } from "./sources-in-words.ts";

it.each([
  ["khatib-2020, orhan-2016", "seen", "Khatib 2020, Orhan 2016"],
  ["epinephrine-limits", "seen", "teaching documents"],
  ["common practice", "memory", "common practice, from memory"],
  ["the clinic's own rule", "own", "the clinic's own rule, given by the person"],
])("%s (%s) is told as %s", (source, mark, told) => {
  expect(sourcesInWords(source, mark)).toBe(told);
});
