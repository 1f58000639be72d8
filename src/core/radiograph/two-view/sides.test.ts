import { describe, expect, it } from "vitest";
import { deg } from "../../units.ts";
import type { BendInTooth } from "./course-reading.ts";
import { liesOf, sidesOf } from "./sides.ts";

const bend = (out: number, plane: number, angle = 30): BendInTooth => ({
  ...{ angleDeg: deg(angle), outOfFilmDeg: deg(out), planeDeg: deg(plane), towardsDeg: deg(90), apparentDeg: [] },
});
/** A course of given bends, with as many drawn courses as are given, each of one largest bend. */
const told = (bends: readonly BendInTooth[], drawn: readonly BendInTooth[]) => {
  const largest = bends.reduce((best, one) => (one.angleDeg > best.angleDeg ? one : best), bend(0, 0, 0));
  return sidesOf({
    reading: { bends, largest },
    draws: drawn.map((one) => ({ counts: 1, reading: { largest: one } })),
  });
};
const times = (count: number, one: BendInTooth) => Array<BendInTooth>(count).fill(one);

describe("the side of a bend (C10)", () => {
  it("is told from 80 per cent of what the films allow on", () => {
    const seen = bend(15, 30);
    const mixed = (same: number) => told([seen], [...times(same, seen), ...times(100 - same, bend(-12, 25))]);
    expect(mixed(80)).toMatchObject({ side: "buccal", sureness: 0.8, outShare: 1 });
    expect(mixed(79).side).toBe("undetermined");
    expect(told([bend(-15, 30)], times(10, bend(-15, 30))).side).toBe("lingual");
  });

  it("is withheld where less than a quarter of it turns ten degrees out", () => {
    const seen = bend(6, 9);
    const mixed = (out: number) => told([seen], [...times(out, bend(7, 10)), ...times(100 - out, seen)]);
    expect(mixed(25)).toMatchObject({ side: "buccal", outShare: 0.25 });
    expect(mixed(24).side).toBe("undetermined");
  });

  // A bend of 57 degrees in a plane turned by 8.8 deflects by 13.3 degrees.
  it("is told of a large bend whose deflection is ten degrees, though its plane is not", () => {
    expect(told([bend(13.3, 8.8, 57)], times(10, bend(13.3, 8.8, 57))).side).toBe("buccal");
  });

  it("of a second bend goes by its reading; two clear ones to opposite sides are mixed, a slight one is not", () => {
    const first = bend(25, 60, 35);
    const both = (second: BendInTooth) => told([first, second], times(10, first));
    expect(both(bend(-16, 50, 20))).toMatchObject({ side: "mixed", each: ["buccal", "lingual"] });
    expect(both(bend(-12, 50, 14))).toMatchObject({ side: "buccal", each: ["buccal", "lingual"] });
    expect(both(bend(-5, 9, 20))).toMatchObject({ side: "buccal", each: ["buccal", "undetermined"] });
  });

  it("of a straight course is none", () => {
    expect(told([], [])).toMatchObject({ side: "undetermined", each: [] });
  });
});

describe("where a canal lies", () => {
  it("is told where its interval is on one side", () => {
    expect(liesOf({ low: 0.1, high: 2, level: 0.95 })).toBe("buccal");
    expect(liesOf({ low: -2, high: -0.1, level: 0.95 })).toBe("lingual");
    expect(liesOf({ low: -0.1, high: 2, level: 0.95 })).toBe("undetermined");
  });
});
