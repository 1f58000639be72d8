import { describe, expect, it } from "vitest";
import type { z } from "zod";
import { answer } from "../topic.ts";
import { px } from "../units.ts";
import type { calibrateInput } from "./calibrate-input.ts";
import { calibrateTopic } from "./calibrate-topic.ts";
import { lengthOnFilm } from "./length-on-film.ts";

type Raw = z.input<typeof calibrateInput>;
const calibrate = (input: Raw) => answer(calibrateTopic, input);
const bar = (lengthMm: number, pixels: number, sigmaPx = 1): NonNullable<Raw["known"]>[number] => ({
  lengthMm,
  from: [100, 40],
  to: [100 + pixels, 40],
  sigmaPx,
});

describe("C1: a known length", () => {
  it("gives mm per px, with the clicks' error", () => {
    // 20 mm on 400 px: 0.05; sd sqrt(2)/400 of it.
    const scale = calibrate({ known: [bar(20, 400)] });
    expect(scale.mmPerPx.column).toBeCloseTo(0.05, 12);
    expect(scale.mmPerPx.row).toBeCloseTo(0.05, 12);
    expect(scale.sigmaMmPerPx).toBeCloseTo((0.05 * Math.SQRT2) / 400, 12);
    expect(scale.used).toBe("knownLength");
    expect(scale.cautions).toEqual([]);
    expect(scale.notComputed.map(({ name }) => name)).toEqual(["disagreement"]);
  });

  it("has a click error of 1 px per axis unless another is given, and names it", () => {
    const unsaid = calibrate({ known: [{ lengthMm: 20, from: [0, 0], to: [0, 400] }] });
    expect(unsaid.relativeSigma).toBeCloseTo(Math.SQRT2 / 400, 12);
    expect(unsaid.basis.assumptions.join(" ")).toContain("1 px");
    expect(calibrate({ known: [bar(20, 400, 3)] }).relativeSigma).toBeCloseTo((3 * Math.SQRT2) / 400, 12);
  });

  it("C6: says that a bar of 2 mm on 10.5 px is too short, and how long would do", () => {
    const scale = calibrate({ known: [bar(2, 10.5)] });
    expect(scale.relativeSigma).toBeGreaterThan(0.13);
    expect(scale.relativeSigma).toBeLessThan(0.14);
    // For 2 %: sqrt(2) / 0.02 = 70.7 px, which is 13.5 mm at 2/10.5 mm per px.
    expect(scale.cautions).toEqual([
      expect.stringMatching(/too short: 2 mm is 10\.5 px.*13\.5 %.*2 %.*13\.5 mm long \(70\.7 px\)/),
    ]);
  });

  it("C6: says it just below 2 %, and not just above", () => {
    expect(calibrate({ known: [bar(12, 70)] }).cautions).toHaveLength(1);
    expect(calibrate({ known: [bar(12, 71)] }).cautions).toHaveLength(0);
  });

  it("C6: has no interval where the clicks err as much as the bar is long", () => {
    const scale = calibrate({ known: [bar(0.5, 2)] });
    expect(scale.interval).toBeUndefined();
    expect(scale.notComputed.map(({ name }) => name)).toContain("interval");
  });

  it("asks again where the unit looks wrong", () => {
    expect(calibrate({ known: [bar(210, 400)] }).cautions.join()).toContain("unlikely for a dental film");
    expect(calibrate({ known: [bar(21, 400)] }).cautions).toEqual([]);
  });
});

describe("C2: pixels that are not square", () => {
  it("keep the file's ratio, and the length is taken in mm", () => {
    // Rows 0.06 apart, columns 0.03: 100 columns and 50 rows are 3 mm and 3 mm, 4.2426 mm in all at that size.
    const known: Raw["known"] = [{ lengthMm: 3 * Math.SQRT2, from: [0, 0], to: [100, 50] }];
    const scale = calibrate({ known, detectorSpacingMm: [0.06, 0.03], magnification: 1 });
    expect(scale.mmPerPx.row).toBeCloseTo(0.06, 12);
    expect(scale.mmPerPx.column).toBeCloseTo(0.03, 12);
    expect(scale.sigmaMmPerPx).toBeCloseTo(Math.sqrt(0.06 * 0.03) * (scale.relativeSigma ?? 0), 12);
  });

  it("give a length along the coarse axis the larger click error", () => {
    const down = calibrate({ known: [{ lengthMm: 6, from: [0, 0], to: [0, 100] }], detectorSpacingMm: [0.06, 0.03] });
    const across = calibrate({ known: [{ lengthMm: 6, from: [0, 0], to: [200, 0] }], detectorSpacingMm: [0.06, 0.03] });
    expect(down.relativeSigma).toBeCloseTo(Math.SQRT2 / 100, 12);
    expect(across.relativeSigma).toBeCloseTo(Math.SQRT2 / 200, 12);
  });
});

describe("C3: several known lengths", () => {
  it("give the inverse-variance mean, and chi-square within the clicks", () => {
    // 20 mm on 400 px and 10 mm on 201 px, 1 px clicks: px per mm 20 and 20.1 with weights 400 and 100: 20.02.
    const scale = calibrate({ known: [bar(20, 400), bar(10, 201)] });
    expect(scale.mmPerPx.column).toBeCloseTo(1 / 20.02, 12);
    // Variance 2 / 500 on px per mm; chi-square (400 * .02^2 + 100 * .08^2) / 2 = 0.4.
    expect(scale.relativeSigma).toBeCloseTo(Math.sqrt(2 / 500) / 20.02, 12);
    expect(scale.disagreement?.chiSquare).toBeCloseTo(0.4, 9);
    expect(scale.disagreement?.degreesOfFreedom).toBe(1);
    // Two-sided normal tail at sqrt(0.4) = 0.6325: 0.5271 (printed tables).
    expect(scale.disagreement?.p).toBeCloseTo(0.5271, 4);
    expect(scale.foreshortening).toBeUndefined();
    expect(scale.cautions).toEqual([]);
  });

  it("that disagree are named with ratio and all three explanations, and widen the error", () => {
    const scale = calibrate({ known: [bar(20, 400), bar(20, 421)] });
    expect(scale.disagreement?.chiSquare).toBeCloseTo(21 ** 2 / 4, 9);
    expect(scale.disagreement?.p).toBeLessThan(1e-6);
    expect(scale.foreshortening?.ratio).toBeCloseTo(421 / 400, 9);
    expect(scale.foreshortening?.between).toEqual([0, 1]);
    expect(scale.foreshortening?.explanations).toHaveLength(3);
    const [caution] = scale.cautions;
    expect(caution).toMatch(/foreshortening or elongation.*different depth.*different orientation/);
    expect(caution).toContain("known length 1 gives 1.052 times the scale of known length 2");
    // Birge: sqrt(chi-square / 1) = 10.5 times the clicks' 1 px on a mean of 410.5.
    expect(scale.relativeSigma).toBeCloseTo((10.5 * 1) / 410.5, 9);
    expect(scale.basis.sources).toEqual(["birge-1932"]);
    // A tilt of acos(400/421), or 1 - 400/421 of the source's distance in depth.
    expect(scale.foreshortening?.tiltDeg).toBeCloseTo(18.17, 2);
    expect(scale.foreshortening?.depthShare).toBeCloseTo(0.04988, 5);
  });

  it("count by their own click error", () => {
    const rough = calibrate({ known: [bar(20, 400, 1), bar(20, 421, 20)] });
    expect(rough.foreshortening).toBeUndefined();
    expect(rough.mmPerPx.column).toBeCloseTo(1 / (20 + 1.05 / 401), 9);
  });

  it("the same length twice halves the variance", () => {
    const once = calibrate({ known: [bar(20, 400)] });
    const twice = calibrate({ known: [bar(20, 400), bar(20, 400)] });
    expect(twice.relativeSigma).toBeCloseTo((once.relativeSigma ?? 0) / Math.SQRT2, 12);
    expect(twice.disagreement).toEqual({ chiSquare: 0, degreesOfFreedom: 1, p: 1 });
  });
});

describe("C4: which scale of the file is used", () => {
  const detector: [number, number] = [0.05, 0.05];
  const pixel: [number, number] = [0.04833333, 0.04833333];
  it.each<[Raw, string, number]>([
    [
      { pixelSpacingMm: pixel, calibrationType: "fiducial", detectorSpacingMm: detector, magnification: 1.0344828 },
      "pixelSpacingFiducial",
      0.04833333,
    ],
    [
      { pixelSpacingMm: pixel, calibrationType: "geometry", detectorSpacingMm: detector, magnification: 1.0344828 },
      "pixelSpacingGeometry",
      0.04833333,
    ],
    [
      { detectorSpacingMm: detector, magnification: 1.03448276, pixelSpacingMm: detector },
      "detectorSpacingOverMagnification",
      0.04833333,
    ],
    [{ detectorSpacingMm: detector, pixelSpacingMm: pixel }, "detectorSpacing", 0.05],
    [{ pixelSpacingMm: pixel }, "pixelSpacingOfUnknownOrigin", 0.04833333],
    [{ pixelSpacingMm: pixel, calibrationType: "fiducial", known: [bar(20, 410)] }, "knownLength", 20 / 410],
  ])("%j: %s", (input, used, mmPerPx) => {
    const scale = calibrate(input);
    expect(scale.used).toBe(used);
    expect(scale.mmPerPx.column).toBeCloseTo(mmPerPx, 7);
  });

  it("reads a rod of 8 mm as 8.00 after the magnification and as 8.28 at the detector", () => {
    // A rod of radius 4 at 290 of 300 mm throws 8.27664942 mm, 165.5329884 px of 0.05; tangent rays, worked outside.
    const ends = [
      { column: px(0), row: px(0) },
      { column: px(165.5329884), row: px(0) },
    ];
    const { mmPerPx } = calibrate({ detectorSpacingMm: detector, magnification: 300 / 290 });
    expect(lengthOnFilm(ends, { mmPerPx, sigmaPx: 1 }).mm).toBeCloseTo(8.0007611, 6);
    const raw = calibrate({ detectorSpacingMm: detector });
    expect(lengthOnFilm(ends, { mmPerPx: raw.mmPerPx, sigmaPx: 1 }).mm).toBeCloseTo(8.2766494, 6);
  });

  it("does not divide a geometric pixel spacing again", () => {
    expect(calibrate({ pixelSpacingMm: pixel, calibrationType: "geometry", magnification: 1.1 }).mmPerPx.column).toBe(
      0.04833333,
    );
  });

  it("keeps [between rows, between columns] apart", () => {
    expect(calibrate({ detectorSpacingMm: [0.06, 0.03], magnification: 1.5 }).mmPerPx).toEqual({
      row: 0.04,
      column: 0.02,
    });
    expect(calibrate({ pixelSpacingMm: [0.06, 0.03] }).mmPerPx).toEqual({ row: 0.06, column: 0.03 });
  });

  it("warns at the detector and for an unknown origin, and not where the plane is the tooth's", () => {
    expect(calibrate({ detectorSpacingMm: detector }).cautions).toEqual([
      expect.stringMatching(/at the detector.*1\.034 and 1\.054.*1\.0947/),
    ]);
    expect(calibrate({ pixelSpacingMm: pixel }).cautions).toEqual([expect.stringContaining("does not say how")]);
    expect(calibrate({ pixelSpacingMm: pixel, calibrationType: "fiducial" }).cautions).toEqual([]);
    expect(calibrate({ detectorSpacingMm: detector, magnification: 1.03 }).cautions).toEqual([]);
  });

  it("gives no error where the file states none", () => {
    const scale = calibrate({ pixelSpacingMm: pixel, calibrationType: "fiducial" });
    expect(scale.sigmaMmPerPx).toBeUndefined();
    expect(scale.notComputed.map(({ name }) => name)).toEqual([
      "sigmaMmPerPx",
      "relativeSigma",
      "interval",
      "disagreement",
    ]);
  });

  it("says where the scales on offer contradict each other", () => {
    const cautions = (input: Raw): string => calibrate(input).cautions.join();
    expect(
      cautions({
        pixelSpacingMm: [0.05, 0.05],
        calibrationType: "geometry",
        detectorSpacingMm: [0.05, 0.05],
        magnification: 1.1,
      }),
    ).toMatch(/0\.909 times/);
    expect(cautions({ pixelSpacingMm: [0.06, 0.06], calibrationType: "fiducial", known: [bar(20, 400)] })).toMatch(
      /1\.200 times/,
    );
    expect(cautions({ calibrationType: "fiducial", detectorSpacingMm: detector, magnification: 1.03 })).toContain(
      "The file says how it was calibrated and states no pixel spacing",
    );
  });
});

describe("C5: magnification", () => {
  const geometry = { sourceToToothMm: 290, toothToDetectorMm: 10 };
  it("comes from the distances where it is not stated", () => {
    const scale = calibrate({ detectorSpacingMm: [0.05, 0.05], geometry });
    expect(scale.used).toBe("detectorSpacingOverMagnification");
    expect(scale.mmPerPx.row).toBeCloseTo(0.0483333333, 9);
  });

  it("that is stated wins over distances that contradict it, and both are named", () => {
    const scale = calibrate({ detectorSpacingMm: [0.05, 0.05], geometry, magnification: 1.1 });
    expect(scale.mmPerPx.row).toBeCloseTo(0.05 / 1.1, 12);
    expect(scale.cautions.join()).toContain("0.940 times the stated magnification");
  });

  it("that a known length implies is given, and one under 1 is cautioned", () => {
    const likely = calibrate({ known: [bar(20, 421)], detectorSpacingMm: [0.05, 0.05] });
    expect(likely.impliedMagnification).toBeCloseTo(1.0525, 9);
    expect(likely.cautions).toEqual([]);
    const impossible = calibrate({ known: [bar(20, 360)], detectorSpacingMm: [0.05, 0.05] });
    expect(impossible.impliedMagnification).toBeCloseTo(0.9, 9);
    expect(impossible.cautions).toEqual([expect.stringContaining("smaller than life")]);
  });
});

describe("C7: a sphere", () => {
  const sphere = (pixels: number): Raw["known"] => [{ ...bar(8, pixels), kind: "sphere" }];
  it("throws its tangent rays' shadow where the distances are known", () => {
    // 8.27664942 mm on a detector of 0.05 mm is 165.5329884 px; in the plane of the centre 0.05 * 290 / 300 mm per px.
    const scale = calibrate({ known: sphere(165.5329884), geometry: { sourceToToothMm: 290, toothToDetectorMm: 10 } });
    expect(scale.mmPerPx.column).toBeCloseTo(0.0483333333, 9);
  });

  it("throws its diameter where they are not, and says so", () => {
    const scale = calibrate({ known: sphere(160) });
    expect(scale.mmPerPx.column).toBeCloseTo(0.05, 12);
    expect(scale.basis.assumptions.join()).toContain("parallel rays");
  });

  it("that is a length is not corrected", () => {
    const scale = calibrate({ known: [bar(8, 160)], geometry: { sourceToToothMm: 5, toothToDetectorMm: 10 } });
    expect(scale.mmPerPx.column).toBeCloseTo(0.05, 12);
  });
});

describe("refusals", () => {
  const refusal = (input: unknown) => {
    try {
      answer(calibrateTopic, input);
    } catch (error) {
      return error;
    }
    return undefined;
  };

  it("C9: no known length and no spacing", () => {
    for (const input of [{}, { known: [] }, { magnification: 1.1 }, { calibrationType: "fiducial" }])
      expect(refusal(input)).toMatchObject({
        code: "calibration.missing",
        faults: [{ says: expect.stringContaining("ratios and angles") }],
      });
  });

  it("names every impossible mark with its path", () => {
    const known = [
      { lengthMm: 20, from: [3, 4], to: [3, 4] },
      bar(20, 400),
      { kind: "sphere", lengthMm: 20, from: [0, 0], to: [9, 9] },
      { lengthMm: 20, from: [5, 5], to: [5, 5] },
    ];
    expect(refusal({ known, geometry: { sourceToToothMm: 10, toothToDetectorMm: 1 } })).toMatchObject({
      code: "input.impossible",
      faults: [{ path: "known[0].to" }, { path: "known[2].lengthMm" }, { path: "known[3].to" }],
    });
  });

  it.each([
    [{ known: [bar(0, 400)] }, "known[0].lengthMm"],
    [{ known: [bar(501, 400)] }, "known[0].lengthMm"],
    [{ known: [bar(20, 100_000)] }, "known[0].to[0]"],
    [{ known: [bar(20, 400, 0)] }, "known[0].sigmaPx"],
    [{ detectorSpacingMm: [0.05] }, "detectorSpacingMm"],
    [{ detectorSpacingMm: [0.05, -0.05] }, "detectorSpacingMm[1]"],
    [{ detectorSpacingMm: [0.05, 0.05], magnification: 0.9 }, "magnification"],
    [{ detectorSpacingMm: [0.05, 0.05], magnification: 3.1 }, "magnification"],
    [{ pixelSpacingMm: [0.05, 0.05], calibrationType: "guess" }, "calibrationType"],
    [{ known: [{ ...bar(20, 400), kind: "cube" }] }, "known[0].kind"],
    [{ known: [{ ...bar(20, 400), from: [1, "2"] }] }, "known[0].from[1]"],
    [{ geometry: { sourceToToothMm: 0, toothToDetectorMm: 1 } }, "geometry.sourceToToothMm"],
  ])("%j: %s", (input, path) => {
    expect(refusal(input)).toMatchObject({ code: "input.invalid", faults: [expect.objectContaining({ path })] });
  });
});
