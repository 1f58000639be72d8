import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import { lesionTopic } from "./lesion-topic.ts";

type Points = [number, number][];

/** Corners on an ellipse about (cx, cy) with half axes a and b, turned by `turn` radians. */
function ellipse(a: number, b: number, corners: number, { cx = 20, cy = 10, turn = 0 } = {}): Points {
  return Array.from({ length: corners }, (_, index) => {
    const t = (2 * Math.PI * index) / corners;
    const [x, y] = [a * Math.cos(t), b * Math.sin(t)];
    return [cx + x * Math.cos(turn) - y * Math.sin(turn), cy + x * Math.sin(turn) + y * Math.cos(turn)];
  });
}

const of = (points: Points, rest: object = {}) => answer(lesionTopic, { points, ...rest });

function refusalOf(input: unknown): Refusal {
  try {
    answer(lesionTopic, input);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
  }
  throw new Error("not refused");
}

describe("the size of a lesion", () => {
  // Closed forms: area pi a b, axes 2a and 2b. A polygon of 40 corners cuts off 0.41 %.
  it.each([
    [4, 2, 0],
    [3, 2.9, 0.7],
    [6, 1, 2],
  ])("is that of an ellipse of half axes %d and %d within 0.5 % (C1, C3)", (a, b, turn) => {
    const found = of(ellipse(a, b, 40, { turn }));
    const near = (value: number, truth: number) => expect(Math.abs(value / truth - 1)).toBeLessThan(0.005);
    near(found.areaMm2, Math.PI * a * b);
    near(found.largestDiameterMm, 2 * a);
    near(found.acrossDiameterMm, 2 * b);
    near(found.equivalentDiameterMm, 2 * Math.sqrt(a * b));
    expect(found.centre).toEqual([expect.closeTo(20, 9), expect.closeTo(10, 9)]);
  });

  it("is exact for a triangle and for a rectangle, whichever way round (C1, C3)", () => {
    const triangle: Points = [
      [0, 0],
      [4, 0],
      [0, 3],
    ];
    for (const points of [triangle, [...triangle].reverse()])
      expect(of(points)).toMatchObject({
        areaMm2: expect.closeTo(6, 12),
        largestDiameterMm: expect.closeTo(5, 12),
        // The height over the longest side: 2 * 6 / 5.
        acrossDiameterMm: expect.closeTo(2.4, 12),
        centre: [expect.closeTo(4 / 3, 12), expect.closeTo(1, 12)],
      });
    const rectangle: Points = [...square, [0, 0]];
    expect(of(rectangle)).toMatchObject({ areaMm2: 16, largestDiameterMm: expect.closeTo(4 * Math.SQRT2, 12) });
  });

  it("of a hollow outline counts the hollow out and the width over all (C1, C3)", () => {
    const notched: Points = [
      [0, 0],
      [6, 0],
      [6, 4],
      [3, 1],
      [0, 4],
    ];
    // The rectangle 6 by 4 less the triangle of base 6 and height 3.
    expect(of(notched).areaMm2).toBeCloseTo(24 - 9, 12);
    expect(of(notched).largestDiameterMm).toBeCloseTo(Math.hypot(6, 4), 12);
  });

  it("does not change when the outline is moved and turned, and grows with its square (properties)", () => {
    const number = fc.double({ min: -50, max: 50, noNaN: true });
    const scale = fc.double({ min: 0.2, max: 5, noNaN: true });
    fc.assert(
      fc.property(number, number, scale, fc.double({ min: 0, max: 6, noNaN: true }), (cx, cy, k, turn) => {
        const plain = of(ellipse(3, 2, 24));
        const moved = of(ellipse(3 * k, 2 * k, 24, { cx, cy, turn }));
        expect(moved.areaMm2 / plain.areaMm2).toBeCloseTo(k * k, 8);
        expect(moved.largestDiameterMm / plain.largestDiameterMm).toBeCloseTo(k, 8);
        expect(moved.acrossDiameterMm / plain.acrossDiameterMm).toBeCloseTo(k, 6);
      }),
      { numRuns: 40, seed: 4 },
    );
  });

  it("does not depend on where the outline begins", () => {
    const points = ellipse(3, 2, 24);
    const turned = [...points.slice(7), ...points.slice(0, 7)];
    expect(of(turned).areaMm2).toBeCloseTo(of(points).areaMm2, 9);
    expect(of(turned).acrossDiameterMm).toBeCloseTo(of(points).acrossDiameterMm, 9);
  });
});

const square: Points = [
  [0, 0],
  [4, 0],
  [4, 4],
  [0, 4],
];

describe("the distance to the apex (C4)", () => {
  it.each([
    [[2, -3], 3, 3, false],
    [[7, 8], 5, 5, false],
    [[2, 3.5], 0, 0.5, true],
    [[2, 0], 0, 0, undefined],
  ])("from %j is %d, to the edge %d", (apex, distance, edge, inside) => {
    const found = of(square, { apex });
    expect(found.apexDistanceMm).toBeCloseTo(distance, 12);
    expect(found.apexToEdgeMm).toBeCloseTo(edge, 12);
    if (inside !== undefined) expect(found.apexInside).toBe(inside);
    expect(found.notComputed).toEqual([]);
  });

  it("is named as not computed where no apex is given", () => {
    const found = of(square);
    expect(found.notComputed.map(({ name }) => name)).toEqual(["apexDistanceMm", "apexToEdgeMm", "apexInside"]);
    expect(found).not.toHaveProperty("apexDistanceMm");
  });
});

describe("the class of the size (C7)", () => {
  // data/pess-2021 (seen): 3.0 is S1, 3.01 is S2, 5.0 is S2, 5.01 is S3.
  it.each([
    [3, "S1"],
    [3.01, "S2"],
    [5, "S2"],
    [5.01, "S3"],
  ])("%d mm is %s", (diameter, name) => {
    const points: Points = [
      [0, 0],
      [diameter, 0],
      [diameter / 2, 1],
    ];
    expect(of(points).sizeClass).toEqual({ source: "pess-2021", class: name, within: [name] });
  });

  it("names every class that the interval reaches", () => {
    const { sizeClass } = of(ellipse(1.5, 1, 24), { sigmaMm: 0.2 });
    expect(sizeClass.within).toEqual(["S1", "S2"]);
    expect(of(ellipse(2, 1, 24), { sigmaMm: 0, scaleRelativeSigma: 0.3 }).sizeClass.within).toEqual(["S1", "S2", "S3"]);
  });
});

describe("cautions (C8)", () => {
  it("say how much an ellipse of so few corners would lose: 12 corners lose 4.5 %", () => {
    expect(of(ellipse(3, 2, 12)).cautions).toEqual([expect.stringContaining("would read 4.5 % too small")]);
    expect(of(ellipse(3, 2, 24)).cautions).toEqual([]);
  });

  it("say that corners closer than the click error err together", () => {
    expect(of(ellipse(3, 2, 200), { sigmaMm: 0.1 }).cautions).toEqual([expect.stringContaining("too narrow")]);
    expect(of(ellipse(3, 2, 200), { sigmaMm: 0.01 }).cautions).toEqual([]);
  });
});

describe("what is refused (C2)", () => {
  it.each([
    [[], 0],
    [[[1, 1]], 1],
    [
      [
        [1, 1],
        [2, 2],
      ],
      2,
    ],
    [
      [
        [1, 1],
        [2, 2],
        [1, 1],
      ],
      2,
    ],
  ])("too few corners: %j", (points, different) => {
    const { code, faults } = refusalOf({ points });
    expect(code).toBe("trace.tooFewPoints");
    expect(faults).toEqual([{ path: "points", says: expect.stringContaining(`${different} of them apart`) }]);
  });

  it("an outline that crosses itself, with the place", () => {
    const { code, faults } = refusalOf({
      points: [
        [0, 0],
        [4, 4],
        [4, 0],
        [0, 4],
      ],
    });
    expect(code).toBe("input.impossible");
    expect(faults[0]?.path).toBe("points[2]");
    expect(faults[0]?.says).toContain("[2.00, 2.00]");
  });

  it.each([
    ["touches itself at a corner", [...square, [2, 0], [0, 2]]],
    [
      "runs back along itself",
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [4, 2],
        [0, 2],
      ],
    ],
    [
      "lies on itself",
      [
        [0, 0],
        [4, 0],
        [4, 2],
        [3, 0],
        [1, 0],
        [0, 2],
      ],
    ],
    [
      "lies in one line",
      [
        [0, 0],
        [1, 1],
        [2, 2],
      ],
    ],
  ])("an outline that %s", (_, points) => {
    expect(refusalOf({ points }).code).toBe("input.impossible");
  });

  it("what is not in range, by its path", () => {
    const { code, faults } = refusalOf({ points: [[0, 0], [1], [2000, 1]], sigmaMm: 6, scaleRelativeSigma: -1 });
    expect(code).toBe("input.invalid");
    expect(faults.map(({ path }) => path).sort()).toEqual([
      "points[1]",
      "points[2][0]",
      "scaleRelativeSigma",
      "sigmaMm",
    ]);
  });
});
