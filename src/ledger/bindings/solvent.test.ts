import { describe, expect, it } from "vitest";
import type { BodyOf } from "../../record/parts.ts";
import { extrusionTold, solventForPatientTold, solventSubjects, solventTold } from "../solvent-told.ts";
import { entryOf, surgery, visitEntries, visitParts } from "../visit-sums/visit-for-tests.ts";

type Visit = BodyOf<"visit">;
const subject = "solvent of visit-1";
const drop = { solvent: "chloroform", volumeMl: 0.1, atMin: 0 } as const;
const clinic = { room: surgery, evaporationPerMin: { low: 0.2, high: 0.2 } };
const own = { name: "a further solvent", molarMassGMol: 88.1, densityGMl: 0.9, vapourPressureKPa: 12.6 };
const told = (used: Partial<Visit>) => solventTold(visitEntries(visitParts(used)), "visit-1");

describe("the solvent of a visit", () => {
  it("is asked where a dose is recorded, and needs the room of that visit", () => {
    expect(visitEntries(visitParts({ clinic }))).toEqual([]);
    const { refused, inputPaths } = entryOf(visitParts({ solvent: [drop] }), subject);
    expect(refused).toEqual(["the room was not set; take the clinic's, or write its volume and air changes here"]);
    expect(inputPaths).toEqual([{ input: "room", record: "visit-1/clinic/room" }]);
    expect(told({ solvent: [drop] })?.why).toContain("take the clinic's");
  });

  // 0.1 ml of chloroform, 0.2 a minute, 30 m3, 10 changes an hour: 2.030 ppm beside the mouth at 0.43 min, by a stiff solver.
  it("makes of the known drop what a solver of the two zones makes of it", () => {
    const output = told({ solvent: [drop], clinic })?.output;
    expect(output?.near?.peak.ppm).toBeCloseTo(2.03, 2);
    expect(output?.near?.mean60.ppm).toBeCloseTo(0.279, 3);
    expect(output?.volumeAtFirstLimitMl).toBeCloseTo(0.716, 3);
  });

  it("takes a closed room, and says that it is one", () => {
    const closed = { ...clinic, room: { ...surgery, airChangesPerHour: 0 } };
    const output = told({ solvent: [drop], clinic: closed })?.output;
    expect(output?.massBalance.ventilatedMg).toBe(0);
    expect(output?.cautions.join(" ")).toMatch(/closed/i);
  });

  it("names where each value came from: doses, room, limits of this solvent, other cases, what passed", () => {
    const limit = { authority: "house", averagingMin: 480 as const, ppm: 1, source: "house rules" };
    const { input, inputPaths } = entryOf(
      visitParts({
        solvent: [{ ...drop, recoveredFraction: 0.5 }],
        clinic: {
          ...{ room: { ...surgery, temperatureC: 22 }, evaporationPerMin: { low: 0.1, high: 0.4 } },
          exposureLimits: [
            { ...limit, solvent: "xylene" },
            { ...limit, solvent: "Chloroform" },
          ],
        },
        otherSolventCases: [
          { ppm: 1, minutes: 0 },
          { ppm: 0.2, minutes: 90 },
        ],
        solventPassed: { massMg: 0.32, says: "as in extracted teeth" },
      }),
      subject,
    );
    expect(input).toEqual({
      solvent: "chloroform",
      doses: [{ atMin: 0, volumeMl: 0.1, recoveredFraction: 0.5 }],
      room: { volumeM3: 30, airChangesPerHour: 10 },
      temperatureC: 22,
      nearField: surgery.nearField,
      evaporation: { kind: "firstOrder", ratePerMin: { low: 0.1, high: 0.4 } },
      furtherLimits: [limit],
      otherCases: [{ ppm: 0.2, minutes: 90 }],
      extrusion: { massMg: 0.32, bodyMassKg: 70 },
    });
    const records = Object.fromEntries(inputPaths.map((path) => [path.input, path.record]));
    expect(records).toMatchObject({
      solvent: "visit-1/solvent/0/solvent",
      "doses[0]": "visit-1/solvent/0",
      "room.airChangesPerHour": "visit-1/clinic/room/airChangesPerHour",
      "evaporation.ratePerMin": "visit-1/clinic/evaporationPerMin",
      "furtherLimits[0]": "visit-1/clinic/exposureLimits/1",
      "otherCases[0]": "visit-1/otherSolventCases/1",
      "extrusion.massMg": "visit-1/solventPassed/massMg",
      "extrusion.bodyMassKg": "visit-1/vitalSigns/bodyMassKg",
    });
  });

  it("tells the patient's air apart only where the day holds other cases, and without them", () => {
    const entries = visitEntries(
      visitParts({ solvent: [drop], clinic, otherSolventCases: [{ ppm: 0.4, minutes: 120 }] }),
    );
    const [staff, patient] = [solventTold(entries, "visit-1"), solventForPatientTold(entries, "visit-1")];
    // 0.4 ppm over 120 of 480 min add 0.1 ppm to the mean over 8 hours, and to nothing else.
    const means = [staff, patient].map((one) => one?.output?.near?.mean480.ppm ?? Number.NaN);
    expect((means[0] ?? 0) - (means[1] ?? 0)).toBeCloseTo(0.1, 6);
    expect(staff?.output?.near?.mean60).toEqual(patient?.output?.near?.mean60);
    expect(solventForPatientTold(visitEntries(visitParts({ solvent: [drop], clinic })), "visit-1")).toBeUndefined();
  });

  it("is asked solvent by solvent where there are several, each by its name", () => {
    const entries = visitEntries(
      visitParts({
        solvent: [drop, { solvent: "other", volumeMl: 0.2, atMin: 5, own }, { ...drop, atMin: 9 }],
        clinic,
        solventPassed: { massMg: 1, says: "seen" },
      }),
    );
    expect(solventSubjects(entries, "visit-1")).toEqual([`${subject} chloroform`, `${subject} a further solvent`]);
    expect(solventTold(entries, "visit-1", "chloroform")?.output?.massBalance.dispensedMg).toBeCloseTo(2 * 147.88, 1);
    expect(solventTold(entries, "visit-1", "a further solvent")?.output?.massBalance.dispensedMg).toBeCloseTo(180, 9);
    expect(extrusionTold(entries, "visit-1")?.why).toContain("which of them passed is not told");
  });

  // 0.32 mg in 70 kg are 0.0046 mg/kg, 2.2 times below the daily reference dose of 0.01 mg/kg.
  it("holds what passed the foramen against published doses, or says what is missing for it", () => {
    const passed = (used: Partial<Visit>) =>
      extrusionTold(visitEntries(visitParts({ solvent: [drop], clinic, ...used })), "visit-1");
    expect(passed({})).toBeUndefined();
    const output = passed({ solventPassed: { massMg: 0.32, says: "" } })?.output;
    expect(output?.doseMgPerKg).toBeCloseTo(0.0046, 4);
    expect(output?.margins[0]?.margin).toBeCloseTo(2.2, 1);
    expect(passed({ solventPassed: { says: "a little" } })?.why).toContain("how much passed is not told");
    expect(passed({ solventPassed: { massMg: 1, says: "" }, vitalSigns: {} })?.why).toContain("body mass");
    expect(passed({ solventPassed: { massMg: 1, says: "" }, solvent: [] })?.why).toContain("no dose of a solvent");
  });
});

describe("a solvent that can't be reckoned with", () => {
  it("by no numbers of its own, asks for them", () => {
    const { refused, inputPaths } = entryOf(visitParts({ solvent: [{ ...drop, solvent: "other" }], clinic }), subject);
    expect(refused).toEqual([expect.stringContaining("it needs its numbers")]);
    expect(inputPaths).toEqual([{ input: "solvent", record: "visit-1/solvent/0/own" }]);
  });

  it("by numbers that differ from dose to dose, asks for the same", () => {
    const solvent = [own, { ...own, densityGMl: 1 }].map((numbers) => ({
      ...{ volumeMl: 0.1, atMin: 0, own: numbers },
      solvent: "other" as const,
    }));
    expect(told({ solvent, clinic })?.why).toContain("differ between its doses");
  });

  it.each([
    ["more passed than was dispensed", { solventPassed: { massMg: 500, says: "" } }, "extrusion.massMg: 500.0 mg"],
    ["both amounts of what passed", { solventPassed: { massMg: 1, volumeMl: 1, says: "" } }, "give one of both"],
    [
      "a near field as large as the room",
      { clinic: { room: { ...surgery, volumeM3: 2, nearField: { radiusM: 1, airSpeedMPerMin: 3 } } } },
      "nearField.radiusM",
    ],
    [
      "a room too hot for the tables",
      { clinic: { room: { ...surgery, temperatureC: 40 } } },
      "temperatureC: 40 is outside",
    ],
  ] as const)("by %s, is refused at its place", (_name, more, says) => {
    expect(told({ solvent: [drop], clinic, ...more })?.why).toContain(says);
  });

  it("by less than nothing, does not reach the record", () => {
    expect(() => visitParts({ solvent: [{ ...drop, volumeMl: -0.1 }] })).toThrow();
    expect(() => visitParts({ clinic: { room: { ...surgery, airChangesPerHour: -1 } } })).toThrow();
  });
});
