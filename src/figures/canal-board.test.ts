import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CanalLevel, CanalRoot } from "../core/tooth/canal-root.ts";
import { teeth } from "../core/tooth/teeth.ts";
import { usualRoots } from "../core/tooth/usual-roots.ts";
import { canalBoard } from "./canal-board.ts";
import { allNodes, expectClear, labelsIn, toothNamed } from "./drawn-for-tests.ts";
import { svgText } from "./svg-text.ts";

const boardOf = (twoDigit: string, roots: readonly CanalRoot[]) =>
  canalBoard({ tooth: toothNamed(twoDigit), roots, theme: "paper" });
const lone = (levels: CanalLevel[]): CanalRoot[] => [{ name: "R", levels, orifices: ["C"] }];

describe("the board of roots and canals", () => {
  it("of every one of the 52 teeth has no word on another or outside, and a place for every level", () => {
    for (const { twoDigit, arch } of teeth) {
      const { roots } = usualRoots(twoDigit);
      const { figure, levels, columns } = boardOf(twoDigit, roots);
      expectClear(figure);
      expect(levels).toHaveLength(roots.reduce((sum, root) => sum + root.levels.length, 0));
      expect([...columns].map(({ root }) => root).sort()).toEqual(roots.map((_, at) => at));
      // Upper roots point up, so that their orifices are the lowest.
      for (const { y, level } of levels) if (level === 0) expect(y > 0.5, twoDigit).toBe(arch === "upper");
    }
  });

  const level = fc.oneof<fc.Arbitrary<CanalLevel>[]>(
    fc.integer({ min: 1, max: 4 }),
    fc.constantFrom<CanalLevel>({ canals: 1, cShape: "C1" }, { canals: 3, cShape: "C3" }, { canals: 1, cShape: "C4" }),
  );
  const anyRoots = fc
    .tuple(
      fc.shuffledSubarray(["MB", "DB", "P", "M", "D", "DL", "X"], { minLength: 1, maxLength: 5 }),
      fc.array(fc.array(level, { minLength: 1, maxLength: 12 }), { minLength: 5, maxLength: 5 }),
    )
    .map(([names, levels]): CanalRoot[] => names.map((name, at) => ({ name, levels: levels[at] ?? [1] })));

  it("of any roots keeps its words apart, its levels in order and each place to add between its neighbours", () => {
    fc.assert(
      fc.property(fc.constantFrom(...teeth), anyRoots, (tooth, roots) => {
        const { figure, levels, between } = canalBoard({ tooth, roots, theme: "dark" });
        expectClear(figure);
        roots.forEach((root, at) => {
          const own = levels.filter((one) => one.root === at).map(({ y }) => (tooth.arch === "upper" ? -y : y));
          expect(own).toEqual([...own].sort((a, b) => a - b));
          expect(own).toHaveLength(root.levels.length);
          const gaps = between.filter((one) => one.root === at);
          expect(gaps).toHaveLength(Math.max(1, root.levels.length - 1));
          for (const gap of gaps) {
            const y = tooth.arch === "upper" ? -gap.y : gap.y;
            expect(y).toBeGreaterThan(own[gap.level] ?? 9);
            expect(y).toBeLessThan(own[gap.level + 1] ?? 9);
          }
        });
      }),
      { numRuns: 30 },
    );
  });

  it("draws two roots as they lie in the mouth: mesial where the section has it", () => {
    const order = (twoDigit: string) =>
      boardOf(twoDigit, usualRoots(twoDigit).roots).columns.map(({ root }) => usualRoots(twoDigit).roots[root]?.name);
    // Seen from the crown with the buccal side up, 36 has its mesial side to the right and 46 to the left.
    expect(order("36")).toEqual(["D", "M"]);
    expect(order("46")).toEqual(["M", "D"]);
  });

  it("says each root from orifice to foramen, and the form of each level", () => {
    const { figure } = boardOf("47", lone([{ canals: 1, cShape: "C1" }, { canals: 2, cShape: "C3" }, 1]));
    expect(figure.alternative).toContain("Tooth 47, lower right second molar");
    expect(figure.alternative).toContain("R 1-2-1 (C, C-shaped C1 C3)");
    const texts = labelsIn(figure).map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining(["C1", "C3", "1"]));
    const forms = allNodes(figure.tree).flatMap(({ node }) => node.attributes["data-form"] ?? []);
    expect(forms).toEqual(["C1", "C3"]);
  });

  it("ends a canal at the last level with a lumen", () => {
    const drawn = (levels: CanalLevel[]) => svgText(boardOf("47", lone(levels)).figure);
    const open = drawn([1, 1, 1]);
    const closed = drawn([1, { canals: 1, cShape: "C4" }, { canals: 0, cShape: "C5" }]);
    const supposed = (text: string) => text.match(/stroke-dasharray="1.5 4"/g)?.length ?? 0;
    expect([supposed(open), supposed(closed)]).toEqual([0, 1]);
  });
});
