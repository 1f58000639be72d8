import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import { traceTopic } from "./trace-topic.ts";

type Place = [number, number];

/** Costs of 1 with a cheap line where `isLine` says so. */
function field(columns: number, rows: number, isLine: (u: number, v: number) => boolean, cheap = 0.05) {
  const cost = Float64Array.from({ length: columns * rows }, (_, index) =>
    isLine(index % columns, Math.floor(index / columns)) ? cheap : 1,
  );
  return { cost, columns, rows };
}

const even = field(30, 20, () => true, 1);
const along = (points: readonly Place[]): number =>
  points.slice(1).reduce((sum, [u, v], index) => {
    const [beforeU, beforeV] = points[index] ?? [u, v];
    return sum + Math.hypot(u - beforeU, v - beforeV);
  }, 0);

function refusalOf(input: unknown): Refusal {
  try {
    answer(traceTopic, input);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
  }
  throw new Error("not refused");
}

describe("the course along a line", () => {
  interface FilmAnswers {
    columns: number;
    rows: number;
    places: [Place, Place, Place];
    legCosts: [number, number];
    straightThrough: number;
    costMillionths: number[];
  }
  const file = new URL("../../../test/reference/least-cost/film-answers.json", import.meta.url);
  const { columns, rows, places, legCosts, straightThrough, costMillionths }: FilmAnswers = JSON.parse(
    readFileSync(file, "utf8"),
  );
  const film = { cost: Float64Array.from(costMillionths, (millionths) => millionths / 1e6), columns, rows };

  // Both add the same doubles in another order: 1e-9 is room enough, and 1e-6 is what is asked.
  it("on a piece of a film costs what scikit-image's route_through_array says (C2)", () => {
    const [from, via, to] = places;
    const near = (value: number, known: number) => expect(Math.abs(value / known - 1)).toBeLessThan(1e-6);
    near(answer(traceTopic, { ...film, from, to }).cost, straightThrough);
    near(answer(traceTopic, { ...film, from, to, via: [via] }).cost, legCosts[0] + legCosts[1]);
  });

  it("follows an arc within half a pixel and is as long as it within 1 % (C4)", () => {
    const arc = field(140, 140, (u, v) => Math.abs(Math.hypot(u, v) - 100) < 1.5);
    const { points, path, cost, cautions } = answer(traceTopic, { ...arc, from: [100, 0], to: [0, 100] });
    for (const [u, v] of points) expect(Math.abs(Math.hypot(u, v) - 100)).toBeLessThan(1.5);
    expect(Math.abs(along(points) / (50 * Math.PI) - 1)).toBeLessThan(0.01);
    // The whole path lies on cheap pixels, and a stair is never shorter than the arc's chord.
    expect(cost).toBeCloseTo(0.05 * along(path), 9);
    expect(cautions).toEqual([]);
  });

  it("passes every place exactly, also between pixels (C3)", () => {
    const given = { from: [2.25, 3.5], via: [[12.1, 9.9]], to: [27.3, 4.75] };
    const { points, path } = answer(traceTopic, { ...even, ...given });
    for (const place of [given.from, ...given.via, given.to]) expect(points).toContainEqual(place);
    expect(points[0]).toEqual(given.from);
    expect(points.at(-1)).toEqual(given.to);
    expect(path[0]).toEqual([2, 4]);
    expect(path.at(-1)).toEqual([27, 5]);
  });

  it("never costs less for passing one more place, and the same from the other end (properties)", () => {
    const place = fc.tuple(fc.integer({ min: 0, max: 11 }), fc.integer({ min: 0, max: 9 }));
    const costs = fc.array(fc.double({ min: 0.05, max: 1, noNaN: true }), { minLength: 120, maxLength: 120 });
    fc.assert(
      fc.property(costs, place, place, place, (cost, from, via, to) => {
        fc.pre(from.join() !== to.join());
        const picture = { cost, columns: 12, rows: 10 };
        const straight = answer(traceTopic, { ...picture, from, to }).cost;
        expect(answer(traceTopic, { ...picture, from, to, via: [via] }).cost).toBeGreaterThanOrEqual(straight - 1e-12);
        expect(answer(traceTopic, { ...picture, from: to, to: from }).cost).toBeCloseTo(straight, 10);
      }),
      { numRuns: 40, seed: 3 },
    );
  });

  it("takes plain numbers and typed ones alike", () => {
    const asked = { columns: 30, rows: 20, from: [0, 0], to: [29, 19] };
    const typed = answer(traceTopic, { ...asked, cost: Float32Array.from(even.cost) });
    expect(answer(traceTopic, { ...asked, cost: [...even.cost] })).toEqual(typed);
  });

  it("says where it follows no line (C5)", () => {
    expect(answer(traceTopic, { ...even, from: [1, 1], to: [20, 9] }).cautions).toEqual([
      expect.stringContaining("follows no line"),
    ]);
  });
});

describe("what is refused", () => {
  const asked = { ...even, from: [1, 1], to: [20, 9] };

  it.each([
    [{ from: [-0.6, 3] }, "from"],
    [{ to: [29.5, 3] }, "to"],
    [{ via: [[3, 3] as Place, [4, 19.5] as Place] }, "via[1]"],
    [{ to: [1.2, 0.8] }, "to"],
    [{ rows: 21 }, "cost"],
  ])("%j, at its path", (change, path) => {
    const { code, faults } = refusalOf({ ...asked, ...change });
    expect(code).toBe("input.impossible");
    expect(faults.map((fault) => fault.path)).toEqual([path]);
  });

  it.each([
    [[1, 0, 1, 1], "cost[1]"],
    [Float32Array.of(1, 1, Number.NaN, 1), "cost[2]"],
    [[1, "x", 1, 1], "cost"],
    ["picture", "cost"],
    [undefined, "cost"],
  ])("costs of %j", (cost, path) => {
    const { code, faults } = refusalOf({ cost, columns: 2, rows: 2, from: [0, 0], to: [1, 1] });
    expect(code).toBe("input.invalid");
    expect(faults.map((fault) => fault.path)).toEqual([path]);
  });

  it("a film's name: only the shell knows files", () => {
    const { faults } = refusalOf({ ...asked, film: "film.png" });
    expect(faults).toEqual([{ path: "film", says: "is not a field of this input" }]);
  });
});
