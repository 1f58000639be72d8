import { describe, expect, it } from "vitest";
import { mixed, run, source } from "./course-for-tests.ts";
import { type RoomAir, roomAir, roomModes } from "./room-modes.ts";
import { wholeArea } from "./vapour-course.ts";

describe("a mixed room", () => {
  // CDC, MMWR 1994;43(RR-13), table S3-1; minutes that remove 90, 99 and 99.9 %, rounded there.
  it.each([
    [2, [69, 138, 207]],
    [4, [35, 69, 104]],
    [6, [23, 46, 69]],
    [8, [17, 35, 52]],
    [10, [14, 28, 41]],
    [12, [12, 23, 35]],
    [15, [9, 18, 28]],
    [20, [7, 14, 21]],
    [50, [3, 6, 8]],
  ])("with %d air changes an hour is cleared in the published minutes (C4)", (airChangesPerHour, minutes) => {
    const { far } = run(roomAir({ volumeM3: 40, airChangesPerHour }), { kind: "instant" }, [{ atMin: 0, mg: 40 }]);
    for (const [at, share] of [0.9, 0.99, 0.999].entries()) {
      const printed = minutes[at] ?? 0;
      expect(far.levelAt(printed - 0.5)).toBeGreaterThanOrEqual(1 - share);
      expect(far.levelAt(printed + 0.5)).toBeLessThanOrEqual(1 - share);
    }
  });

  // Published: V 500 m3, Q 1000 m3/h, 140 mg/h, decay 0.4/h; steady 0.117 mg/m3, 0.067 at 0.36 h. The decay of 0.4/h clears as
  // 200 m3/h of air would.
  it("with a steady source comes to the published level and passes the published one (C4)", () => {
    const { far } = run(mixed(500, 1200 / 60), ...source(140 / 60, 4800), { end: 4800 });
    expect(far.levelAt(4700)).toBeCloseTo(0.116667, 6);
    expect(far.levelAt(0.36 * 60)).toBeCloseTo(0.067, 3);
    expect(far.levelAt(21.35)).toBeCloseTo(0.067, 4);
  });

  // Benzene at 1 g/min in 108 m3 with 10 m3/min: 100 mg/m3, 95 % of it after V / Q ln 20 = 32.354 min.
  it("of a course problem comes to 100 mg/m3 (C4)", () => {
    const { far } = run(mixed(108, 10), ...source(1000, 2000), { end: 2000 });
    expect(far.levelAt(1900)).toBeCloseTo(100, 9);
    expect(far.levelAt(32.354)).toBeCloseTo(95, 3);
  });

  // Hewett and Ganser, J Occup Environ Hyg 2017;14:49-57: G 100 mg/min for 15 min, Q 20 m3/min, V 100 m3, over 60 min.
  it("with a source of 15 minutes has the known peak and mean (C4, C8)", () => {
    const { far, ofFar } = run(mixed(100, 20), ...source(100, 15));
    expect(far.levelAt(15)).toBeCloseTo(4.7510647, 7);
    expect(far.levelAt(60)).toBeCloseTo(0.00058633, 8);
    expect(ofFar.peak).toBeCloseTo(4.7510647, 7);
    expect(ofFar.peakAtMin).toBeCloseTo(15, 9);
    expect(far.areaUntil(60) / 60).toBeCloseTo(1.2499511, 7);
    expect(ofFar.mean60).toBeCloseTo(1.2499511, 6);
  });

  // The spill model named by Abattan and others, J Occup Environ Hyg 2023;20:95-108; 147.88 mg, 0.2/min, 5 m3/min, 30 m3.
  it("with a drop that evaporates by a share of its rest follows the spill model (C4, C8)", () => {
    const { course, far, ofFar } = run(mixed(30, 5), { kind: "firstOrder", ratePerMin: 0.2 }, [
      { atMin: 0, mg: 147.88 },
    ]);
    const known = [0.82076, 1.97327, 1.58351, 0.12597, 0.00116];
    for (const [at, minutes] of [1, 5, 10, 30, 60].entries())
      expect(far.levelAt(minutes)).toBeCloseTo(known[at] ?? 0, 5);
    expect(ofFar.peak).toBeCloseTo(1.980989, 6);
    expect(ofFar.peakAtMin).toBeCloseTo(5.46965, 5);
    expect(wholeArea(course, "far")).toBeCloseTo(29.576, 6);
    expect(ofFar.mean480).toBeCloseTo(0.061617, 6);
  });

  // C = (M / V) a t e^(-a t) where a = Q / V: the peak M / (V e) at 1 / a.
  it("takes a drop that evaporates as fast as the room is cleared (C6)", () => {
    const { far, ofFar } = run(mixed(30, 6), { kind: "firstOrder", ratePerMin: 0.2 }, [{ atMin: 0, mg: 300 }]);
    expect(ofFar.peak).toBeCloseTo(10 / Math.E, 9);
    expect(ofFar.peakAtMin).toBeCloseTo(5, 6);
    expect(far.levelAt(12)).toBeCloseTo(10 * 0.2 * 12 * Math.exp(-2.4), 9);
    // Beside it, to the last digits that the plain formula keeps.
    const beside = run(mixed(30, 6), { kind: "firstOrder", ratePerMin: 0.2 + 1e-9 }, [{ atMin: 0, mg: 300 }]);
    expect(beside.ofFar.mean60).toBeCloseTo(ofFar.mean60, 8);
  });

  it("that is closed keeps all of it (C6)", () => {
    const { far, ofFar } = run(mixed(50, 0), { kind: "firstOrder", ratePerMin: 0.1 }, [{ atMin: 10, mg: 100 }]);
    expect(far.levelAt(20)).toBeCloseTo(2 * (1 - Math.exp(-1)), 12);
    expect(ofFar.peak).toBeCloseTo(2, 9);
    // The mean of 2 (1 - e^(-t / 10)) over the last 60 of 480 min is 2 to 18 digits, over 480 it is 2 (1 - 10 / 480).
    expect(ofFar.mean60).toBeCloseTo(2, 9);
    expect(ofFar.mean480).toBeCloseTo(2 * (1 - 10 / 480), 9);
    const built = run(mixed(50, 0), ...source(5, 20));
    expect(built.far.levelAt(8)).toBeCloseTo(0.8, 12);
    expect(built.far.areaUntil(8)).toBeCloseTo(3.2, 12);
  });
});

describe("a room with a near field", () => {
  // Data set of Monteiro, Banerjee and Ramachandran, J Stat Softw 2011;43(2): b 5, Q 13.8, G 351.5, V_N pi/1000, V_F 3.8.
  it("follows the published data set, stiff as it is (C5, C6)", () => {
    const air: RoomAir = { farM3: 3.8, outflowM3Min: 13.8, near: { volumeM3: Math.PI / 1000, exchangeM3Min: 5 } };
    const { far, near } = run(air, ...source(351.5, 600), { end: 600 });
    expect(roomModes(air).map(({ ratePerMin }) => ratePerMin)).toEqual([
      expect.closeTo(1592.8682, 4),
      expect.closeTo(3.628572, 6),
    ]);
    expect([near.levelAt(0.1), far.levelAt(0.1)]).toEqual([expect.closeTo(77.97015, 5), expect.closeTo(7.710734, 6)]);
    expect([near.levelAt(1), far.levelAt(1)]).toEqual([expect.closeTo(95.09156, 5), expect.closeTo(24.79311, 5)]);
    expect([near.levelAt(4), far.levelAt(4)]).toEqual([expect.closeTo(95.771, 5), expect.closeTo(25.471, 5)]);
    // Steady: G / Q + G / b beside G / Q.
    expect(near.levelAt(500)).toBeCloseTo(95.771014, 6);
    expect(far.levelAt(500)).toBeCloseTo(25.471014, 6);
  });

  // The parameters of Hewett and Ganser 2017 with b 5 and a near field of 8 in 100 m3.
  it("with a source of 15 minutes has the known levels and means (C5, C8)", () => {
    const air: RoomAir = { farM3: 92, outflowM3Min: 20, near: { volumeM3: 8, exchangeM3Min: 5 } };
    const { far, near } = run(air, ...source(100, 15));
    expect(near.levelAt(15)).toBeCloseTo(24.448951, 6);
    expect(far.levelAt(15)).toBeCloseTo(4.619518, 6);
    expect(near.areaUntil(60) / 60).toBeCloseTo(6.249863, 6);
    expect(far.areaUntil(60) / 60).toBeCloseTo(1.249905, 6);
  });

  // 0.1 ml of chloroform beside the mouth; solved with a stiff stepper elsewhere: area 81.877851, peak 9.9114 at 0.43 min.
  it("has the known areas and peaks of a drop (C5, C8)", () => {
    const air = roomAir({ volumeM3: 30, airChangesPerHour: 10 }, { radiusM: 0.5, airSpeedMPerMin: 3.6 });
    expect(air.near?.exchangeM3Min).toBeCloseTo(2.827433, 6);
    const { course, ofNear, ofFar } = run(air, { kind: "firstOrder", ratePerMin: 0.2 }, [{ atMin: 0, mg: 147.88 }]);
    expect(wholeArea(course, "near")).toBeCloseTo(81.877851, 6);
    expect(wholeArea(course, "far")).toBeCloseTo(29.576, 6);
    expect(ofNear.peak).toBeCloseTo(9.9114, 4);
    expect(ofNear.peakAtMin).toBeCloseTo(0.43, 2);
    expect(ofFar.peak).toBeCloseTo(1.98056, 5);
    expect(ofFar.peakAtMin).toBeCloseTo(5.56, 2);
  });

  // beta by radius and speed: 0.3 m at 0.1 m/s 1.696, 0.5 m at 0.05 m/s 2.356, 1 m at 0.3 m/s 56.549 m3/min.
  it.each([
    [0.3, 6, 1.696],
    [0.5, 3, 2.356],
    [1, 18, 56.549],
  ])("of %d m trades air by half its surface at %d m/min (C5)", (radiusM, airSpeedMPerMin, known) => {
    const { near, farM3 } = roomAir({ volumeM3: 40, airChangesPerHour: 6 }, { radiusM, airSpeedMPerMin });
    expect(near?.exchangeM3Min).toBeCloseTo(known, 3);
    expect((near?.volumeM3 ?? 0) + farM3).toBeCloseTo(40, 12);
  });
});
