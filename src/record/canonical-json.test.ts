import fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalJson, hashOf } from "./canonical-json.ts";

// RFC 8785, section 3.2.3: keys sorted by UTF-16 code units, so a surrogate pair comes before U+FB33 (from memory).
test("keys are sorted by code unit, blanks and absent fields left out", () => {
  expect(canonicalJson({ b: 1, a: [true, null, "x"], c: undefined })).toBe('{"a":[true,null,"x"],"b":1}');
  expect(canonicalJson({ "\ufb33": 1, "\u{1f600}": 2, "\r": 3, "1": 4 })).toBe(
    '{"\\r":3,"1":4,"\u{1f600}":2,"\ufb33":1}',
  );
});

// RFC 8785, appendix B: numbers as ECMAScript writes them (from memory).
test.each([
  [1e21, "1e+21"],
  [-0, "0"],
  [0.1 + 0.2, "0.30000000000000004"],
  [5e-324, "5e-324"],
  [100, "100"],
])("the number %s is written as %s", (value, text) => {
  expect(canonicalJson(value)).toBe(text);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, undefined, () => 1, 1n])(
  "what JSON can't hold is refused",
  (value) => {
    expect(() => canonicalJson({ value: [value] })).toThrow(TypeError);
  },
);

test("any value: the order of fields does not matter, reading gives it back, and the text is stable", () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      const text = canonicalJson(value);
      expect(canonicalJson(JSON.parse(text))).toBe(text);
      expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
      expect(canonicalJson(reversed(value))).toBe(text);
    }),
  );
});

function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, field]) => [key, reversed(field)]),
  );
}

// printf '{}' | sha256sum (coreutils)
test("the hash is SHA-256 of the canonical text", () => {
  expect(hashOf({})).toBe("44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a");
  expect(hashOf({ a: 1, b: 2 })).toBe(hashOf({ b: 2, a: 1 }));
  expect(hashOf({ a: 1 })).not.toBe(hashOf({ a: 2 }));
});
