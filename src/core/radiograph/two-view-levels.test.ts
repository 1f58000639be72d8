import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { type BentCanal, placesOf, shown, viewsOf } from "./two-view/bent-canal-for-tests.ts";
import { type TwoViewInput, twoViewInput } from "./two-view/two-view-input.ts";
import { type TwoViewOutput, twoViewOutput } from "./two-view/two-view-output.ts";
import { twoViewTopic } from "./two-view-topic.ts";

type Raw = Parameters<typeof twoViewInput.parse>[0];
const inSpace = (input: Raw): TwoViewOutput => twoViewOutput.parse(answer(twoViewTopic, input));
type Pair = [number, number];
const canal: BentCanal = { l1: 8, radius: 6, turnDeg: 40, l2: 2, planeDeg: 60 };

/** Distance along a trace of its point of an index. */
const along = (points: readonly Pair[], index: number): number =>
  points
    .slice(1, index + 1)
    .reduce((sum, [u, v], at) => sum + Math.hypot(u - (points[at]?.[0] ?? 0), v - (points[at]?.[1] ?? 0)), 0);

/** Two films of which the second shows heights that are off by up to so much between its ends, as a film bent in the mouth does. */
function films(offMm: number, steps = 40) {
  const places = placesOf(canal, steps);
  const [one, other] = [shown(places, 0), shown(places, 25)];
  const deep = places.at(-1)?.z ?? 1;
  const bent = other.map(([u, v]): Pair => [u, v + offMm * Math.sin((Math.PI * v) / deep)]);
  const row = (index: number) => [along(one, index), along(bent, index)];
  return { one, bent, row, places, steps };
}

const views = (one: Pair[], other: Pair[]): TwoViewInput["views"] =>
  twoViewInput.parse({
    views: [
      { horizontalAngleDeg: 0, points: one },
      { horizontalAngleDeg: 25, points: other },
    ],
  }).views;

/** y of the places found one by one at a height. */
function depthAt({ points = [] }: TwoViewOutput, zMm: number): number {
  const next = points.findIndex(([, , z]) => z >= zMm);
  const [, y0, z0] = points[next - 1] ?? [0, 0, 0];
  const [, y1, z1] = points[next] ?? [0, 0, 0];
  return y0 + ((zMm - z0) / (z1 - z0)) * (y1 - y0);
}

describe("levels that a person fixes", () => {
  // At a fixed level both films show one place, so that its depth is the closed form of C2 whatever the heights say.
  it("give their places the depth of the canal where the heights of one film are off", () => {
    const { one, bent, row, places } = films(0.8);
    const indices = [8, 16, 20, 24, 28, 32, 36];
    const free = inSpace({ views: views(one, bent.toSpliced(1, 1)), sigmaMm: 0.02 });
    const held = inSpace({ views: views(one, bent), sigmaMm: 0.02, levels: indices.map(row) });
    const fixed = held.levels?.filter((level) => level.fixed) ?? [];
    const off = (found: TwoViewOutput) =>
      indices.map((index, at) => Math.abs(depthAt(found, fixed[at]?.zMm ?? 0) - (places[index]?.y ?? 0)));
    expect(Math.max(...off(held))).toBeLessThan(0.02);
    expect(Math.max(...off(free))).toBeGreaterThan(0.1);
    expect(held.cautions.join()).toContain("fixed by hand as one level move heights on the films by up to 0.4 mm");
  });

  it("that are true already change nothing", () => {
    const { one, bent, row } = films(0);
    const free = inSpace({ views: views(one, bent.toSpliced(1, 1)), sigmaMm: 0.02 });
    const held = inSpace({ views: views(one, bent), sigmaMm: 0.02, levels: [row(10), row(30)] });
    expect(held.lengthMm).toBeCloseTo(free.lengthMm ?? 0, 2);
    expect(held.curvature?.pruettDeg).toBeCloseTo(canal.turnDeg, 0);
    expect(held.side).toBe(free.side);
    expect(held.matched).toBe("byLevel");
  });

  it("stand among the levels that were used, and the others keep their order between them", () => {
    const { one, bent, row, places } = films(0.8);
    const rows = [row(12), row(25)];
    const { levels = [] } = inSpace({ views: views(one, bent), sigmaMm: 0.02, levels: rows });
    expect(levels.length).toBeGreaterThanOrEqual(10);
    expect(levels.length).toBeLessThanOrEqual(20);
    expect(levels.filter(({ fixed }) => fixed).map(({ alongMm }) => alongMm)).toEqual(
      rows.map((distances) => distances.map((one) => expect.closeTo(one, 6))),
    );
    const [first] = levels.filter(({ fixed }) => fixed);
    expect(Math.abs((first?.zMm ?? 0) - (places[12]?.z ?? 0))).toBeLessThan(0.45);
    for (const view of [0, 1])
      levels.forEach(({ alongMm }, index) => {
        if (index > 0) expect(alongMm[view]).toBeGreaterThan(levels[index - 1]?.alongMm[view] ?? 0);
      });
    expect(levels[0]?.alongMm).toEqual([0, 0]);
    expect(levels.at(-1)?.alongMm[1]).toBeCloseTo(along(bent, bent.length - 1), 6);
  });

  it("hold on three films, in any order of the films", () => {
    const places = placesOf(canal, 40);
    const on = [0, 20, -20].map((angle) => ({ horizontalAngleDeg: angle, points: shown(places, angle) }));
    const levels = [10, 20, 30].map((index) => on.map(({ points }) => along(points, index)));
    const there = inSpace({ views: on, sigmaMm: 0.02, levels });
    const back = inSpace({
      views: [...on].reverse(),
      sigmaMm: 0.02,
      levels: levels.map((distances) => [...distances].reverse()),
    });
    expect(there.curvature?.pruettDeg).toBeCloseTo(canal.turnDeg, 0);
    expect(back.curvature?.pruettDeg).toBeCloseTo(there.curvature?.pruettDeg ?? 0, 1);
    expect(back.levels?.map(({ alongMm }) => [...alongMm].reverse())).toHaveLength(there.levels?.length ?? 0);
  });

  it.each([
    ["a row for one film of two", [[3]], "levels[0]", "holds 1 distances for 2 views"],
    ["a place beyond a trace", [[3, 99]], "levels[0][1]", "99 mm is not inside the trace"],
    ["a place at the orifice", [[0, 3]], "levels[0][0]", "its ends are one level anyhow"],
    [
      "rows that cross",
      [
        [3, 6],
        [6, 5],
      ],
      "levels[1][1]",
      "5 mm is not beyond the 6 mm of the row before it",
    ],
  ])("refuse %s", (_, levels, path, says) => {
    const { one, bent } = films(0);
    expect(() => inSpace({ views: views(one, bent), levels })).toThrow(
      expect.objectContaining({
        code: "input.impossible",
        faults: [{ path, says: expect.stringContaining(says) }],
      }),
    );
  });
});

describe("levels without a word of a person", () => {
  it("are those of the points where they pair by index", () => {
    const places = placesOf(canal, 36);
    const found = inSpace({ views: viewsOf(places, [0, 25]), sigmaMm: 0.02 });
    expect(found.matched).toBe("byIndex");
    expect(found.levels).toHaveLength(13);
    found.levels?.forEach(({ zMm, fixed }, index) => {
      expect(zMm).toBeCloseTo(places[3 * index]?.z ?? 0, 6);
      expect(fixed).toBe(false);
    });
  });
});

describe("turning along the canal (C9)", () => {
  // Closed form: none on the straight part, s / R on the arc, all of it after.
  it.each([0, 90, 35])("is that of the arc in space, for a plane turned by %s degrees", (planeDeg) => {
    const bent = { ...canal, planeDeg };
    const { turn = [], seen = [] } = inSpace({ views: viewsOf(placesOf(bent), [0, 25]), sigmaMm: 0.005 });
    for (const { sMm, turnDeg, lowDeg, highDeg } of turn) {
      const truth = Math.min(canal.turnDeg, (Math.max(0, sMm - canal.l1) / canal.radius) * (180 / Math.PI));
      expect(Math.abs(turnDeg - truth)).toBeLessThan(1.5);
      expect(lowDeg).toBeLessThanOrEqual(turnDeg);
      expect(highDeg).toBeGreaterThanOrEqual(turnDeg);
    }
    // A bend of t turned by p from the film's plane shows atan(tan t cos p).
    const radians = Math.PI / 180;
    const onFilm = Math.atan(Math.tan(canal.turnDeg * radians) * Math.cos(planeDeg * radians)) / radians;
    expect(Math.abs((seen[0]?.profile.at(-1)?.turnDeg ?? 99) - onFilm)).toBeLessThan(1);
    expect(seen).toHaveLength(2);
    expect(seen[1]?.profile.map(({ sMm }) => sMm)).toEqual(turn.map(({ sMm }) => sMm));
  });

  it("is none on a straight canal, and held by both kinds where the receptor is not known", () => {
    const straight = placesOf({ ...canal, turnDeg: 0, l2: 4 });
    const none = inSpace({ views: viewsOf(straight, [0, 25]), sigmaMm: 0.005 });
    expect(none.turn?.every(({ turnDeg }) => turnDeg === 0)).toBe(true);
    const asked = { views: viewsOf(placesOf(canal), [0, 25]), sigmaMm: 0.02 } as const;
    const [either, turned, fixed] = (["unknown", "turnsWithBeam", "fixed"] as const).map((receptor) =>
      inSpace({ ...asked, receptor }),
    );
    const ends = [turned, fixed].map((one) => one?.turn?.at(-1));
    expect(either?.turn?.at(-1)?.lowDeg).toBe(Math.min(...ends.map((end) => end?.lowDeg ?? 0)));
    expect(either?.turn?.at(-1)?.highDeg).toBe(Math.max(...ends.map((end) => end?.highDeg ?? 0)));
  });
});
