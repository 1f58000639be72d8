import { describe, expect, it } from "vitest";
import { seededRandom } from "../../../src/core/statistics/seeded-random.ts";
import { clickedCourse } from "./clicked-course.ts";
import { beforeEnd, evenly, fromStop, type OnFilm } from "./film-line.ts";

/** A quarter of a circle of 200 px: its length is 100 pi. */
const arc: OnFilm[] = Array.from({ length: 91 }, (_, degree): OnFilm => {
  const turn = (degree * Math.PI) / 180;
  return [200 * Math.sin(turn), 200 * (1 - Math.cos(turn))];
});

describe("a course as it was clicked", () => {
  const { points, anchors } = clickedCourse(arc, seededRandom(1));

  it("has a point about every 3 px, and a few of them as anchors from end to end", () => {
    expect((100 * Math.PI) / (points.length - 1)).toBeCloseTo(3, 1);
    expect(anchors).toHaveLength(5);
    expect(anchors[0]).toEqual(points[0]);
    expect(anchors.at(-1)).toEqual(points.at(-1));
    for (const anchor of anchors) expect(points).toContainEqual(anchor);
  });

  it("has anchors that miss the true course by a click's error of 0.8 px, to neither side", () => {
    const misses = Array.from({ length: 200 }, (_, seed) => clickedCourse(arc, seededRandom(seed)).anchors)
      .flat()
      .map(([u, v]) => Math.hypot(u, v - 200) - 200);
    const mean = misses.reduce((sum, off) => sum + off, 0) / misses.length;
    const sigma = Math.sqrt(misses.reduce((sum, off) => sum + off ** 2, 0) / misses.length);
    // 1000 anchors: the standard error of the mean is 0.025 px, that of the deviation 0.018 px; three of each are allowed.
    expect(Math.abs(mean)).toBeLessThan(0.076);
    expect(Math.abs(sigma - 0.8)).toBeLessThan(0.054);
  });

  it("runs as smoothly as the true course does: no step turns by more than a degree beside its own", () => {
    const headings = points
      .slice(1)
      .map(([u, v], at) => Math.atan2(v - (points[at]?.[1] ?? 0), u - (points[at]?.[0] ?? 0)));
    const turns = headings.slice(1).map((heading, at) => ((heading - (headings[at] ?? 0)) * 180) / Math.PI);
    // 3 px on a radius of 200 px turn by 0.86 degrees.
    for (const turn of turns) expect(Math.abs(turn - 0.86)).toBeLessThan(1);
  });

  it("is the same for the same seed and another for another", () => {
    expect(clickedCourse(arc, seededRandom(1)).points).toEqual(points);
    expect(clickedCourse(arc, seededRandom(2)).points).not.toEqual(points);
  });

  it("of two points keeps both as anchors", () => {
    const line: OnFilm[] = [
      [0, 0],
      [0, 2],
    ];
    expect(clickedCourse(line, seededRandom(3)).anchors).toHaveLength(2);
  });
});

describe("a line on a film", () => {
  it("is divided evenly, ends kept", () => {
    const steps = evenly(arc, 10);
    expect(steps).toHaveLength(32);
    expect(steps[0]).toEqual(arc[0]);
    expect(steps.at(-1)?.[0]).toBeCloseTo(200, 6);
  });

  it("has its place before the end at the length asked for, and its start where that is too much", () => {
    const line: OnFilm[] = [
      [0, 0],
      [0, 10],
      [5, 10],
    ];
    expect(beforeEnd(line, 7)).toEqual([0, 8]);
    expect(beforeEnd(line, 99)).toEqual([0, 0]);
  });

  it("leads from a stop into a straight canal without a bend", () => {
    const canal = Array.from({ length: 20 }, (_, at): OnFilm => [100, 300 - at * 10]);
    const way = fromStop([100, 500], canal, 26);
    expect(way[0]).toEqual([100, 500]);
    for (const [u] of way) expect(u).toBeCloseTo(100, 6);
    expect(way.map(([, v]) => v)).toEqual([...way.map(([, v]) => v)].sort((a, b) => b - a));
  });
});
