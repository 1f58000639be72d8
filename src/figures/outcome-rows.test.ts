import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type OutcomeRow, type OutcomeRows, outcomeRows } from "./outcome-rows.ts";
import { svgText } from "./svg-text.ts";
import { themes } from "./theme.ts";

const row = (more: Partial<OutcomeRow> = {}): OutcomeRow => ({
  ...{ kind: "healing", name: "healed, Known 2001", says: "film, 4 years, teeth with a lesion", mean: 0.8 },
  ...{ interval: { low: 0.71, high: 0.87 }, counts: { events: 80, n: 100 }, isNearest: true },
  ...more,
});
const kept = row({
  kind: "retention",
  name: "still there, Other 2010",
  mean: 0.95,
  counts: undefined,
  isNearest: false,
});
const given: OutcomeRows = { rows: [kept, row()], theme: "paper", widthPx: 640 };
const drawn = (more: Partial<OutcomeRows> = {}): string => svgText(outcomeRows({ ...given, ...more }));
const placeOf = (text: string, words: string): number =>
  Number(new RegExp(`y="([\\d.]+)"[^>]*>${words}`).exec(text)?.[1]);

/** A path with its places counted from where it starts, so that shapes can be told apart wherever they stand. */
function fromItsStart(path: string): string {
  const places = (path.match(/[\d.]+/g) ?? []).map(Number);
  return places.map((place, at) => Math.round(place - (places[at % 2] ?? 0))).join(" ");
}

describe("outcomeRows", () => {
  it("tells healing before what is merely still in place, each under its own name", () => {
    const text = drawn();
    const places = ["Healing", "healed, Known", "Still in place, healed", "still there, Other"].map((words) =>
      placeOf(text, words),
    );
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(text).not.toContain("Pulp still alive");
  });

  it("gives each kind a shape of its own and fills the one nearest to the case", () => {
    const rows = (["healing", "pulp", "notWorse", "retention", "replacement"] as const).map((kind) => row({ kind }));
    const shapes = [...drawn({ rows }).matchAll(/data-kind="\w+" d="([^"]+)"/g)].map(([, d = ""]) => fromItsStart(d));
    expect(new Set(shapes).size).toBe(5);
    const fills = [...drawn().matchAll(/data-part="(nearest|outcome)"[^>]*fill="(#\w+)"/g)].map(([, part, fill]) => [
      part,
      fill,
    ]);
    expect(fills).toEqual([
      ["nearest", themes.paper.ink],
      ["outcome", themes.paper.surface],
    ]);
  });

  it("puts the dot in its share of the way from 0 to 100 %, and its interval round it", () => {
    const text = drawn({ rows: [row({ mean: 0.25, interval: { low: 0.25, high: 0.75 } })] });
    const quarters = [...text.matchAll(/<path d="M([\d.]+) 4V/g)].map(([, x]) => Number(x));
    const [, from, to] = /data-part="interval" d="M([\d.]+) [\d.]+H([\d.]+)/.exec(text) ?? [];
    expect([Number(from), Number(to)]).toEqual([quarters[1], quarters[3]]);
    // The round dot begins half its breadth, 5, to the left of its middle.
    const [, left] = /data-part="nearest"[^>]* d="M([\d.]+)/.exec(text) ?? [];
    expect(Number(left) + 5).toBeCloseTo(quarters[1] ?? Number.NaN, 1);
  });

  it("says counts as n/N, and says so where none are printed", () => {
    expect(drawn()).toContain(">80/100</text>");
    expect(drawn()).toContain(">no counts printed</text>");
    expect(drawn({ rows: [row({ interval: undefined })] })).not.toContain('data-part="interval"');
  });

  it("says the same in words", () => {
    expect(outcomeRows(given).alternative).toBe(
      "Published outcomes of this way. Healing: healed, Known 2001, 80 % (71 to 87 %), 80 of 100, film, 4 years, teeth with a lesion, nearest to this case. Still in place, healed or not: still there, Other 2010, 95 % (71 to 87 %), no counts printed, film, 4 years, teeth with a lesion.",
    );
    expect(outcomeRows({ ...given, rows: [] }).alternative).toBe("Published outcomes of this way. None is kept.");
  });

  it.each(["paper", "dark", "print"] as const)("takes the colours of %s alone", (theme) => {
    const colours = [...drawn({ theme }).matchAll(/#[0-9a-f]{6}/g)].map(([colour]) => colour);
    expect(colours.filter((colour) => !Object.values<string>({ ...themes[theme] }).includes(colour))).toEqual([]);
  });

  it("keeps every row inside its drawing in any number, and never writes a number that is none", () => {
    const one = fc.record({
      kind: fc.constantFrom("healing", "pulp", "notWorse", "retention", "replacement" as const),
      mean: fc.double({ min: 0, max: 1, noNaN: true }),
      says: fc.constantFrom("", "a long account of how it was told and in whom and after how many years of looking"),
    });
    fc.assert(
      fc.property(fc.array(one, { maxLength: 12 }), fc.constantFrom(1, 1.6), (rows, letters) => {
        const figure = outcomeRows({ ...given, rows: rows.map((some) => row(some as Partial<OutcomeRow>)), letters });
        const text = svgText(figure);
        expect(text).not.toMatch(/NaN|Infinity|undefined/);
        const height = Number(String(figure.tree.attributes.viewBox).split(" ")[3]);
        for (const [, y] of text.matchAll(/<text [^>]*y="([\d.]+)"/g)) expect(Number(y)).toBeLessThan(height);
      }),
      { numRuns: 40 },
    );
  });
});
