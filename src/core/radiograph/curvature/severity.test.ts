import { describe, expect, it } from "vitest";
import { deg, mm } from "../../units.ts";
import { disagreement, estrelaClass, schneiderClass, severityOf } from "./severity.ts";

const gap = "between the published classes";

// Schneider 1971: straight to 5, moderate 10-20, severe 25-70 (value from memory); the gaps are in the original.
it.each([
  [0, "straight"],
  [5, "straight"],
  [5.01, gap],
  [9.99, gap],
  [10, "moderate"],
  [20, "moderate"],
  [20.01, gap],
  [24.99, gap],
  [25, "severe"],
  [70, "severe"],
  [70.1, "above the published classes"],
])("Schneider calls %d degrees %s (C15)", (angle, name) => {
  expect(schneiderClass(deg(angle))).toBe(name);
});

// Estrela 2008: severe r <= 4, moderate 4 < r <= 8, mild r > 8 mm (value from memory).
it.each([
  [2, "severe"],
  [4, "severe"],
  [4.01, "moderate"],
  [8, "moderate"],
  [8.01, "mild"],
  [1000, "mild"],
])("Estrela calls a radius of %d mm %s (C15)", (radius, name) => {
  expect(estrelaClass(mm(radius))).toBe(name);
});

describe("severityOf", () => {
  it("names both sources where there is a radius, and one where there is none", () => {
    const both = severityOf({ value: deg(30), interval: undefined }, { value: mm(5), interval: undefined });
    expect(both.map((one) => [one.source, one.class])).toEqual([
      ["schneider-1971", "severe"],
      ["estrela-2008", "moderate"],
    ]);
    expect(severityOf({ value: deg(0), interval: undefined }, undefined)).toHaveLength(1);
  });

  it("lists every class that the interval reaches, a class inside it too", () => {
    const [byAngle, byRadius] = severityOf(
      { value: deg(15), interval: { low: 4.9, high: 26, level: 0.95 } },
      { value: mm(5), interval: { low: 3.95, high: 200, level: 0.95 } },
    );
    expect(byAngle?.within).toEqual(["straight", gap, "moderate", "severe"]);
    expect(byRadius?.within).toEqual(["severe", "moderate", "mild"]);
  });
});

describe("disagreement", () => {
  const judged = (angle: number, radius: number) =>
    disagreement(severityOf({ value: deg(angle), interval: undefined }, { value: mm(radius), interval: undefined }));

  it("shows both words where they differ", () => {
    expect(judged(30, 5)).toEqual([
      "The published classes disagree: severe by the angle after Schneider (Schneider 1971), moderate by the radius of the largest bend (Estrela 2008).",
    ]);
  });

  it("is silent where they agree, or where the angle lies in a gap", () => {
    expect(judged(30, 3)).toEqual([]);
    expect(judged(22, 3)).toEqual([]);
  });
});
