import { describe, expect, it } from "vitest";
import { teeth } from "../core/tooth/teeth.ts";
import { svgText } from "./svg-text.ts";
import { themes } from "./theme.ts";
import { toothInMouth } from "./tooth-in-mouth.ts";

const drawn = (twoDigit: string, theme: "paper" | "dark" | "print" = "print") => {
  const tooth = teeth.find((one) => one.twoDigit === twoDigit);
  if (tooth === undefined) throw new Error(`no tooth ${twoDigit}`);
  return toothInMouth({ tooth, theme, widthPx: 320 });
};
const spots = (twoDigit: string) =>
  [...svgText(drawn(twoDigit)).matchAll(/data-tooth="(\d+)"[^>]*cx="([\d.]+)" cy="([\d.]+)" rx="([\d.]+)"/g)].map(
    ([, id = "", x, y, rx]) => ({ id, x: Number(x), y: Number(y), rx: Number(rx) }),
  );
const spotOf = (id: string) => spots(id).find((one) => one.id === id) ?? { x: Number.NaN, y: Number.NaN };

describe("toothInMouth", () => {
  it("draws every tooth of that dentition once and fills the one that is meant", () => {
    expect(spots("26")).toHaveLength(32);
    expect(spots("75")).toHaveLength(20);
    for (const { twoDigit } of teeth) {
      const meant = [...svgText(drawn(twoDigit)).matchAll(/data-tooth="(\d+)" data-part="meant"/g)];
      expect(meant.map(([, id]) => id)).toEqual([twoDigit]);
    }
  });

  it("puts the patient's left on the right of the picture and the top row over the bottom row", () => {
    expect(spotOf("26").x).toBeGreaterThan(spotOf("16").x);
    expect(spotOf("36").x).toBeGreaterThan(spotOf("46").x);
    expect(spotOf("21").y).toBeLessThan(spotOf("31").y);
    // The two sides mirror each other about the middle line of the picture.
    expect(spotOf("26").x + spotOf("16").x).toBeCloseTo(320, 1);
    expect(spotOf("26").y).toBeCloseTo(spotOf("16").y, 1);
  });

  it("keeps every tooth inside the picture", () => {
    for (const { x, y, rx } of spots("11")) {
      expect(x - rx).toBeGreaterThan(0);
      expect(x + rx).toBeLessThan(320);
      expect(y - 15).toBeGreaterThan(0);
      expect(y + 15).toBeLessThan(336);
    }
  });

  it("says where the tooth is in the patient's words", () => {
    expect(drawn("46").alternative).toBe(
      "Where the tooth is: in the bottom row, on your right side, number 6 from the middle.",
    );
  });

  it("takes its colours from the ground", () => {
    for (const theme of ["paper", "dark", "print"] as const)
      expect(svgText(drawn("11", theme))).toContain(`fill="${themes[theme].accent}"`);
  });
});
