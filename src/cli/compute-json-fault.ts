/** Where a text stops being JSON: counted from 1, with what was found there and what is accepted. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  readonly says: string;
}

/** What may come next at a place of the text. */
type Expected = "value" | "firstItem" | "key" | "firstKey" | "colon" | "nextOfObject" | "nextOfArray" | "end";

const inWords: Readonly<Record<Expected, string>> = {
  value: "a value",
  firstItem: "a value or ]",
  key: 'a name in ""',
  firstKey: 'a name in "" or }',
  colon: "a :",
  nextOfObject: "a , or }",
  nextOfArray: "a , or ]",
  end: "nothing more",
};

/** Of every punctuation mark, what may follow it, by what was expected when it came. */
const marks: Readonly<Partial<Record<Expected, Readonly<Record<string, Expected | "close">>>>> = {
  value: { "{": "firstKey", "[": "firstItem" },
  firstItem: { "{": "firstKey", "[": "firstItem", "]": "close" },
  firstKey: { "}": "close" },
  colon: { ":": "value" },
  nextOfObject: { ",": "key", "}": "close" },
  nextOfArray: { ",": "value", "]": "close" },
};

const plainValue = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)/y;
const space = /[ \t\n\r]*/y;
const stringPiece = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})|[^"\\]/y;

/**
 * The first place at which a text is not JSON; absent where it is JSON throughout.
 * @source ECMA-404, The JSON data interchange syntax, 2nd ed., 2017 (memory)
 */
export function jsonFault(text: string): JsonFault | undefined {
  const open: ("nextOfObject" | "nextOfArray")[] = [];
  let expected: Expected = "value";
  let at = afterSpace(text, 0);
  while (at < text.length || expected !== "end") {
    const mark = text.charAt(at);
    const follows: Expected | "close" | undefined = marks[expected]?.[mark];
    if (follows === undefined) {
      const read = scalarAt(text, at, expected);
      if ("fault" in read) return placed(text, read.fault, read.accepted);
      at = afterSpace(text, read.end);
      expected = isName(expected) ? "colon" : (open.at(-1) ?? "end");
      continue;
    }
    if (mark === "{") open.push("nextOfObject");
    if (mark === "[") open.push("nextOfArray");
    if (follows === "close") open.pop();
    expected = follows === "close" ? (open.at(-1) ?? "end") : follows;
    at = afterSpace(text, at + 1);
  }
  return undefined;
}

const isName = (expected: Expected): boolean => expected === "key" || expected === "firstKey";

type Read = { readonly end: number } | { readonly fault: number; readonly accepted: string };

/** A name, string, number or word at a place, where one of them is expected. */
function scalarAt(text: string, at: number, expected: Expected): Read {
  const named = isName(expected);
  if (!named && expected !== "value" && expected !== "firstItem") return { fault: at, accepted: inWords[expected] };
  if (text.charAt(at) === '"') return stringAt(text, at);
  plainValue.lastIndex = at;
  if (named || !plainValue.test(text)) return { fault: at, accepted: inWords[expected] };
  return { end: plainValue.lastIndex };
}

function stringAt(text: string, start: number): Read {
  let at = start + 1;
  while (text.charAt(at) !== '"') {
    stringPiece.lastIndex = at;
    if (text.charAt(at) < " " || !stringPiece.test(text))
      return { fault: at, accepted: 'a character, an escape of JSON or the closing "' };
    at = stringPiece.lastIndex;
  }
  return { end: at + 1 };
}

function afterSpace(text: string, at: number): number {
  space.lastIndex = at;
  space.test(text);
  return space.lastIndex;
}

function placed(text: string, at: number, accepted: string): JsonFault {
  const before = text.slice(0, at).split("\n");
  return {
    line: before.length,
    column: (before.at(-1)?.length ?? 0) + 1,
    says: `found ${foundAt(text, at)}, ${accepted} is accepted here`,
  };
}

function foundAt(text: string, at: number): string {
  if (at >= text.length) return "the end of the text";
  if (text.charAt(at) === "\n") return "the end of the line";
  const word = text.slice(at, at + 20).match(/^[\w.+-]+/)?.[0];
  return word ?? JSON.stringify(text.charAt(at)).slice(1, -1);
}
