import { describe, expect, it } from "vitest";
import { canalBoard } from "../../../../figures/canal-board.ts";
import { levelBeside } from "./board-walk.ts";
import { firstMolars, type Roots } from "./teeth-for-tests.ts";

const boardOf = (twoDigit: keyof typeof firstMolars, roots: Roots) =>
  canalBoard({ tooth: firstMolars[twoDigit], roots, theme: "paper" });
const two: Roots = [
  { name: "M", levels: [2, 2, 1] },
  { name: "D", levels: [1] },
];
const at = (root: number, level: number) => ({ root, level });

describe("arrows on the board", () => {
  it("go along a lower root towards its foramen downwards, and stop at its ends", () => {
    const board = boardOf("46", two);
    expect(levelBeside(board, at(0, 0), "ArrowDown")).toEqual(at(0, 1));
    expect(levelBeside(board, at(0, 2), "ArrowUp")).toEqual(at(0, 1));
    expect(levelBeside(board, at(0, 2), "ArrowDown")).toBeUndefined();
    expect(levelBeside(board, at(0, 0), "ArrowUp")).toBeUndefined();
  });

  it("go along an upper root towards its foramen upwards", () => {
    const board = boardOf("26", [{ name: "MB", levels: [2, 1] }]);
    expect(levelBeside(board, at(0, 0), "ArrowUp")).toEqual(at(0, 1));
    expect(levelBeside(board, at(0, 1), "ArrowDown")).toEqual(at(0, 0));
  });

  it("go to the root that is drawn beside, at the nearest height", () => {
    // 46 has its mesial side to the left, 36 to the right.
    const left = boardOf("46", two);
    expect(levelBeside(left, at(0, 2), "ArrowRight")).toEqual(at(1, 0));
    expect(levelBeside(left, at(0, 2), "ArrowLeft")).toBeUndefined();
    expect(levelBeside(left, at(1, 0), "ArrowLeft")).toEqual(at(0, 0));
    expect(levelBeside(boardOf("36", two), at(0, 2), "ArrowLeft")).toEqual(at(1, 0));
    const lone = boardOf("46", [two[0] ?? { name: "M", levels: [1] }, { name: "D", levels: [1, 1, 1, 2] }]);
    expect(levelBeside(lone, at(0, 2), "ArrowRight")).toEqual(at(1, 3));
  });

  it("are nothing for another key, or from a level that is not there", () => {
    expect(levelBeside(boardOf("46", two), at(0, 0), "s")).toBeUndefined();
    expect(levelBeside(boardOf("46", two), at(4, 0), "ArrowUp")).toBeUndefined();
  });
});
