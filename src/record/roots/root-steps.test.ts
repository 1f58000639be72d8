import { describe, expect, it } from "vitest";
import type { CanalRoot } from "../../core/tooth/canal-root.ts";
import { usualRoots } from "../../core/tooth/usual-roots.ts";
import { addRoot, nextSide, putOnSide, takeRoot } from "./root-steps.ts";
import { done, hand, why } from "./root-steps-for-tests.ts";

describe("a root", () => {
  const chain = (twoDigit: string, start: readonly CanalRoot[], times: number) => {
    let now = hand(twoDigit, start);
    for (let turn = 0; turn < times; turn += 1) {
      const step = done(addRoot(now));
      now = { ...now, roots: step.roots, at: step.at };
    }
    return now.roots.map(({ name }) => name);
  };

  it("added to a lower molar is the lingual third root, then a buccal one", () => {
    const step = done(addRoot(hand("46", usualRoots("46").roots)));
    expect(step).toMatchObject({ at: { root: 2, level: 0 }, says: "root DL added" });
    expect(step.roots[2]).toEqual({ name: "DL", side: "lingual", levels: [1] });
    expect(chain("46", usualRoots("46").roots, 2)).toEqual(["M", "D", "DL", "DB"]);
  });

  it.each([
    ["14", ["MB", "DB", "P"], 1],
    ["15", ["B", "P"], 1],
    ["15", ["MB", "DB", "P"], 2],
    ["35", ["B", "L"], 1],
    ["26", ["MB", "DB", "P", "MP"], 1],
    ["31", ["B", "L"], 1],
  ] as const)("added to %s makes %j", (tooth, names, times) => {
    expect(chain(tooth, usualRoots(tooth).roots, times)).toEqual(names);
  });

  it("that parts gives its name away and keeps its canals", () => {
    const step = done(addRoot(hand("14", usualRoots("14").roots)));
    expect(step.says).toBe("root B is MB, root DB added");
    expect(step.roots[0]).toEqual({ name: "MB", side: "buccal", levels: [1] });
    const lone = done(addRoot(hand("47", [{ name: "R", levels: [1, 2], orifices: ["Own"] }])));
    expect(lone.roots).toEqual([
      { name: "M", levels: [1, 2], orifices: ["Own"] },
      { name: "D", levels: [1] },
    ]);
  });

  it("is not added beyond six, nor the last one taken away", () => {
    expect(chain("11", usualRoots("11").roots, 5)).toHaveLength(6);
    const six = ["A", "B", "C", "D", "E", "F"].map((name): CanalRoot => ({ name, levels: [1] }));
    expect(why(addRoot(hand("11", six)))).toContain("6 roots");
    expect(why(takeRoot(hand("11", usualRoots("11").roots)))).toBe("a tooth has at least one root");
    expect(done(takeRoot(hand("46", usualRoots("46").roots, 1)))).toMatchObject({
      roots: [{ name: "M" }],
      at: { root: 0, level: 0 },
      says: "root D taken away",
    });
  });

  it("is put on a side, and in line again", () => {
    const extra = hand("46", [...usualRoots("46").roots, { name: "X", levels: [1] }], 2);
    expect(nextSide(extra)).toBe("buccal");
    const lingual = done(putOnSide(extra, "lingual", "lingual"));
    expect(lingual).toMatchObject({ says: "root X lies lingual" });
    expect(lingual.roots[2]).toEqual({ name: "X", side: "lingual", levels: [1] });
    const inLine = putOnSide({ ...extra, roots: lingual.roots }, undefined, "in line");
    expect(done(inLine).roots[2]).toEqual({ name: "X", levels: [1] });
  });
});
