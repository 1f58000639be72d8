import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import { standingCaution } from "./standing-caution.ts";
import { ultrasonicHeatTopic } from "./ultrasonic-heat-topic.ts";

const of = (input: object) => answer(ultrasonicHeatTopic, input);
const burst = (seconds: number, more: object = {}) => ({
  seconds,
  restSeconds: 30,
  coolant: "none",
  on: "fragment",
  ...more,
});
const rises = (one: object) =>
  of({ bursts: [one] }).bursts[0]?.published.map(({ riseCelsius, where, seconds }) => [
    riseCelsius,
    where,
    seconds.high,
  ]);
const niTi = { alloy: "nickelTitanium", power: 1.5 };

describe("published rises", () => {
  // Madarati 2013 (seen): on the fragment, no air; 45.34 at 30 s without air over all, 25.56 with it.
  it.each([
    [15, niTi, 36.33],
    [30, niTi, 55.44],
    [15, { alloy: "steel", power: 1.5 }, 26.08],
    [30, { alloy: "steel", power: 1.5 }, 35.27],
    [15, { alloy: "steel", power: 3 }, 35.25],
    [30, { alloy: "steel", power: 3 }, 45.32],
  ])("of a dry fragment worked for %d s, %j: %d (C3)", (seconds, more, rise) => {
    const [first, ...others] = of({ bursts: [burst(seconds, more)] }).bursts[0]?.published ?? [];
    expect(first).toMatchObject({
      riseCelsius: rise,
      where: "fragment",
      differs: [],
      source: "madarati-2013",
      mark: "seen",
    });
    expect(others.map(({ riseCelsius }) => riseCelsius)).toEqual([45.34]);
    // The mean over alloys and powers is not the same as this fragment's, whatever else agrees.
    expect(others[0]?.differs).toContain("alloys and powers are not told apart there");
  });

  it("of a fragment with air, with water, and of a post", () => {
    expect(rises(burst(30, { coolant: "air" }))).toEqual([[25.56, "fragment", 30]]);
    // Pinter 2023 (seen): 8.0 (SD 0.5) on the root's surface, 60 s phases with rinsing.
    expect(rises(burst(60, { coolant: "water", ...niTi }))).toEqual([[8, "rootSurface", 60]]);
    const [rinsed] = of({ bursts: [burst(60, { coolant: "water", ...niTi })] }).bursts[0]?.published ?? [];
    expect(rinsed?.differs).toEqual(["rinsed between phases there"]);
    // Budd 2005 (seen): 10.9 (SD 7.9) on the root, 20.1 (SD 27.9) on the post, 30 to 120 s.
    for (const coolant of ["none", "air", "water"])
      expect(rises(burst(60, { coolant, on: "post" }))).toEqual([
        [10.9, "rootSurface", 120],
        [20.1, "post", 120],
      ]);
    const [root] = of({ bursts: [burst(60, { on: "post" })] }).bursts[0]?.published ?? [];
    expect(root).toMatchObject({ sd: 7.9, differs: ["coolants are not told apart there"] });
  });

  it("between two durations both stand, and nothing is put between (C4)", () => {
    expect(rises(burst(20, niTi))).toEqual([
      [36.33, "fragment", 15],
      [55.44, "fragment", 30],
      [45.34, "fragment", 30],
    ]);
    const [first] = of({ bursts: [burst(20, niTi)] }).bursts[0]?.published ?? [];
    expect(first?.differs).toEqual(["20 s, longer than the 15 s there"]);
  });

  it("below the shortest only the shortest stands, beyond the longest the longest, and it is said", () => {
    expect(rises(burst(5, niTi))).toContainEqual([36.33, "fragment", 15]);
    expect(rises(burst(5, niTi))).not.toContainEqual([55.44, "fragment", 30]);
    const beyond = of({ bursts: [burst(90, niTi)] });
    expect(beyond.bursts[0]?.published.map(({ riseCelsius }) => riseCelsius)).toEqual([55.44, 45.34]);
    expect(beyond.bursts[0]?.published[0]?.differs).toEqual(["90 s, longer than the 30 s there"]);
    expect(beyond.notComputed).toEqual([
      { name: "bursts[0].riseCelsius", why: "90 s are beyond the 30 s of the tables" },
    ]);
    expect(of({ bursts: [burst(121, { on: "post" })] }).notComputed[0]?.why).toBe(
      "121 s are beyond the 120 s of the tables",
    );
    expect(of({ bursts: [burst(29, { on: "post" })] }).bursts[0]?.published[0]?.differs).toContain(
      "29 s, shorter than the 30 to 120 s there",
    );
  });

  it("of the nearest power, which is named; of all where it is not told", () => {
    const steel = (power: number) => of({ bursts: [burst(15, { alloy: "steel", power })] }).bursts[0]?.published[0];
    expect(steel(2)).toMatchObject({ riseCelsius: 26.08, differs: ["power 2; there 1.5"] });
    expect(steel(2.5)).toMatchObject({ riseCelsius: 35.25, differs: ["power 2.5; there 3"] });
    const untold = of({ bursts: [burst(15)] }).bursts[0]?.published ?? [];
    expect(untold.map(({ riseCelsius }) => riseCelsius).sort((a, b) => a - b)).toEqual([26.08, 35.25, 36.33, 45.34]);
    const [last] = untold.filter(({ riseCelsius }) => riseCelsius === 36.33);
    expect(last?.differs).toEqual(["the alloy is not told; there nickel-titanium", "the power is not told; there 1.5"]);
  });

  it("no table, no figure", () => {
    const found = of({ bursts: [burst(20, { on: "root canal", coolant: "water" }), burst(20, { on: "root canal" })] });
    expect(found.bursts).toEqual([{ published: [] }, { published: [] }]);
    expect(found.notComputed.map(({ why }) => why)).toEqual([
      "no table that was read has ultrasound on a root canal with water",
      "no table that was read has ultrasound on a root canal without a coolant",
    ]);
  });

  it("every figure is a printed one, whatever the burst (property)", () => {
    const printed = [36.33, 55.44, 26.08, 35.27, 35.25, 45.32, 45.34, 25.56, 8, 10.9, 20.1];
    for (const on of ["fragment", "post", "root canal"])
      for (const coolant of ["none", "air", "water"])
        for (const alloy of ["nickelTitanium", "steel"])
          for (const seconds of [0.5, 15, 17, 30, 31, 60, 100, 600])
            for (const power of [1, 1.5, 2.25, 3, 40]) {
              const found = of({ bursts: [burst(seconds, { on, coolant, alloy, power })] });
              for (const { riseCelsius } of found.bursts[0]?.published ?? []) expect(printed).toContain(riseCelsius);
              expect(found.notComputed).toHaveLength(1);
            }
  });
});

describe("totals and runs", () => {
  const bursts = [
    burst(10, { restSeconds: 0 }),
    burst(12.2, { restSeconds: 5 }),
    burst(40, { coolant: "water", restSeconds: 0 }),
    burst(20.1, { restSeconds: 90 }),
  ];

  it("are sums; the rest after the last is none between (C1)", () => {
    expect(of({ bursts }).totals).toEqual({ bursts: 4, activeSeconds: 82.3, drySeconds: 42.3, restSeconds: 5 });
    expect(of({ bursts: [] })).toMatchObject({
      totals: { bursts: 0, activeSeconds: 0, drySeconds: 0, restSeconds: 0 },
      bursts: [],
    });
  });

  it("bursts that follow at once are one; a coolant ends a dry one, a rest ends any (C2)", () => {
    const found = of({ bursts });
    expect(found.longestDryBurst).toEqual({ seconds: 22.2, bursts: [0, 1] });
    expect(found.longestBurst).toEqual({ seconds: 60.1, bursts: [2, 3] });
    const wet = of({ bursts: [burst(40, { coolant: "air" })] });
    expect(wet).not.toHaveProperty("longestDryBurst");
    expect(of({ bursts: [] })).not.toHaveProperty("longestBurst");
    const three = of({
      bursts: [burst(5, { restSeconds: 0 }), burst(5, { restSeconds: 0, coolant: "water" }), burst(6)],
    });
    expect(three.longestDryBurst).toEqual({ seconds: 6, bursts: [2] });
  });
});

describe("cautions (C5)", () => {
  const cautions = (...bursts: readonly object[]) => of({ bursts }).cautions.join("\n");

  // Eriksson and Albrektsson 1983 (memory): 47 degrees for 1 min, 10 above 37.
  it("name the threshold always, and the standing one last", () => {
    for (const input of [{ bursts: [] }, { bursts: [burst(5, { coolant: "water" })] }, { bursts: [burst(90)] }]) {
      const found = of(input);
      expect(found.threshold).toEqual({ celsius: 47, seconds: 60, riseCelsius: 10 });
      expect(found.cautions[0]).toContain("from 47 degrees for 60 s on");
      expect(found.cautions.at(-1)).toBe(standingCaution);
    }
  });

  // Dominici 2005 (memory): over about 15 s dry.
  it("dry over 15 s without a rest, summed where no rest lay between", () => {
    expect(cautions(burst(15))).not.toContain("Dry for");
    expect(cautions(burst(15.5))).toContain("Dry for 15.5 s without a rest: over about 15 s");
    expect(cautions(burst(10, { restSeconds: 0 }), burst(10))).toContain("Dry for 20 s");
    expect(cautions(burst(10, { restSeconds: 1 }), burst(10))).not.toContain("without a rest");
    expect(cautions(burst(10, { restSeconds: 1 }), burst(10))).toContain(
      "Dry for 20 s in all, though not at a stretch",
    );
    expect(cautions(burst(10, { restSeconds: 1 }), burst(5))).not.toContain("Dry for");
    expect(cautions(burst(50, { coolant: "water" }))).not.toContain("Dry for");
  });

  it("a minute without a rest, cooled or not", () => {
    expect(cautions(burst(59, { coolant: "water" }))).not.toContain("minute of the threshold");
    expect(cautions(burst(60, { coolant: "water" }))).toContain(
      "60 s without a rest are as long as the minute of the threshold",
    );
  });

  // Huttula 2006 and Budd 2005 (seen).
  it("of a dry post quote what was seen of posts; of what is dry otherwise ask for a coolant", () => {
    expect(cautions(burst(10, { on: "post" }))).toContain(
      "for 4 min heated the root's surface more than with irrigation; over all, 10.9 degrees (SD 7.9)",
    );
    expect(cautions(burst(10))).toContain("Cool with water or air, and pause.");
    expect(cautions(burst(10, { coolant: "air" }))).not.toContain("Cool with");
  });
});

describe("refusals", () => {
  it.each([
    ["seconds", 0],
    ["seconds", -5],
    ["seconds", 100_000],
    ["restSeconds", -1],
    ["coolant", "oil"],
    ["on", "bone"],
    ["alloy", "gold"],
    ["power", 0],
  ])("%s %j is refused at its path", (field, value) => {
    let thrown: unknown;
    try {
      of({ bursts: [burst(5), { ...burst(5), [field]: value }] });
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(Refusal);
    expect(thrown).toMatchObject({
      code: "input.invalid",
      faults: [expect.objectContaining({ path: `bursts[1].${field}` })],
    });
  });
});

describe("the page of the method", () => {
  const page = readFileSync(
    fileURLToPath(new URL("../../../docs/methods/ultrasonic-heat.md", import.meta.url)),
    "utf8",
  );

  it("says what its example comes to", () => {
    const found = of(JSON.parse(/```json input\n([\s\S]*?)```/.exec(page)?.[1] ?? ""));
    expect(found.totals).toEqual({ bursts: 3, activeSeconds: 80, drySeconds: 20, restSeconds: 90 });
    expect(found.longestDryBurst?.seconds).toBe(20);
    expect(found.bursts.map(({ published }) => published.map(({ riseCelsius }) => riseCelsius))).toEqual([
      [36.33, 55.44, 45.34],
      [25.56],
      [8],
    ]);
  });
});
