import fc from "fast-check";
import { expect, it } from "vitest";
import { degreesOf, mm, rad } from "../../units.ts";
import { publishedMeasures } from "./published-measures.ts";

const arc = (before: number, radius: number, turn: number, after: number) => ({
  before: mm(before),
  length: mm(radius * turn),
  turn: rad(turn),
  rampShare: 0,
  after: mm(after),
});
const length = fc.double({ min: 0.1, max: 20, noNaN: true });
const turn = fc.double({ min: 0.05, max: 2, noNaN: true });

it("the closed forms hold for every bend (C7, C9, C10, C11)", () => {
  fc.assert(
    fc.property(length, length, turn, length, (l1, radius, t, l2) => {
      const found = publishedMeasures(arc(l1, radius, t, l2), mm(0.1));
      const aside = radius * (1 - Math.cos(t)) + l2 * Math.sin(t);
      const along = radius * Math.sin(t) + l2 * Math.cos(t);
      const access = Math.atan2(aside, l1 + along);
      expect(found.schneider).toBeCloseTo(Math.atan2(aside, along), 9);
      expect(found.accessAngle).toBeCloseTo(access, 9);
      expect(found.accessAngle).toBeLessThan(found.schneider);
      expect(found.heightDistance).toBeCloseTo(l1 * Math.cos(access), 9);
      expect(found.heightMax).toBeCloseTo(l1 * Math.sin(access) + radius * (1 - Math.cos(access)), 8);
      expect(found.pruettRadius).toBeCloseTo(radius, 9);
    }),
    { seed: 4 },
  );
});

it("Schneider's angle of a pure arc is half its angle, whatever the radius: it is blind to it (C7)", () => {
  fc.assert(
    fc.property(length, length, turn, (l1, radius, t) => {
      expect(publishedMeasures(arc(l1, radius, t, 0), mm(1)).schneider).toBeCloseTo(t / 2, 9);
    }),
    { seed: 5 },
  );
});

it("Weine's angle lies between half the angle and the whole of it on a pure arc, and falls with s (C8)", () => {
  const bend = arc(10, 5, Math.PI / 3, 0);
  const angles = [0.5, 1, 2, 3, 5.2359].map((s) => degreesOf(publishedMeasures(bend, mm(s)).weine ?? rad(0)));
  // t - s/(2R) by hand.
  [57.135, 54.27, 48.541, 42.811, 30].forEach((expected, index) => {
    expect(angles[index]).toBeCloseTo(expected, 2);
  });
});

it("Weine's angle is absent where the canal is shorter than s", () => {
  const bend = arc(1, 5, 0.4, 0);
  expect(publishedMeasures(bend, mm(3)).weine).toBeDefined();
  expect(publishedMeasures(bend, mm(3.1)).weine).toBeUndefined();
});

it("a ramped bend of next to no ramp measures as the arc, and one of no angle has no radius", () => {
  const bend = arc(9, 5, 0.8, 2);
  const [sharp, soft] = [0, 1e-6].map((rampShare) => publishedMeasures({ ...bend, rampShare }, mm(2)));
  for (const name of ["schneider", "weine", "accessAngle", "heightMax", "pruettRadius"] as const)
    expect(soft?.[name], name).toBeCloseTo(sharp?.[name] ?? 0, 4);
  expect(publishedMeasures({ ...bend, turn: rad(0) }, mm(2)).pruettRadius).toBeUndefined();
});
