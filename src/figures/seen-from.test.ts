import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { less, poseWords, seenFrom, type ToothPlace, turnedPose } from "./seen-from.ts";

const angle = fc.double({ min: -180, max: 180, noNaN: true });
const tip = fc.double({ min: -90, max: 90, noNaN: true });
const coordinate = fc.double({ min: -30, max: 30, noNaN: true });
const place = fc.tuple(coordinate, coordinate, coordinate);
const length = (one: ToothPlace): number => Math.hypot(...one);

describe("seenFrom", () => {
  it("shows each axis where it lies: from buccal, from mesial, from the apex", () => {
    const [distal, buccal, apical] = [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ] as const;
    expect(seenFrom({ yawDeg: 0, pitchDeg: 0 }, distal)).toMatchObject({ across: 1, down: 0 });
    expect(seenFrom({ yawDeg: 0, pitchDeg: 0 }, buccal)).toMatchObject({ across: 0, toward: 1 });
    expect(seenFrom({ yawDeg: 0, pitchDeg: 0 }, apical)).toMatchObject({ down: 1 });
    expect(seenFrom({ yawDeg: 90, pitchDeg: 0 }, buccal).across).toBeCloseTo(1, 12);
    // From mesial the mesial side is the near one.
    expect(seenFrom({ yawDeg: 90, pitchDeg: 0 }, [-1, 0, 0]).toward).toBeCloseTo(1, 12);
    expect(seenFrom({ yawDeg: 0, pitchDeg: 90 }, apical).toward).toBeCloseTo(1, 12);
    expect(seenFrom({ yawDeg: 0, pitchDeg: 90 }, buccal).down).toBeCloseTo(-1, 12);
  });

  it("is what a film of that tube shows: 3 mm to buccal at 25 degrees is 1.268 mm across", () => {
    // u = x cos a + y sin a, docs/methods/two-view.md C2; 3 sin 25 = 1.26785.
    expect(seenFrom({ yawDeg: 25, pitchDeg: 0 }, [0, 3, 7])).toMatchObject({
      across: expect.closeTo(1.26785, 5),
      down: 7,
    });
    // v = z cos b + (x sin a - y cos a) sin b at a 25, b 10: 7 x 0.98481 - 3 x 0.90631 x 0.17365 = 6.42153.
    expect(seenFrom({ yawDeg: 25, pitchDeg: 10 }, [0, 3, 7]).down).toBeCloseTo(6.42153, 4);
  });

  it("turns without stretching or mirroring", () => {
    fc.assert(
      fc.property(angle, tip, place, place, (yawDeg, pitchDeg, one, other) => {
        const seen = [one, other].map((at): ToothPlace => {
          const { across, down, toward } = seenFrom({ yawDeg, pitchDeg }, at);
          return [across, down, toward];
        });
        const [a, b] = seen as [ToothPlace, ToothPlace];
        expect(length(less(a, b))).toBeCloseTo(length(less(one, other)), 8);
      }),
    );
    // Across, down and toward stay a right-handed frame of x, z and y, as they are straight on.
    const [x, z, y] = (["100", "001", "010"] as const).map((axis) => {
      const { across, down, toward } = seenFrom({ yawDeg: 37, pitchDeg: -21 }, [
        Number(axis[0]),
        Number(axis[1]),
        Number(axis[2]),
      ]);
      return [across, down, toward] as const;
    });
    if (x === undefined || y === undefined || z === undefined) throw new Error("three axes");
    const volume =
      (x[1] * z[2] - x[2] * z[1]) * y[0] + (x[2] * z[0] - x[0] * z[2]) * y[1] + (x[0] * z[1] - x[1] * z[0]) * y[2];
    expect(volume).toBeCloseTo(1, 12);
  });
});

describe("a pose", () => {
  it("turns round and round, and tips no farther than the apex and the crown", () => {
    expect(turnedPose({ yawDeg: 170, pitchDeg: 80 }, { yawDeg: 20, pitchDeg: 30 })).toEqual({
      yawDeg: -170,
      pitchDeg: 90,
    });
    expect(turnedPose({ yawDeg: -170, pitchDeg: -80 }, { yawDeg: -20, pitchDeg: -30 })).toEqual({
      yawDeg: 170,
      pitchDeg: -90,
    });
  });

  it.each([
    [0, 0, "from buccal"],
    [90, 0, "from mesial"],
    [-90, 0, "from distal"],
    [180, 0, "from lingual"],
    [25, 0, "from 25° mesial of buccal"],
    [-120, 0, "from 60° distal of lingual"],
    [30, 15, "from 30° mesial of buccal, tipped 15° to the apex"],
    [30, 90, "from the apex"],
    [0, -90, "from the crown"],
  ])("of %d and %d is called %s", (yawDeg, pitchDeg, words) => {
    expect(poseWords({ yawDeg, pitchDeg })).toBe(words);
  });
});
