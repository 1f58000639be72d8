import { describe, expect, it } from "vitest";
import { refusalOf } from "../radiograph/drawn-measures/bent-course-for-tests.ts";
import { solventTopic } from "./solvent-topic.ts";

const dose = { atMin: 0, volumeMl: 0.1 };
const room = { volumeM3: 30, airChangesPerHour: 6 };
const input = { solvent: "chloroform", doses: [dose], room };
const own = { own: "invented", molarMassGMol: 100, densityGMl: 1, vapourPressureKPa: 5, limits: [] };
const limit = { authority: "house", averagingMin: 60, source: "house rules" };
const extrusion = { massMg: 1, bodyMassKg: 70 };
const toxic = { mgPerKg: 1, kind: "acuteEffect", source: "a" };

describe("what is not well formed is refused at its path", () => {
  it.each([
    ["a negative volume", { doses: [{ ...dose, volumeMl: -0.1 }] }, "doses[0].volumeMl"],
    ["microlitres for millilitres", { doses: [dose, { ...dose, volumeMl: 100 }] }, "doses[1].volumeMl"],
    ["a time before the visit", { doses: [{ ...dose, atMin: -1 }] }, "doses[0].atMin"],
    ["a time beyond the day", { doses: [{ ...dose, atMin: 721 }] }, "doses[0].atMin"],
    ["too many doses", { doses: Array(41).fill(dose) }, "doses"],
    ["a solvent that is not known", { solvent: "halothane" }, "solvent"],
    ["an own solvent without its numbers", { solvent: { own: "invented" } }, "solvent.molarMassGMol"],
    ["a density in kg/m3", { solvent: { ...own, densityGMl: 1478 } }, "solvent.densityGMl"],
    ["a room of nothing", { room: { ...room, volumeM3: 0 } }, "room.volumeM3"],
    ["air that is sucked back", { room: { ...room, airChangesPerHour: -1 } }, "room.airChangesPerHour"],
    ["more air than any room has", { room: { ...room, airChangesPerHour: 201 } }, "room.airChangesPerHour"],
    ["air that stands still", { nearField: { radiusM: 0.5, airSpeedMPerMin: 0 } }, "nearField.airSpeedMPerMin"],
    ["a radius in centimetres", { nearField: { radiusM: 50, airSpeedMPerMin: 6 } }, "nearField.radiusM"],
    ["a temperature in F", { temperatureC: 77 }, "temperatureC"],
    ["a pressure in mmHg", { pressureKPa: 760 }, "pressureKPa"],
    ["a rate of nothing", { evaporation: { kind: "firstOrder", ratePerMin: 0 } }, "evaporation.ratePerMin"],
    ["another kind", { evaporation: { kind: "slow" } }, "evaporation.kind"],
    ["another averaging", { furtherLimits: [{ ...limit, ppm: 1, averagingMin: 30 }] }, "furtherLimits[0].averagingMin"],
    ["a negative case before", { otherCases: [{ ppm: -1, minutes: 60 }] }, "otherCases[0].ppm"],
    ["a body of nothing", { extrusion: { ...extrusion, bodyMassKg: 0 } }, "extrusion.bodyMassKg"],
    ["no extrusion at all", { extrusion: { ...extrusion, massMg: 0 } }, "extrusion.massMg"],
    [
      "a toxic dose without its source",
      { extrusion: { ...extrusion, toxicDoses: [{ ...toxic, source: "" }] } },
      "extrusion.toxicDoses[0].source",
    ],
  ])("%s", (_name, change, path) => {
    const { code, faults } = refusalOf(solventTopic, { ...input, ...change });
    expect(code).toBe("input.invalid");
    expect(faults.map((fault) => fault.path)).toContain(path);
  });

  it("a solvent without data, with what it needs", () => {
    const [fault] = refusalOf(solventTopic, { ...input, solvent: "halothane" }).faults;
    expect(fault?.says).toMatch(
      /^"halothane" is none of chloroform, .*; another is given by its own numbers: own, molar/,
    );
    const bare = refusalOf(solventTopic, { ...input, solvent: { own: "halothane" } }).faults.map(({ path }) => path);
    expect(bare).toEqual(
      ["molarMassGMol", "densityGMl", "vapourPressureKPa", "limits"].map((name) => `solvent.${name}`),
    );
  });

  it("a percent in place of a share, with what it would be", () => {
    const doses = [{ ...dose, recoveredFraction: 85 }];
    expect(refusalOf(solventTopic, { ...input, doses }).faults).toEqual([
      { path: "doses[0].recoveredFraction", says: "85 is outside 0..1; a percent is written 0.85" },
    ]);
  });
});

describe("what can't be is refused at its path", () => {
  it.each([
    ["a room too cold for the table", { temperatureC: 14.9 }, "temperatureC"],
    ["a room too warm for it", { temperatureC: 30.1 }, "temperatureC"],
    [
      "a solvent that would boil",
      { solvent: { ...own, vapourPressureKPa: 80 }, pressureKPa: 80 },
      "solvent.vapourPressureKPa",
    ],
    ["a rate of what goes at once", { evaporation: { kind: "instant", ratePerMin: 1 } }, "evaporation.ratePerMin"],
    ["a time of what goes at once", { evaporation: { kind: "instant", overMin: 1 } }, "evaporation.overMin"],
    ["a time of first order", { evaporation: { kind: "firstOrder", overMin: 5 } }, "evaporation.overMin"],
    ["rate and time", { evaporation: { kind: "constant", overMin: 5, ratePerMin: 0.2 } }, "evaporation.overMin"],
    [
      "rates upside down",
      { evaporation: { kind: "firstOrder", ratePerMin: { low: 2, high: 1 } } },
      "evaporation.ratePerMin.low",
    ],
    [
      "times upside down",
      { evaporation: { kind: "constant", overMin: { low: 9, high: 3 } } },
      "evaporation.overMin.low",
    ],
    // 2/3 pi 1^3 = 2.094 m3.
    [
      "a near field larger than the room",
      { room: { ...room, volumeM3: 2.09 }, nearField: { radiusM: 1, airSpeedMPerMin: 6 } },
      "nearField.radiusM",
    ],
    ["a limit without a number", { furtherLimits: [limit] }, "furtherLimits[0].ppm"],
    ["a limit with two", { solvent: { ...own, limits: [{ ...limit, ppm: 1, mgM3: 1 }] } }, "solvent.limits[0].ppm"],
    ["a day of more than a day", { otherCases: Array(3).fill({ ppm: 1, minutes: 481 }) }, "otherCases"],
    ["an extrusion without an amount", { extrusion: { bodyMassKg: 70 } }, "extrusion.massMg"],
    ["an extrusion with two", { extrusion: { ...extrusion, volumeMl: 0.001 } }, "extrusion.massMg"],
    // 0.1 ml at 1.4788 g/ml are 147.88 mg.
    ["more mg out than in", { extrusion: { ...extrusion, massMg: 147.9 } }, "extrusion.massMg"],
    ["more ml out than in", { extrusion: { volumeMl: 0.11, bodyMassKg: 70 } }, "extrusion.volumeMl"],
  ])("%s", (_name, change, path) => {
    expect(refusalOf(solventTopic, { ...input, ...change })).toMatchObject({
      code: "input.impossible",
      faults: [{ path }],
    });
  });

  it("is told whole", () => {
    const change = {
      ...{ temperatureC: 40, evaporation: { kind: "instant", ratePerMin: 1 }, furtherLimits: [limit] },
      ...{
        room: { ...room, volumeM3: 2 },
        nearField: { radiusM: 1, airSpeedMPerMin: 6 },
        extrusion: { bodyMassKg: 70 },
      },
    };
    expect(refusalOf(solventTopic, { ...input, ...change }).faults.map(({ path }) => path)).toEqual([
      "temperatureC",
      "evaporation.ratePerMin",
      "nearField.radiusM",
      "furtherLimits[0].ppm",
      "extrusion.massMg",
    ]);
  });

  it.each([15, 20, 25, 30])("but not a room of %d C, nor what just fits", (temperatureC) => {
    const change = {
      temperatureC,
      extrusion: { massMg: 147.88, bodyMassKg: 70 },
      otherCases: [{ ppm: 1, minutes: 720 }],
    };
    expect(solventTopic.compute(solventTopic.input.parse({ ...input, ...change })).cautions.length).toBeGreaterThan(0);
  });
});
