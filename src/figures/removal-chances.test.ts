import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear } from "./drawn-for-tests.ts";
import { type RemovalChanceRow, type RemovalChances, removalChances } from "./removal-chances.ts";
import { svgText } from "./svg-text.ts";

const row = (more: Partial<RemovalChanceRow> = {}): RemovalChanceRow => ({
  ...{ by: "third", words: "apical third, removed", events: 25, n: 100, low: 0.25, high: 0.75 },
  ...{ matches: "yes", source: "Known 2004", mark: "read", ...more },
});
const given: RemovalChances = { rows: [row({ matches: "no", words: "other" }), row()], theme: "paper", widthPx: 640 };
const drawn = (more: Partial<RemovalChances> = {}): string => svgText(removalChances({ ...given, ...more }));

describe("removalChances", () => {
  it("tells the groups of this case first, each kind by a shape or fill of its own", () => {
    const text = drawn({ rows: [...given.rows, row({ matches: "notKnown" })] });
    const heads = ["Groups that this case belongs to", "Not known whether it belongs to them", "Other groups"];
    const places = heads.map((head) => text.indexOf(head));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(text).toMatch(/<path data-part="notKnown"/);
    const fills = [...text.matchAll(/<circle data-part="(yes|no)"[^>]* fill="(#\w+)"/g)].map(([, part, fill]) => [
      part,
      fill,
    ]);
    expect(fills[0]?.[1]).not.toBe(fills[1]?.[1]);
  });

  it("puts the share of n/N in its place, and writes the counts", () => {
    const text = drawn({ rows: [row()] });
    const quarters = [...text.matchAll(/<path d="M([\d.]+) 4V/g)].map(([, x]) => Number(x));
    expect(Number(/data-part="yes" cx="([\d.]+)"/.exec(text)?.[1])).toBeCloseTo(quarters[1] ?? Number.NaN, 1);
    expect(text).toContain(">25/100</text>");
    expect(text).toContain(">25 % (25–75)</text>");
  });

  it("draws nothing where nothing is printed, and says so", () => {
    const none = { events: undefined, n: undefined, low: undefined, high: undefined };
    const text = drawn({ rows: [row(none)] });
    expect(text).toContain(">no share printed</text>");
    expect(text).toContain(">no counts printed</text>");
    expect(text).not.toContain('data-part="yes"');
    expect(drawn({ rows: [row({ ...none, share: 0.5, n: 90 })] })).toContain(">of 90</text>");
  });

  it("says the same in words", () => {
    expect(removalChances(given).alternative).toBe(
      "Published chances of getting a fragment out. Groups that this case belongs to: third, apical third, removed, 25 % (25 to 75 %), 25 of 100, Known 2004, read. Other groups: third, other, 25 % (25 to 75 %), 25 of 100, Known 2004, read.",
    );
    expect(removalChances({ ...given, rows: [] }).alternative).toContain("None is kept.");
  });

  it("keeps every word clear for any rows", () => {
    const one = fc.record({
      events: fc.integer({ min: 0, max: 100 }),
      matches: fc.constantFrom("yes", "no", "notKnown"),
      words: fc.constantFrom(
        "in the bend",
        "seen under the microscope before the bend, removed or passed within an hour",
      ),
    });
    fc.assert(
      fc.property(fc.array(one, { maxLength: 9 }), fc.constantFrom(1, 1.4), (rows, letters) => {
        expectClear(removalChances({ ...given, rows: rows.map((more) => row({ ...more, low: 0, high: 1 })), letters }));
      }),
      { numRuns: 30 },
    );
  });
});
