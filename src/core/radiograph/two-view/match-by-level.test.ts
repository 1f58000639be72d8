import { describe, expect, it } from "vitest";
import { matchByLevel } from "./match-by-level.ts";

const course = (count: number, u: (v: number) => number, height = 12) =>
  Array.from({ length: count }, (_, index) => {
    const v = (index / (count - 1)) * height;
    return { u: u(v), v };
  });
const free = (...courses: { u: number; v: number }[][]) => courses.map((points) => ({ points, rows: [] }));

describe("pairing by level (C6)", () => {
  // Height counts far more than distance along: 0.05 mm is what two per cent of half a millimetre of path leaves.
  it("pairs places of one height whatever the number of points", () => {
    const pairs = matchByLevel(
      free(
        course(25, () => 0),
        course(40, (v) => 0.02 * v * v),
      ),
      13,
    );
    expect(pairs).toHaveLength(13);
    for (const [a, b] of pairs) expect(Math.abs((a?.v ?? 0) - (b?.v ?? 9))).toBeLessThan(0.05);
  });

  it("pairs first with first and last with last, on courses that run up the film too", () => {
    const up = course(10, (v) => v / 3).map(({ u, v }) => ({ u, v: -v }));
    const pairs = matchByLevel(
      free(
        up,
        up.slice().map(({ u, v }) => ({ u: u + 1, v })),
      ),
      5,
    );
    expect(pairs[0]?.[0]).toEqual({ u: 0, v: -0 });
    expect(pairs.at(-1)?.[1]?.v).toBeCloseTo(-12, 9);
  });

  it("keeps the order of places where a course turns back in height", () => {
    const hook = [...course(20, () => 0), { u: 0.5, v: 12.2 }, { u: 1, v: 12.1 }, { u: 1.5, v: 11.8 }];
    const pairs = matchByLevel(
      free(
        hook,
        course(20, () => 0, 11.8),
      ),
      60,
    );
    const reached = pairs.map(([place]) =>
      hook.findIndex(({ u, v }) => u >= (place?.u ?? 0) - 1e-9 && (u > 0 || v >= (place?.v ?? 0) - 1e-9)),
    );
    reached.forEach((index, at) => {
      expect(index).toBeGreaterThanOrEqual(reached[at - 1] ?? 0);
    });
    expect(pairs.at(-1)?.[0]).toEqual({ u: 1.5, v: 11.8 });
  });
});
