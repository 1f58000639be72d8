import { describe, expect, it } from "vitest";
import { replyWords, touchWords, yesNoWords } from "../../../../record/words/finding-words.ts";
import { answerOfKey } from "./answer-of-key.ts";
import { levelsInWords, readLevels, readNames } from "./levels.ts";

describe("one key a cell", () => {
  it("takes the answer that begins with the letter, and the next one when pressed again", () => {
    expect(answerOfKey("n", replyWords, "notDone")).toBe("none");
    expect(answerOfKey("n", replyWords, "none")).toBe("normal");
    expect(answerOfKey("n", replyWords, "normal")).toBe("none");
    expect(answerOfKey("H", replyWords, "none")).toBe("heightened");
    expect(answerOfKey("p", touchWords, "notDone")).toBe("painful");
  });

  it("clears with x, Delete and Backspace, and leaves other keys alone", () => {
    for (const key of ["x", "Delete", "Backspace"]) expect(answerOfKey(key, touchWords, "painful")).toBe("notDone");
    expect(answerOfKey("x", yesNoWords, "yes")).toBe("notAsked");
    expect(answerOfKey("q", touchWords, "none")).toBeUndefined();
    expect(answerOfKey("Tab", touchWords, "none")).toBeUndefined();
  });
});

describe("a course in one cell", () => {
  it("is a number of canals a level", () => {
    expect(readLevels("2-1-2")).toEqual({ value: [2, 1, 2] });
    expect(levelsInWords([2, 1, 2])).toBe("2-1-2");
  });

  it("carries the form of a C-shaped section", () => {
    const { value } = readLevels("1 C1-2 c3");
    expect(value).toEqual([
      { canals: 1, cShape: "C1" },
      { canals: 2, cShape: "C3" },
    ]);
    expect(levelsInWords(value)).toBe("1 C1-2 C3");
  });

  it.each(["", "-", "7", "two-1", "2-1 C9"])("refuses %j", (text) => {
    expect(readLevels(text).fault).toBeDefined();
  });

  it("has names parted by blanks or commas", () => {
    expect(readNames("MB1, MB2")).toEqual({ value: ["MB1", "MB2"] });
    expect(readNames("  ")).toEqual({});
  });
});
