import { describe, expect, it } from "vitest";
import { leastCostTree } from "../../../core/geometry/least-cost-tree.ts";
import { filmPoint, pixelsBetween } from "../kernels/film-point.ts";
import { FilmPaths } from "./film-paths.ts";

const [columns, rows] = [80, 60];
/** A cheap ditch down column 20 and along row 50; everything else is dear. */
const cost = Float32Array.from({ length: columns * rows }, (_, index) => {
  const [column, row] = [index % columns, Math.floor(index / columns)];
  return (column === 20 && row <= 50) || (row === 50 && column >= 20) ? 0.05 : 1;
});
const field = { cost, columns, rows };
const [top, end] = [filmPoint(20, 2), filmPoint(70, 50)];

function pathsFrom(...starts: readonly ReturnType<typeof filmPoint>[]) {
  const paths = new FilmPaths(columns, rows, 2);
  for (const start of starts) paths.keep("dark", leastCostTree(field, paths.indexOf(start)));
  return paths;
}

describe("paths over the ridge of a film", () => {
  it("follow the ditch, not the straight line", () => {
    const course = pathsFrom(top).finder("dark")(top, end) ?? [];
    expect(course[0]).toEqual(top);
    expect(course.at(-1)).toEqual(end);
    // The straight line passes the ditch's corner at 35 pixels; the course rounds it by a few.
    expect(Math.min(...course.map((at) => pixelsBetween(at, filmPoint(20, 50))))).toBeLessThan(5);
  });

  it("are the same from a tree at either end", () => {
    const there = pathsFrom(top).finder("dark")(top, end) ?? [];
    const back = pathsFrom(end).finder("dark")(top, end) ?? [];
    expect(back).toHaveLength(there.length);
    there.forEach((at, index) => {
      expect(pixelsBetween(at, back[index] ?? filmPoint(0, 0))).toBeLessThan(0.01);
    });
  });

  it("are unknown without a tree, along other lines, and beyond a near tree", () => {
    expect(pathsFrom().finder("dark")(top, end)).toBeUndefined();
    expect(pathsFrom(top).finder("bright")(top, end)).toBeUndefined();
    const near = new FilmPaths(columns, rows);
    near.keep("dark", leastCostTree(field, near.indexOf(top), { column: 0, row: 0, columns: 40, rows: 40 }));
    expect(near.finder("dark")(top, end)).toBeUndefined();
    expect(near.finder("dark")(top, filmPoint(20, 30))).toBeDefined();
  });

  it("forget the oldest tree first", () => {
    const paths = pathsFrom(top, end, filmPoint(20, 30));
    expect(paths.treeFrom("dark", top)).toBeUndefined();
    expect(paths.treeFrom("dark", end)).toBeDefined();
  });

  it("take places between and beyond pixels to the pixel they belong to", () => {
    const paths = pathsFrom();
    expect(paths.indexOf(filmPoint(3.4, 2.6))).toBe(3 * columns + 3);
    expect(paths.indexOf(filmPoint(-5, 900))).toBe(59 * columns);
  });
});
