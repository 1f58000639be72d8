import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jargonIn } from "./jargon.ts";
import { readingGrade } from "./reading-grade.ts";
import { syllables } from "./syllables.ts";

describe("syllables of a word", () => {
  // Counted aloud.
  it.each([
    ...[
      ["tooth", 1],
      ["teeth", 1],
      ["crown", 1],
      ["nerve", 1],
      ["bone", 1],
      ["pain", 1],
      ["jaw", 1],
      ["numb", 1],
    ],
    ...[
      ["hole", 1],
      ["breathe", 1],
      ["cleaned", 1],
      ["filled", 1],
      ["treated", 2],
      ["needed", 2],
      ["times", 1],
    ],
    ...[
      ["places", 2],
      ["washes", 2],
      ["bottle", 2],
      ["little", 2],
      ["healing", 2],
      ["filling", 2],
      ["infection", 3],
    ],
    ...[
      ["medicine", 3],
      ["injection", 3],
      ["swelling", 2],
      ["visit", 2],
      ["visits", 2],
      ["dentist", 2],
      ["safely", 2],
    ],
    ...[
      ["every", 2],
      ["people", 2],
      ["after", 2],
      ["afterwards", 3],
      ["movement", 2],
      ["careful", 2],
      ["26", 2],
      ["8", 1],
    ],
  ] as [string, number][])("%s: %i", (word, count) => {
    expect(syllables(word)).toBe(count);
  });

  it("are never none", () => {
    fc.assert(fc.property(fc.string(), (word) => syllables(word) >= 1));
  });
});

describe("the grade of a text", () => {
  it("is 11.3 for the sentence about the platypus of 13 words and 24 syllables", () => {
    // 0.39 · 13 + 11.8 · 24 / 13 − 15.59 = 11.26; the sentence and its counts as they are taught (memory).
    const taught = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
    expect(readingGrade(taught)).toBeCloseTo(11.26, 1);
  });

  it("is -3.4 where every sentence is one word of one syllable, the least there is", () => {
    // 0.39 + 11.8 − 15.59.
    expect(readingGrade("Yes. No! Go?")).toBeCloseTo(-3.4, 6);
  });

  it("counts each paragraph as a sentence and a point inside a figure as none", () => {
    expect(readingGrade("one two\nthree four")).toBeCloseTo(readingGrade("one two. three four.") ?? Number.NaN, 9);
    expect(readingGrade("It is 2.5 long.")).toBeLessThan(4);
  });

  it("does not change when a text is said twice, and rises when two sentences are made one", () => {
    const one = "The tooth is sore. We can clean it.";
    expect(readingGrade(`${one} ${one}`)).toBeCloseTo(readingGrade(one) ?? Number.NaN, 9);
    expect(readingGrade("The tooth is sore and we can clean it.")).toBeGreaterThan(readingGrade(one) ?? Number.NaN);
  });

  it("of a text without words is not there", () => {
    expect(readingGrade(" … ")).toBeUndefined();
    expect(readingGrade("")).toBeUndefined();
  });
});

describe("words of the trade", () => {
  it("are found in any form, each once", () => {
    expect(jargonIn("The pulp and the Pulpal floor: retreatment, then obturation of the pulp.")).toEqual([
      "pulp",
      "pulpal",
      "obturation",
      "retreatment",
    ]);
  });

  it("are not seen in words that only hold their letters", () => {
    expect(jargonIn("Apply the paste and tap the tooth. A simple, stable thing.")).toEqual([]);
  });

  it("are none in what anybody says", () => {
    expect(jargonIn("We clean the root canal, fill it and close the tooth with a crown. It may be sore.")).toEqual([]);
  });
});
