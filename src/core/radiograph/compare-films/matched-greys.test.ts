import { describe, expect, it } from "vitest";
import { boneLike, filmOf } from "../../../../test/bone-like-film.ts";
import { seededRandom } from "../../statistics/seeded-random.ts";
import { differenceOf, overlapOf } from "./difference-of.ts";
import { type Homography, still } from "./homography.ts";
import { laidOn } from "./matched-greys.ts";
import type { Picture } from "./picture.ts";
import { regionOf } from "./region.ts";

const size = { columns: 120, rows: 100 };
const pictureOf = (film: { columns: number; rows: number; grey: Float32Array }): Picture => ({
  ...film,
  values: film.grey,
});
const first = pictureOf(filmOf(boneLike(5), size));
const everywhere = regionOf(size, [], []);
const toned = (tone: (grey: number) => number): Picture => ({
  ...first,
  values: Float64Array.from(first.values, tone),
});

describe("matching greys (C3)", () => {
  // Every grey of the first film is mapped to one of its own, so ranks are the same and nothing is left.
  it.each([
    ["gamma 0.8", (grey: number) => grey ** 0.8],
    ["gamma 1.25", (grey: number) => grey ** 1.25],
    ["gain and offset", (grey: number) => 0.2 + 0.6 * grey],
    ["a bent curve", (grey: number) => 0.5 + 0.4 * Math.sin((grey - 0.5) * 3)],
  ])("undoes %s down to the steps of the film", (_, tone) => {
    const { values, sigma } = differenceOf(toned(tone), first, everywhere);
    // 65,535 steps of counting; a film has 4,095.
    expect(Math.max(...values.map(Math.abs))).toBeLessThan(1 / 4095);
    expect(sigma).toBeLessThan(1e-4);
  });

  it("leaves a real change in a small place, also under a change of contrast", () => {
    const isChanged = (at: number) => Math.hypot((at % 120) - 60, Math.floor(at / 120) - 50) < 8;
    const changed = { ...first, values: first.values.map((grey, at) => (isChanged(at) ? grey + 0.08 : grey) ** 0.8) };
    const { values } = differenceOf(changed, first, everywhere);
    const inside = values.filter((_, at) => isChanged(at));
    const outside = values.filter((_, at) => !isChanged(at));
    const mean = (list: Float64Array) => list.reduce((sum, one) => sum + one, 0) / list.length;
    expect(mean(inside)).toBeGreaterThan(0.06);
    expect(Math.abs(mean(outside))).toBeLessThan(0.005);
  });

  it("never turns the order of greys round, whatever the films", () => {
    const { uniform } = seededRandom(2);
    const noise: Picture = { ...size, values: Float64Array.from({ length: 12_000 }, uniform) };
    const { values } = differenceOf(noise, first, everywhere);
    const matched = values.map((one, at) => one + (first.values[at] ?? 0));
    const order = [...matched.keys()].sort((a, b) => (noise.values[a] ?? 0) - (noise.values[b] ?? 0));
    for (let at = 1; at < order.length; at++)
      expect((matched[order[at] ?? 0] ?? 0) - (matched[order[at - 1] ?? 0] ?? 0)).toBeGreaterThan(-1e-9);
  });

  it("goes by the region alone", () => {
    const rightHalf = { ...everywhere, counts: everywhere.counts.map((_, at) => (at % 120 >= 60 ? 1 : 0)) };
    const changed = { ...first, values: first.values.map((grey, at) => (at % 120 < 60 ? grey * 0.5 : grey)) };
    const { values, sigma } = differenceOf(changed, first, rightHalf);
    expect(sigma).toBeLessThan(1e-4);
    expect(values[0]).toBeCloseTo(-0.5 * (first.values[0] ?? 0), 2);
  });
});

it("what the second film does not reach is neither compared nor counted", () => {
  const shift: Homography = [1, 0, 30, 0, 1, 0, 0, 0, 1];
  const laid = laidOn(size, first, shift);
  // Columns 0 to 89 of 120 are on the second film.
  expect(overlapOf(laid)).toBeCloseTo(0.75, 12);
  expect(laid.values[0]).toBe(first.values[30]);
  const { values } = differenceOf(laid, first, everywhere);
  for (let row = 0; row < 100; row++) expect(values[row * 120 + 119]).toBe(0);
  expect(overlapOf(laidOn(size, first, still))).toBe(1);
});
