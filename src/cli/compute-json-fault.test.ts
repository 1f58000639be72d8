import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jsonFault } from "./compute-json-fault.ts";

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe("jsonFault", () => {
  it.each([
    ["[1, 2,]", 1, 7, "found ], a value"],
    ["[1 2]", 1, 4, "found 2, a , or ]"],
    ["{ 'a': 1 }", 1, 3, `found ', a name in "" or }`],
    ['{ "a" 1 }', 1, 7, "found 1, a :"],
    ['{ "a": 1, }', 1, 11, 'found }, a name in ""'],
    ['{ "a": 01 }', 1, 9, "found 1, a , or }"],
    ["{}\n{}", 2, 1, "found {, nothing more"],
    ['{ "a": "x\ny" }', 1, 10, "found the end of the line, a character"],
    ['{ "a": "\\q" }', 1, 9, "found \\\\, a character"],
    ['{ "a": "x', 1, 10, "found the end of the text, a character"],
    ["\r\n\r\n  undefined", 3, 3, "found undefined, a value"],
    ["[", 1, 2, "found the end of the text, a value or ]"],
  ])("of %j: line %d, column %d", (text, line, column, says) => {
    expect(jsonFault(text)).toEqual({
      line,
      column,
      says: `${says.replace(/, a character$/, ', a character, an escape of JSON or the closing "')} is accepted here`,
    });
  });

  it("finds none in JSON, and one in everything that JSON.parse refuses", () => {
    const piece = fc.constantFrom(
      "{",
      "}",
      "[",
      "]",
      ",",
      ":",
      '"',
      "\\",
      "a",
      "1",
      "-",
      ".",
      "e",
      "true",
      "null",
      " ",
      "\n",
      "\u0001",
      '"k"',
    );
    const soup = fc.array(piece, { maxLength: 12 }).map((pieces) => pieces.join(""));
    fc.assert(
      fc.property(fc.oneof(soup, fc.json()), (text) => {
        expect(jsonFault(text) === undefined).toBe(isJson(text));
      }),
      { numRuns: 3_000 },
    );
  });

  it("finds a fault in every JSON object that was cut short", () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(), (json, cut) => {
        const text = `{"a":${json}}`;
        expect(jsonFault(text.slice(0, cut % text.length))).toBeDefined();
      }),
    );
  });

  it("takes nesting deeper than a call stack", () => {
    expect(jsonFault("[".repeat(200_000))).toMatchObject({ line: 1, column: 200_001 });
  });
});
