import { describe, expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../test/sample-case.ts";
import { deck } from "./deck.ts";
import { handout } from "./handout.ts";
import { type Line, numbersIn, type PageModel } from "./page-model.ts";

const wordsOf = (model: PageModel): string => {
  const lineWords = (line: Line): string => line.map((run) => run.text).join("");
  const pages = model.pages.map(({ title, subtitle, blocks, notes }) => {
    const inBlocks = blocks.map((block) => {
      if (block.kind === "text") return [block.heading ?? "", ...block.lines.map(lineWords)].join("\n");
      if (block.kind === "table")
        return [block.caption, ...block.columns.map(({ head }) => head), ...block.rows.flat().map(lineWords)].join(
          "\n",
        );
      return block.kind === "film"
        ? [lineWords(block.caption), block.alternative].join("\n")
        : [block.caption, block.figure.alternative].join("\n");
    });
    return [title, subtitle ?? "", ...inBlocks, ...notes].join("\n");
  });
  return [model.title, model.mark, ...pages].join("\n");
};
const at = (value: unknown, path: string): unknown =>
  path
    .split(/[.[\]]+/)
    .filter((step) => step !== "")
    .reduce<unknown>(
      (held, step) => (typeof held === "object" && held !== null ? Reflect.get(held, step) : undefined),
      value,
    );

describe.each([
  ["deck", deck],
  ["handout", handout],
] as const)("a %s", (as, make) => {
  it("names for every computed number the ledger entry and the place in its output", () => {
    const source = sampleSource();
    const numbers = numbersIn(make(source));
    expect(numbers.length).toBeGreaterThan(10);
    for (const { ledgerEntry, path, text } of numbers) {
      const held = at(source.ledger.find((entry) => entry.id === ledgerEntry)?.output, path);
      const digits = text.split(".")[1]?.length ?? 0;
      expect(typeof held === "number" ? held.toFixed(digits).replace("-", "−") : held).toBe(text);
    }
  });

  it("changes exactly the numbers that depend on a changed input", () => {
    const moved = sampleParts().map((one) =>
      one.kind === "mark" && one.body.shape === "trace"
        ? { ...one, body: { ...one.body, points: one.body.points.map(([u, v]): [number, number] => [u, v * 1.1]) } }
        : one,
    );
    const [before, after] = [numbersIn(make(sampleSource())), numbersIn(make(sampleSource(moved)))];
    const subjectOf = (entry: string): string | undefined =>
      sampleSource(moved).ledger.find((one) => one.id === entry)?.subject;
    const fresh = after.filter((number) => !before.some((old) => old.ledgerEntry === number.ledgerEntry));
    expect(new Set(fresh.map((number) => subjectOf(number.ledgerEntry)))).toEqual(
      new Set(["curvature of trace-1", "workingLength of trace-1"]),
    );
  });

  it("prints no calendar day and no year of the case", () => {
    const words = wordsOf(make(sampleSource()));
    expect(words).not.toMatch(/\d{4}-\d{2}-\d{2}/);
    expect(words).not.toContain("1967");
    expect(words).not.toContain("2024");
  });

  it("says that a demo is invented on the mark of every page", () => {
    const parts = sampleParts().map((one) =>
      one.kind === "case" ? { ...one, body: { ...one.body, demo: true } } : one,
    );
    const model = make(sampleSource(parts));
    expect([model.as, model.demo]).toEqual([as, true]);
    expect(model.mark).toContain("Demo: invented");
    expect(make(sampleSource()).mark).not.toContain("Demo");
  });

  it("of a case that was only opened holds what there is and its cautions", () => {
    const [about] = sampleParts();
    const model = make(sampleSource(about === undefined ? [] : [about]));
    expect(wordsOf(model)).toContain("support, and never replace, licensed judgement");
    expect(model.emblem).toBeUndefined();
  });
});

describe("a deck's order", () => {
  it("is that of the days, presenting first and sources last", () => {
    const mishap = part("mishap", "mishap-1", {
      on: "2024-03-27",
      what: "separatedInstrument",
      canal: "MB1",
      third: "apical",
      bend: "beyond",
      handled: "bypassed",
      toldPatient: "told",
      story: "",
    });
    const titles = deck(sampleSource([mishap, ...sampleParts().reverse()])).pages.map((page) => page.title);
    expect(titles).toEqual([
      "Presenting",
      "Working length film",
      "Diagnosis",
      "Roots and canals",
      "Visit 1",
      "Visit 2",
      "Separated instrument",
      "Recalls",
      "Sources",
    ]);
  });

  it("gives a film without a scale its reason in place of lengths", () => {
    const parts = sampleParts().map((one) => {
      if (one.kind !== "film") return one;
      const { pixelSpacingMm: _spacing, ...technical } = one.body.technical;
      return { ...one, body: { ...one.body, technical } };
    });
    const words = wordsOf(deck(sampleSource(parts)));
    expect(words).not.toContain("Pruett");
    expect(words).toMatch(/scale/i);
  });
});
