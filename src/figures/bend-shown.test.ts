import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BendShown, bendShown } from "./bend-shown.ts";
import { svgText } from "./svg-text.ts";

const turn = [0, 5, 10].map((sMm) => ({ sMm, turnDeg: sMm * 6, lowDeg: sMm * 5, highDeg: sMm * 8 }));
const films = [
  { name: "straight", profile: turn.map(({ sMm }) => ({ sMm, turnDeg: sMm * 0.3 })) },
  { name: "25° from mesial", profile: turn.map(({ sMm }) => ({ sMm, turnDeg: sMm * 2.6 })) },
];
const drawn = (more: Partial<BendShown> = {}) => bendShown({ turn, films, theme: "dark", widthPx: 400, ...more });
const heightsIn = (text: string): number[] =>
  [...text.matchAll(/<text [^>]*y="([\d.]+)"[^>]*>[^<]*°<\/text>/g)].map(([, y]) => Number(y)).sort((a, b) => a - b);

describe("bendShown", () => {
  it("says what the canal turns in space and on each film", () => {
    expect(drawn().alternative).toBe(
      "True against apparent bend along the canal. All turning from orifice to foramen: 60° (50 to 80) in space, 3° on straight, 26° on 25° from mesial.",
    );
  });

  it("names each curve at its end, and gives films different dashes", () => {
    const text = svgText(drawn());
    for (const words of ["in space 60°", "straight 3°", "25° from mesial 26°"])
      expect(text).toContain(`>${words}</text>`);
    expect(new Set([...text.matchAll(/stroke-dasharray="([^"]*)"/g)].map(([, dash]) => dash)).size).toBe(2);
  });

  it("keeps names of curves that end together apart", () => {
    const alike = films.map((film) => ({ ...film, profile: turn }));
    const heights = heightsIn(svgText(drawn({ films: alike }))).slice(-3);
    for (const [at, y] of heights.entries()) if (at > 0) expect(y - (heights[at - 1] ?? 0)).toBeGreaterThan(14);
  });

  it("draws any turning inside its frame, and writes no number that is none", () => {
    const sample = fc.record({
      sMm: fc.double({ min: 0, max: 30, noNaN: true }),
      turnDeg: fc.double({ min: 0, max: 300, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(sample, { minLength: 1, maxLength: 20 }), (samples) => {
        const own = samples.map((one) => ({ ...one, lowDeg: one.turnDeg, highDeg: one.turnDeg * 1.5 }));
        const text = svgText(drawn({ turn: own, films: [{ name: "straight", profile: samples }] }));
        expect(text).not.toMatch(/NaN|Infinity|undefined/);
        const curve = /data-part="curve" d="([^"]*)"|d="([^"]*)"[^>]*data-part="curve"/.exec(text);
        const numbers = ((curve?.[1] ?? curve?.[2] ?? "").match(/-?[\d.]+/g) ?? []).map(Number);
        expect(numbers.length).toBeGreaterThan(1);
        for (const [at, value] of numbers.entries())
          expect(at % 2 === 0 ? value >= 37.9 && value <= 400 : value >= 27.9 && value <= 176.1).toBe(true);
      }),
    );
  });

  it("keeps the words of an axis in the drawing where the plot is narrower than they are", () => {
    const long = films.map((film) => ({ ...film, name: `${film.name}, a long name of it` }));
    expect(svgText(drawn({ films: long, letters: 1.5 }))).toMatch(/<text x="4"[^>]*>mm from the orifice, in space</);
  });
});
