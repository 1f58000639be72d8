import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CanalRoot } from "../core/tooth/canal-root.ts";
import { canalNames, canalsAt } from "../core/tooth/canal-root.ts";
import { canalCourse } from "./canal-course.ts";
import type { CanalState } from "./canal-state.ts";

const mb: CanalRoot = { name: "MB", levels: [2, 1], orifices: ["MB1", "MB2"] };
const states = (given: Record<string, CanalState>) => (canal: string) => given[canal] ?? { state: "notFound" as const };
const styleAt = (course: ReturnType<typeof canalCourse>, share: number, side: -1 | 0 | 1) =>
  course.stretches
    .filter(
      ({ from, to, offsetAt }) => share > from && share < to && (side === 0 || Math.sign(offsetAt(share)) === side),
    )
    .map(({ style }) => style);

describe("canalCourse", () => {
  it("draws two canals apart at the orifice and as one at the foramen where they join", () => {
    const { stretches } = canalCourse(mb, states({}));
    const ends = (share: number) =>
      new Set(stretches.filter(({ from, to }) => share >= from && share <= to).map((one) => one.offsetAt(share)));
    expect([...ends(0)].sort()).toEqual([-0.5, 0.5]);
    expect([...ends(1)]).toEqual([0]);
  });

  it("draws where canals have joined the one that has come farthest", () => {
    const course = canalCourse(
      mb,
      states({ MB1: { state: "blocked", with: "ledge", at: 0.4 }, MB2: { state: "filled" } }),
    );
    expect(styleAt(course, 0.9, 0)).toEqual(["supposed", "full"]);
    expect(styleAt(course, 0.2, -1)).toEqual(["open"]);
    expect(styleAt(course, 0.2, 1)).toEqual(["full"]);
    expect(course.blocks).toEqual([{ canal: "MB1", at: 0.4, offset: expect.any(Number) }]);
    expect(course.blocks[0]?.offset).toBeLessThan(0);
  });

  it.each([
    ["notFound", ["missing"], ["missing"]],
    ["located", ["open"], ["supposed"]],
    ["negotiated", ["passed"], ["passed"]],
    ["shaped", ["open"], ["open"]],
    ["medicated", ["dressed"], ["dressed"]],
    ["filled", ["full"], ["full"]],
  ] as const)("%s is %s at the orifice and %s beyond", (state, coronal, apical) => {
    const course = canalCourse({ name: "P", levels: [1] }, states({ P: { state } }));
    expect(styleAt(course, 0.05, 0)).toEqual(coronal);
    expect(styleAt(course, 0.8, 0)).toEqual(apical);
  });

  it("only supposes the way of a canal that nobody has looked for yet", () => {
    const course = canalCourse({ name: "P", levels: [1] }, states({ P: { state: "notFound", looked: false } }));
    expect([styleAt(course, 0.05, 0), styleAt(course, 0.8, 0)]).toEqual([["supposed"], ["supposed"]]);
  });

  it("keeps a block on the way, wherever it is said to be", () => {
    const block = (at?: number) => {
      const state: CanalState =
        at === undefined ? { state: "blocked", with: "post" } : { state: "blocked", with: "post", at };
      return canalCourse({ name: "P", levels: [1] }, states({ P: state })).blocks[0]?.at;
    };
    expect([block(-1), block(2), block()]).toEqual([0.06, 0.96, 0.64]);
  });

  it("leads every canal of any root from 0 to 1 without a gap, and gives the counts of its levels", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 5 }), (levels) => {
        const root: CanalRoot = { name: "R", levels };
        const { stretches } = canalCourse(root, states({ [canalNames(root)[0] ?? ""]: { state: "filled" } }));
        const steps = Math.max(1, levels.length - 1);
        levels.forEach((level, at) => {
          const share = levels.length === 1 ? 0.5 : at / steps;
          const places = stretches
            .filter(({ from, to }) => share >= from && share <= to)
            .map((one) => one.offsetAt(share));
          expect(new Set(places.map((place) => place.toFixed(6))).size).toBe(canalsAt(level));
        });
      }),
    );
  });
});
