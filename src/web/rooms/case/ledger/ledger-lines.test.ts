import { describe, expect, it } from "vitest";
import { ledgerLines, speaksFor, valueName, valueUnit } from "./ledger-lines.ts";

const thin = "\u202f";

describe("ledger lines", () => {
  it("give a value with its interval, in the order in which they are read", () => {
    const output = {
      ...{ lengthMm: 21.31, pruettDeg: 38.7, pruettRadiusMm: 23.3 },
      intervals: {
        pruettDeg: { low: 26.2, high: 42.1, level: 0.95 },
        lengthMm: { low: 20.7, high: 21.9, level: 0.95 },
      },
    };
    expect(ledgerLines({ topic: "curvature", output })).toEqual([
      { at: "pruettDeg", name: "Largest bend", value: "39°", interval: "26\u201342" },
      { at: "pruettRadiusMm", name: "Radius there", value: `23.3${thin}mm` },
      { at: "lengthMm", name: "Length of the course", value: `21.3${thin}mm`, interval: "20.7\u201321.9" },
    ]);
  });

  it("leave out what was not computed, and say nothing for a refusal", () => {
    expect(ledgerLines({ topic: "canals", output: { code: { display: "²46 M² D¹" }, extraRoot: null } })).toEqual([
      { at: "code.display", name: "Roots and canals", value: "²46 M² D¹" },
    ]);
    expect(ledgerLines({ topic: "calibrate" })).toEqual([]);
  });

  it("tell a chance in percent, and never as certain where it is not", () => {
    const output = {
      prior: { mean: 0.692, interval: { low: 0.24, high: 0.96, level: 0.95 } },
      posterior: { mean: 0.9998 },
    };
    expect(ledgerLines({ topic: "missedCanal", output })).toEqual([
      { at: "posterior.mean", name: "Chance that it is there", value: `>99.9${thin}%` },
      { at: "prior.mean", name: "Before any look", value: `69${thin}%`, interval: "24\u201396" },
    ]);
  });

  it("read a topic that is new to them by the names of its numbers", () => {
    expect(ledgerLines({ topic: "heat", output: { wallLeftMm: 0.41, note: "x" } })).toEqual([
      { at: "wallLeftMm", name: "Wall left", value: `0.41${thin}mm` },
    ]);
  });

  it("say a side in words and not by a sign, the interval counted to the same side", () => {
    const told = (liesBuccallyMm: number, low: number, high: number) =>
      ledgerLines({
        topic: "twoView",
        output: { side: "mixed", liesBuccallyMm, apparent: [3.42], intervals: { liesBuccallyMm: { low, high } } },
      }).map(({ name, value, interval }) => [name, value, interval]);
    expect(told(-4.9, -5.7, -4.1)).toEqual([
      ["The bend turns", "to both sides, one bend after the other", undefined],
      ["Beside the shared mark", `4.9${thin}mm to lingual`, "4.1\u20135.7"],
      ["Seen on film 1", "3°", undefined],
    ]);
    expect(told(0.2, -0.1, 0.5)[1]).toEqual(["Beside the shared mark", `0.2${thin}mm to buccal`, "\u22120.1 to 0.5"]);
  });

  it("say no side of a tube that stands straight on", () => {
    const told = (horizontalAngleDeg: number) =>
      ledgerLines({ topic: "tubeShift", output: { recommended: { horizontalAngleDeg } } })[0]?.value;
    expect([told(0), told(0.2), told(-20)]).toEqual(["0°", "0°", "20° from distal"]);
  });

  it("give the change of a lesion between two films, and whether they compare", () => {
    const output = {
      ...{ areaRatio: 0.5197, residualMm: 0.0491, stretch: 1.01141, overlap: 0.9966 },
      ...{
        statement: "The films can be compared.",
        intervals: { areaRatio: { low: 0.497, high: 0.546, level: 0.95 } },
      },
    };
    expect(
      ledgerLines({ topic: "compareFilms", output }).map(({ name, value, interval }) => [name, value, interval]),
    ).toEqual([
      ["Lesion's area, after over before", "0.52", "0.50\u20130.55"],
      ["Pieces lie off by", `0.05${thin}mm`, undefined],
      ["Largest stretch over smallest", "1.011", undefined],
      ["Share of the first film covered", "1.00", undefined],
      ["Whether they compare", "The films can be compared.", undefined],
    ]);
  });

  it.each([
    ["compareFilms", "areaRatio", "residualMm"],
    ["workingLength", "recommendedMm", "radiographicMm"],
    ["twoView", "hiddenDeg", "side"],
  ])("of %s: only %s speaks under its name, and %s never in its place", (topic, first, other) => {
    expect([speaksFor(topic, first), speaksFor(topic, other)]).toEqual([true, false]);
  });

  it("of a list or of a topic without names: the first that there is speaks", () => {
    expect([speaksFor("plan", "ways"), speaksFor("difficulty", "facts"), speaksFor("new", "any")]).toEqual(
      Array(3).fill(true),
    );
  });

  it("name the places of an output", () => {
    expect(valueName("curvature", "pruettDeg")).toBe("Largest bend");
    expect(valueName("curvature", "intervals.pruettDeg.low")).toBe("Largest bend, low end");
    expect(valueUnit("curvature", "pruettDeg")).toBe("°");
    expect(valueUnit("curvature", "intervals.pruettDeg.low")).toBe("");
    expect(valueName("workingLength", "recommendedInterval.high")).toBe("Working length by film, high end");
    expect(valueName("canals", "roots[1].sequence")).toBe("Canals from orifice to foramen, root 2");
    expect(valueName(undefined, "someNumber")).toBe("Some number");
  });
});
