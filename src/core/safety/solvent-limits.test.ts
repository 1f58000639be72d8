import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { solventTopic } from "./solvent-topic.ts";

const of = (input: object) => answer(solventTopic, input);

const room = { volumeM3: 30, airChangesPerHour: 10 };
const nearField = { radiusM: 0.5, airSpeedMPerMin: 3.6 };
const drop = { atMin: 0, volumeMl: 0.1 };
const fifth = { kind: "firstOrder", ratePerMin: 0.2 };
/** 0.1 ml of chloroform, 0.2/min, 30 m3, 10 changes of air an hour: the drop that the spill model is known for. */
const known = { solvent: "chloroform", doses: [drop], evaporation: fifth, room };
const own = { own: "invented", molarMassGMol: 100, densityGMl: 1, vapourPressureKPa: 5, limits: [] };
const limit = { authority: "house", averagingMin: 60, source: "house rules" };

describe("limits", () => {
  it("stand by authority, averaging, kind, year and mark, the strictest first (C9)", () => {
    const rows = of(known).limits.map(({ authority, ppm, averagingMin, kind, mark }) => [
      authority,
      ppm,
      averagingMin,
      kind,
      mark,
    ]);
    expect(rows).toEqual([
      ["MAK (Germany)", 0.5, 480, "timeWeighted", "seen"],
      ["NIOSH (United States)", 2, 60, "shortTerm", "seen"],
      ["European Union", 2, 480, "timeWeighted", "memory"],
      ["United Kingdom", 2, 480, "timeWeighted", "memory"],
      ["Quebec", 5, 480, "timeWeighted", "seen"],
      ["ACGIH (United States)", 10, 480, "timeWeighted", "seen"],
      ["OSHA (United States)", 50, 0, "ceiling", "seen"],
    ]);
    expect(of(known).cautions.join()).toContain("recalled and not read");
  });

  // The published tables: xylene 100 and 150 (United States), 50 and 100 (Europe); tetrachloroethylene 100 and its ceiling of 200, 25 and 100, 20 and 40; limonene 5, its peaks 20, and 30.
  it.each([
    ["xylene", [50, 50, 100, 100, 100, 100, 150]],
    ["tetrachloroethylene", [20, 25, 40, 100, 100, 200]],
    ["limonene", [5, 20, 30]],
    ["eucalyptol", []],
  ])("of %s are those that are published (C9)", (solvent, ppm) => {
    const found = of({ ...known, solvent });
    expect(found.limits.map((row) => row.ppm)).toEqual(ppm);
    if (ppm.length > 0) return;
    expect(found.cautions.join()).toContain("No limit is set for eucalyptol");
    const why = "no limit is set in any list that was read";
    expect(found.notComputed).toEqual(["volumeAtFirstLimitMl", "firstLimit"].map((name) => ({ name, why })));
  });

  it("are held against the figure of their own averaging, in each zone (C9)", () => {
    const furtherLimits = [0, 15, 60, 480].map((averagingMin) => ({ ...limit, averagingMin, ppm: 1 }));
    const found = of({ ...known, solvent: own, nearField, furtherLimits });
    expect(found.limits).toHaveLength(8);
    for (const row of found.limits) {
      const name = { 0: "peak", 15: "mean15", 60: "mean60", 480: "mean480" } as const;
      const { mgM3, ppm } = found[row.zone]?.[name[row.averagingMin]] ?? { mgM3: -1, ppm: -1 };
      expect(row.value).toEqual({ mgM3, ppm });
      expect(row.ratio).toBeCloseTo(ppm, 12);
      expect(row.passed).toBe(ppm > 1);
      expect(row.stands).toBe(ppm > 1 ? "above" : "below");
      expect([row.mark, row.source]).toEqual(["own", "house rules"]);
    }
    expect(found.limits.slice(0, 2).map(({ averagingMin, zone }) => [averagingMin, zone])).toEqual([
      [0, "near"],
      [0, "far"],
    ]);
    expect(found.cautions[0]).toMatch(/^Above [1-4] of 4 limits; most above that of house, 1 ppm, by a factor of /);
  });

  it("that the range of rates decides are told as such, and passed by the upper end (C9)", () => {
    const { evaporation: _, ...rest } = known;
    const found = of({ ...rest, solvent: { ...own, limits: [{ ...limit, averagingMin: 0, ppm: 0.5 }] } });
    expect(found.limits[0]).toMatchObject({ passed: true, stands: "dependsOnRate" });
    expect(found.cautions[0]).toMatch(/^Above 1 of 1 limits at some rates of the range;/);
    const all = of({ ...rest, solvent: { ...own, limits: [{ ...limit, averagingMin: 0, ppm: 0.001 }] }, nearField });
    expect(all.cautions[0]).toMatch(/^Above 1 of 1 limits at every rate of the range;/);
  });

  it("at which the value just lies are not passed (C9)", () => {
    // A closed room of 25 m3: 0.1 ml at 1 g/ml are 100 mg, 4 mg/m3 from the first moment on.
    const solvent = { ...own, limits: [{ ...limit, averagingMin: 0, mgM3: 4 }] };
    const found = of({
      solvent,
      doses: [drop],
      evaporation: { kind: "instant" },
      room: { volumeM3: 25, airChangesPerHour: 0 },
    });
    expect(found.limits[0]).toMatchObject({ ratio: 1, passed: false, stands: "at" });
    expect(found.volumeAtFirstLimitMl).toBeCloseTo(0.1, 12);
  });

  it("name what causes cancer, by whom (C9)", () => {
    const said = (solvent: unknown) =>
      of({ ...known, solvent })
        .carcinogen.map(({ says }) => says)
        .join(" ");
    expect(said("chloroform")).toMatch(/potential occupational carcinogen.*group 2B/);
    expect(said("tetrachloroethylene")).toMatch(/lowest feasible.*group 2A/);
    expect(said("xylene")).toContain("group 3: not classifiable (list of 1999)");
    expect(said("limonene")).toContain("group 3");
    expect([said("eucalyptol"), said(own)]).toEqual(["", ""]);
    expect(of(known).cautions.join()).toContain("potential occupational carcinogen");
  });
});

describe("the rest of the day", () => {
  // 29 CFR 1910.1000(d): 2 h at 150, 2 h at 75, 4 h at 50 ppm are 81.25 ppm over 8 h.
  it("enters the mean over 8 hours as the regulation's own example has it (C8)", () => {
    const otherCases = [
      { ppm: 150, minutes: 120 },
      { ppm: 75, minutes: 120 },
      { ppm: 50, minutes: 240 },
    ];
    const { far } = of({ ...known, doses: [], otherCases });
    expect(far.mean480.ppm).toBeCloseTo(81.25, 12);
    expect([far.peak.ppm, far.mean60.ppm]).toEqual([0, 0]);
  });

  // Measured in a surgery: < 0.88 ppm over 150 min, < 0.275 ppm over 8 h (J Endod 1992;18:301-303); both are upper bounds.
  it("of a surgery that was measured keeps its < (C8, C13)", () => {
    const found = of({ ...known, doses: [], otherCases: [{ ppm: 0.88, minutes: 150 }] });
    expect(found.far.mean480.ppm).toBeCloseTo(0.275, 12);
    expect(found.cautions.join()).toContain("< 0.88 ppm over 150 min, that is < 0.275 ppm over 8 hours");
  });

  it("is taken off what is left of a limit over 8 hours (C10)", () => {
    const solvent = { ...own, limits: [{ ...limit, averagingMin: 480, ppm: 2 }] };
    const alone = of({ ...known, solvent }).volumeAtFirstLimitMl ?? 0;
    const input = { ...known, solvent, otherCases: [{ ppm: 3, minutes: 240 }] };
    expect((of(input).volumeAtFirstLimitMl ?? 0) / alone).toBeCloseTo(0.25, 9);
    const spent = of({ ...input, otherCases: [{ ppm: 4, minutes: 240 }] });
    expect(spent.notComputed[0]?.why).toBe("the day's other cases alone reach the limit of house");
  });
});
