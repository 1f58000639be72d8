import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededRandom } from "../statistics/seeded-random.ts";
import { answer } from "../topic.ts";
import { workingLengthTopic } from "./working-length-topic.ts";

const workingLength = (input: object) => answer(workingLengthTopic, input);
/** Ingle & Bakland's ratio with round numbers: 20.0 x 22.6 / 21.0 = 21.5238. */
const worked = { canalOnFilmMm: 22.6, known: { lengthMm: 20, onFilmMm: 21 } };

describe("workingLength", () => {
  it("C1, C2: is the ratio, less half a millimetre", () => {
    const length = workingLength(worked);
    expect(length.radiographicMm).toBeCloseTo(21.5238095238, 9);
    expect(length.recommendedMm).toBeCloseTo(21.0238095238, 9);
    expect(length.stopShortMm).toBe(0.5);
    expect(length.basis.assumptions.join()).toContain("common practice");
    // Kuttler 1955: 0.495 + 0.524 and 0.607 + 0.659 (the second of each from memory).
    expect(length.basis.assumptions.join()).toMatch(/1\.02 mm .* 1\.27 mm/);
    expect(length.basis.sources).toEqual(["ingle-bakland-2002", "kuttler-1955"]);
    expect(length.cautions).toEqual([]);
  });

  it("C3: combines both readings' errors: 0.140 mm for readings of 0.1 mm", () => {
    // 21.5238 * sqrt((0.1/22.6)^2 + (0.1/21)^2) = 0.1399, worked outside.
    const { sigmaMm, interval, recommendedInterval } = workingLength({ ...worked, sigmaMm: 0.1 });
    expect(sigmaMm).toBeCloseTo(0.1399, 4);
    expect(interval.low).toBeCloseTo(21.5238 - 1.96 * 0.1399, 3);
    expect(interval.high).toBeCloseTo(21.5238 + 1.96 * 0.1399, 3);
    expect(interval.level).toBe(0.95);
    expect(recommendedInterval?.low).toBeCloseTo(interval.low - 0.5, 12);
    expect(recommendedInterval?.high).toBeCloseTo(interval.high - 0.5, 12);
  });

  it("C3: has readings of 0.1 mm unless another error is given", () => {
    expect(workingLength(worked).sigmaMm).toBeCloseTo(0.1399, 4);
    expect(workingLength({ ...worked, sigmaMm: 0.3 }).sigmaMm).toBeCloseTo(0.4197, 4);
  });

  it("C4: without a known length is the reading, with what that leaves open", () => {
    const length = workingLength({ canalOnFilmMm: 22.6 });
    expect(length.radiographicMm).toBe(22.6);
    expect(length.sigmaMm).toBe(0.1);
    // C5: cos(25)/cos(5) and its counterpart: 9 % short, 10 % long.
    expect(length.cautions).toEqual([expect.stringContaining("9 % short or 10 % long")]);
    // Kazzi 2007: 48.6 and 16.7 %. Two published biases of opposite sign: no constant is taken off.
    expect(length.basis.assumptions.join()).toMatch(/- kal-2007, \+ size-08-length-2013.*49 %.*17 %/);
  });

  it("C2: takes another stop, also none at all", () => {
    expect(workingLength({ ...worked, stopShortMm: 1 }).recommendedMm).toBeCloseTo(20.5238095238, 9);
    const none = workingLength({ ...worked, stopShortMm: 0 });
    expect(none.recommendedMm).toBe(none.radiographicMm);
    expect(none.basis.sources).toEqual(["ingle-bakland-2002"]);
  });

  it.each([
    [{ openApex: true }, "an open apex"],
    [{ apicalResorption: true }, "apical resorption"],
    [{ openApex: true, apicalResorption: true }, "an open, resorbed apex"],
  ])("C6: %j has no default stop, and says so", (state, words) => {
    const without = workingLength({ ...worked, ...state });
    expect(without.recommendedMm).toBeUndefined();
    expect(without.radiographicMm).toBeCloseTo(21.5238095238, 9);
    expect(without.cautions).toEqual([expect.stringContaining(`No default stop applies with ${words}`)]);
    expect(without.notComputed.map(({ name }) => name)).toContain("recommendedMm");
    const given = workingLength({ ...worked, ...state, stopShortMm: 1.5 });
    expect(given.recommendedMm).toBeCloseTo(20.0238095238, 9);
    expect(given.cautions).toEqual([expect.stringContaining("1.5 mm")]);
  });

  it("C7: a curved instrument makes the ratio a caution, a curved canal the reading", () => {
    expect(workingLength({ ...worked, curved: true }).cautions).toEqual([
      expect.stringContaining("instrument is curved"),
    ]);
    expect(workingLength({ canalOnFilmMm: 20, curved: true }).cautions[1]).toContain("shorter than its course");
    expect(workingLength({ ...worked, curved: false }).cautions).toEqual([]);
  });

  it("C4, C7: a scale from an instrument on the film, and a traced course, take their cautions away and change no number", () => {
    const plain = workingLength({ canalOnFilmMm: 20, curved: true });
    const known = workingLength({ canalOnFilmMm: 20, curved: true, scaledByKnown: true });
    const both = workingLength({ canalOnFilmMm: 20, curved: true, scaledByKnown: true, traced: true });
    expect(plain.cautions[0]).toContain("No instrument of known length");
    expect(known.cautions).toEqual([expect.stringContaining("shorter than its course")]);
    expect(both.cautions).toEqual([]);
    expect([known.radiographicMm, both.recommendedMm]).toEqual([plain.radiographicMm, plain.recommendedMm]);
  });

  it("C8: sets the locator beside it, and cautions over 1.0 mm", () => {
    const film = { canalOnFilmMm: 21, known: { lengthMm: 20, onFilmMm: 20 } };
    expect(workingLength({ ...film, locatorMm: 20.4 }).locatorDifferenceMm).toBeCloseTo(-0.6, 9);
    expect(workingLength({ ...film, locatorMm: 20 }).cautions).toEqual([]);
    expect(workingLength({ ...film, locatorMm: 22 }).cautions).toEqual([]);
    expect(workingLength({ ...film, locatorMm: 19.9 }).cautions).toEqual([expect.stringContaining("1.1 mm shorter")]);
    expect(workingLength({ ...film, locatorMm: 22.1 }).cautions).toEqual([expect.stringContaining("1.1 mm longer")]);
    const without = workingLength(film);
    expect(without.locatorDifferenceMm).toBeUndefined();
    expect(without.notComputed).toEqual([{ name: "locatorDifferenceMm", why: expect.any(String) }]);
  });

  it("C5: names a film on which the instrument is shorter than itself, or much longer", () => {
    expect(workingLength({ canalOnFilmMm: 19, known: { lengthMm: 21, onFilmMm: 18.9 } }).cautions[0]).toContain(
      "10 % shorter",
    );
    expect(workingLength({ canalOnFilmMm: 29, known: { lengthMm: 20, onFilmMm: 28 } }).cautions[0]).toContain(
      "40 % longer",
    );
  });

  it("refuses a stop that leaves nothing", () => {
    expect(() => workingLength({ canalOnFilmMm: 3, stopShortMm: 3 })).toThrow(
      expect.objectContaining({ code: "input.impossible", faults: [expect.objectContaining({ path: "stopShortMm" })] }),
    );
  });

  it.each([
    [{}, "canalOnFilmMm"],
    [{ canalOnFilmMm: 0 }, "canalOnFilmMm"],
    [{ canalOnFilmMm: 61 }, "canalOnFilmMm"],
    [{ ...worked, known: { lengthMm: 20, onFilmMm: 0 } }, "known.onFilmMm"],
    [{ ...worked, known: { lengthMm: 20 } }, "known.onFilmMm"],
    [{ ...worked, sigmaMm: 0 }, "sigmaMm"],
    [{ ...worked, stopShortMm: -0.5 }, "stopShortMm"],
    [{ ...worked, stopShortMm: 5.1 }, "stopShortMm"],
    [{ ...worked, locatorMm: "20" }, "locatorMm"],
    [{ ...worked, curved: "yes" }, "curved"],
  ])("refuses %j at %s", (input, path) => {
    expect(() => workingLength(input)).toThrow(
      expect.objectContaining({ code: "input.invalid", faults: [expect.objectContaining({ path })] }),
    );
  });

  it("does not care how large the film is shown, only for the ratio", () => {
    const length = fc.double({ min: 5, max: 25, noNaN: true });
    fc.assert(
      fc.property(
        length,
        length,
        length,
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        (canal, known, onFilm, factor) => {
          const one = workingLength({
            canalOnFilmMm: canal,
            known: { lengthMm: known, onFilmMm: onFilm },
            stopShortMm: 0,
          });
          const other = workingLength({
            canalOnFilmMm: canal * factor,
            known: { lengthMm: known, onFilmMm: onFilm * factor },
            sigmaMm: 0.1 * factor,
            stopShortMm: 0,
          });
          expect(other.radiographicMm / one.radiographicMm).toBeCloseTo(1, 9);
          expect(other.sigmaMm / one.sigmaMm).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it("C3: states the spread that reading again and again shows", () => {
    const { normal } = seededRandom(7);
    const truth = worked.known.lengthMm * (worked.canalOnFilmMm / worked.known.onFilmMm);
    const runs = Array.from({ length: 4_000 }, () =>
      workingLength({
        canalOnFilmMm: worked.canalOnFilmMm + 0.1 * normal(),
        known: { lengthMm: 20, onFilmMm: worked.known.onFilmMm + 0.1 * normal() },
      }),
    );
    const covered = runs.filter(({ interval }) => interval.low <= truth && truth <= interval.high).length / runs.length;
    // 95 % within four standard errors of 0.34 %.
    expect(covered).toBeGreaterThan(0.936);
    expect(covered).toBeLessThan(0.964);
  });
});
