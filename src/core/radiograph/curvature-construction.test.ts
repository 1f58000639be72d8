import { describe, expect, it } from "vitest";
import { angleBetween, distance, minus, type Vector, vector } from "../geometry/vector.ts";
import { measured } from "./curvature/measured-for-tests.ts";

/** Straight L1 down, an arc of radius R turning by t degrees to the right, straight L2; a point every 0.2 mm. */
function canal(l1: number, radius: number, turnDeg: number, l2: number): [number, number][] {
  const turn = (turnDeg * Math.PI) / 180;
  const arc = radius * turn;
  const count = Math.round((l1 + arc + l2) / 0.2);
  return Array.from({ length: count + 1 }, (_, at): [number, number] => {
    const s = ((l1 + arc + l2) * at) / count;
    const bent = Math.min(arc, Math.max(0, s - l1)) / radius;
    const [before, after] = [Math.min(s, l1), Math.max(0, s - l1 - arc)];
    return [
      radius * (1 - Math.cos(bent)) + after * Math.sin(turn),
      before + radius * Math.sin(bent) + after * Math.cos(turn),
    ];
  });
}

type Place = readonly number[];
const at = ([x = 0, y = 0, z = 0]: Place): Vector => vector(x, y, z);
const along = ([from, to]: readonly [Place, Place]): Vector => minus(at(to), at(from));
const angleOf = (a: readonly [Place, Place], b: readonly [Place, Place]): number =>
  (angleBetween(along(a), along(b)) * 180) / Math.PI;

function built(points: readonly (readonly number[])[]) {
  const found = measured({ points });
  if (found.construction === undefined) throw new Error("a bent course has a construction");
  return { found, made: found.construction };
}

describe("how the measures were built (C19)", () => {
  // Worked canals of known closed form: L1, R, t, L2.
  it.each([
    [10, 5, 60, 0],
    [10, 5, 60, 3],
    [8, 10, 30, 4],
    [9, 2, 45, 3],
  ] as const)("shows the angles that it gives: %d mm, %d mm, %d degrees, %d mm", (l1, radius, turn, l2) => {
    const { found, made } = built(canal(l1, radius, turn, l2));
    expect(angleOf(made.schneider.axis, made.schneider.line)).toBeCloseTo(found.schneiderDeg, 5);
    expect(angleOf(made.access.axis, made.access.line)).toBeCloseTo(found.accessAngleDeg, 5);
    if (made.weine) expect(angleOf(made.weine.axis, made.weine.apical)).toBeCloseTo(found.weineDeg ?? 0, 5);
    const [coronal, apical] = made.pruett?.tangents ?? [];
    expect(coronal && apical && angleOf(coronal, apical)).toBeCloseTo(found.pruettDeg, 5);
  });

  it("has its places where the canal has them", () => {
    const { made } = built(canal(10, 5, 60, 3));
    const near = (place: Place, [x, y]: [number, number]) => {
      expect(place[0]).toBeCloseTo(x, 2);
      expect(place[1]).toBeCloseTo(y, 2);
    };
    near(made.orifice, [0, 0]);
    near(made.departure, [0, 10]);
    near(made.bendEnd, [2.5, 10 + 5 * Math.sin(Math.PI / 3)]);
    near(made.pruett?.centre ?? [], [5, 10]);
    // T = R tan(t / 2) = 2.887 mm from the departure.
    near(made.pruett?.crossing ?? [], [0, 12.887]);
    near(made.tightest?.centre ?? [], [5, 10]);
    expect(made.pruett?.radius).toBeCloseTo(5, 2);
  });

  it("has a circle that touches both tangents at their departures", () => {
    const { made } = built(canal(10, 5, 60, 3));
    const { centre = [], radius = 0, tangents } = made.pruett ?? {};
    for (const place of [made.departure, made.bendEnd]) expect(distance(at(centre), at(place))).toBeCloseTo(radius, 5);
    for (const [tangent, place] of [
      [tangents?.[0], made.departure],
      [tangents?.[1], made.bendEnd],
    ] as const)
      expect(tangent && angleOf(tangent, [place, centre])).toBeCloseTo(90, 4);
  });

  it("has heights that stand at right angles on the line from orifice to foramen, as long as they are given", () => {
    const { found, made } = built(canal(10, 5, 60, 3));
    const { line, fromDeparture, largest } = made.height;
    for (const [height, long] of [
      [fromDeparture, found.heightMm],
      [largest, found.heightMaxMm],
    ] as const) {
      expect(angleOf(line, height)).toBeCloseTo(90, 4);
      expect(distance(at(height[0]), at(height[1]))).toBeCloseTo(long ?? 0, 4);
    }
    expect(distance(at(made.orifice), at(fromDeparture[1]))).toBeCloseTo(found.heightDistanceMm ?? 0, 4);
  });

  it("draws Weine's line through the last 2 mm, crossing the axis", () => {
    const { made } = built(canal(10, 5, 60, 0));
    const { axis, apical, chord } = made.weine ?? {};
    expect(axis?.[1][0]).toBeCloseTo(0, 2);
    expect(axis?.[1]).toEqual(apical?.[0]);
    expect(chord && apical && angleOf(chord, apical)).toBeCloseTo(0, 4);
    // The chord of 2 mm of an arc of 5 mm: 10 sin 0.2.
    expect(chord && distance(at(chord[0]), at(chord[1]))).toBeCloseTo(10 * Math.sin(0.2), 2);
  });

  it("is the same in space, with three numbers a place", () => {
    const { found, made } = built(canal(10, 5, 60, 3).map(([x, y]) => [0.6 * x, y, 0.8 * x]));
    expect(made.departure).toHaveLength(3);
    expect(angleOf(made.schneider.axis, made.schneider.line)).toBeCloseTo(found.schneiderDeg, 5);
    const [coronal, apical] = made.pruett?.tangents ?? [];
    expect(coronal && apical && angleOf(coronal, apical)).toBeCloseTo(found.pruettDeg, 5);
    expect(made.pruett?.centre[2]).toBeCloseTo(4, 1);
  });

  it("is that of the largest bend, in its part of an S", () => {
    const first = canal(6, 5, 30, 2);
    const [endX, endY] = first.at(-1) ?? [0, 0];
    const turn = Math.PI / 6;
    const second = canal(2, 4, 55, 2)
      .slice(1)
      .map(([x, y]): [number, number] => [
        endX + y * Math.sin(turn) - x * Math.cos(turn),
        endY + y * Math.cos(turn) + x * Math.sin(turn),
      ]);
    const { found, made } = built([...first, ...second]);
    expect(found.bends).toHaveLength(2);
    expect(distance(at(made.orifice), vector(0, 0))).toBeGreaterThan(7);
    expect(angleOf(made.schneider.axis, made.schneider.line)).toBeCloseTo(found.schneiderDeg, 4);
  });

  it("has no circle for a bend that is not worth a radius (C18), and none at all for a straight course", () => {
    const { made } = built(canal(8, 40, 4, 4));
    expect([made.pruett, made.tightest]).toEqual([undefined, undefined]);
    const straight = measured({ points: [0, 2, 4, 6, 8].map((y) => [0, y]) });
    expect(straight.construction).toBeUndefined();
    expect(straight.notComputed.map(({ name }) => name)).toContain("construction");
  });
});
