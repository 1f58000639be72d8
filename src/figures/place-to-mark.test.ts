import { describe, expect, it } from "vitest";
import { type MarkedPlace, placeToMark } from "./place-to-mark.ts";
import { svgText } from "./svg-text.ts";

const all: readonly MarkedPlace[] = ["apex", "cusp", "crest", "entrance"];

describe.each(all)("the drawing of the %s", (place) => {
  const figure = placeToMark(place, { theme: "dark", widthPx: 120 });

  it("has one ring, inside its frame, and says what is meant", () => {
    const text = svgText(figure);
    const rings = [...text.matchAll(/data-part="place" cx="([\d.]+)" cy="([\d.]+)"/g)];
    expect(rings).toHaveLength(1);
    const [x = 0, y = 0] = (rings[0] ?? []).slice(1).map(Number);
    expect(x > 19 && x < 181 && y > 19 && y < 245).toBe(true);
    expect(figure.alternative).toMatch(/^[A-Z].{20,90}\.$/);
  });

  it("keeps its shape at any width, in any ground", () => {
    expect(figure.heightPx / figure.widthPx).toBeCloseTo(1.32, 1);
    expect(svgText(placeToMark(place, { theme: "paper", widthPx: 300 }))).not.toBe(svgText(figure));
  });
});

it("has a ring of its own for each place", () => {
  const rings = all.map(
    (place) => /data-part="place"[^>]*/.exec(svgText(placeToMark(place, { theme: "print", widthPx: 9 })))?.[0],
  );
  expect(new Set(rings).size).toBe(4);
});
