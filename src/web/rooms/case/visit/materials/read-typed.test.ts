import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { partTypes } from "../../../../../record/parts.ts";
import { beforeBurst, readBursts } from "./read-burst.ts";
import { doseTyped, readDose } from "./read-dose.ts";
import { plain, readInjection, readSolution, solutionInWords, solutionTyped } from "./read-injection.ts";
import { irrigantTyped, readIrrigant } from "./read-irrigant.ts";
import { readAmounts, stepped } from "./read-typed.ts";

const { anaesthetic, irrigation, solvent, ultrasonics } = partTypes.visit.body.shape;
const volume = { at: "volumeMl", unit: "ml", low: 0, high: 200, needed: "how many millilitres?" };
const faultOf = (text: string) => readAmounts({ volumeMl: text }, [volume]).faults.volumeMl;

describe("an amount as it is typed", () => {
  it("is a number by point or comma, and nothing where nothing stands", () => {
    expect(readAmounts({ volumeMl: "5,5" }, [volume])).toEqual({ values: { volumeMl: 5.5 }, faults: {} });
    expect(readAmounts({}, [{ ...volume, needed: "" }]).values).toEqual({});
  });

  it("below nothing is refused with its own message", () => {
    expect(faultOf("-5")).toBe("−5\u202fml is below nothing; an amount is 0 or more");
    expect(faultOf("-0,1")).toMatch(/^−0\.1.*below nothing/);
    expect(faultOf("0")).toBeUndefined();
  });

  it("beyond what the record takes, or that is no number, is refused", () => {
    expect(faultOf("200")).toBeUndefined();
    expect(faultOf("201")).toMatch(/can't be recorded; 0 to 200/);
    expect(faultOf("five")).toMatch(/not a number/);
    expect(faultOf("")).toBe("how many millilitres?");
  });

  it("goes up and down by steps without noise, never below nothing", () => {
    expect(stepped("", 1)).toBe("1");
    expect(stepped("0.1", 0.2)).toBe("0.3");
    expect(stepped("0.5", -1)).toBe("0.5");
    expect(stepped("x", 1)).toBe("x");
  });
});

describe("an injection as it is typed", () => {
  const typed = {
    agent: "lidocaine",
    percent: "2",
    vasoconstrictor: "epinephrine",
    ratio: "100000",
    cartridgeMl: "1.8",
  };

  it("is a row of the record", () => {
    const { row, faults } = readInjection({ ...typed, cartridges: "1.5", atMin: "4", technique: " block " });
    expect(faults).toEqual({});
    expect(anaesthetic.safeParse([row]).error).toBeUndefined();
    expect(row).toMatchObject({ cartridges: 1.5, atMin: 4, technique: "block" });
  });

  it("is no row while anything is missing, and says at which field", () => {
    expect(Object.keys(readInjection({}).faults).sort()).toEqual([
      ...["agent", "cartridgeMl", "cartridges", "percent", "vasoconstrictor"],
    ]);
    expect(readInjection({ ...typed, ratio: "", cartridges: "1" }).faults).toEqual({
      ratio: "the ratio is needed; 1:100000 is written 100000",
    });
  });

  it("tells percent and ratio that were mixed up by what each looks like", () => {
    const { faults, row } = readInjection({ ...typed, percent: "100000", ratio: "4", cartridges: "1" });
    expect(row).toBeUndefined();
    expect(faults.percent).toMatch(/looks like the ratio/);
    expect(faults.ratio).toMatch(/looks like the strength in percent/);
  });

  it("of no cartridge, or of fewer than none, is refused", () => {
    expect(readInjection({ ...typed, cartridges: "0" }).faults.cartridges).toBe("0 cartridges are no injection");
    expect(readInjection({ ...typed, cartridges: "-1" }).faults.cartridges).toMatch(/below nothing/);
  });

  it("is the same after it was written into the fields and read again", () => {
    const agent = fc.constantFrom("articaine", "lidocaine", "mepivacaine", "prilocaine", "bupivacaine");
    const vasoconstrictor = fc.constantFrom(
      { name: "epinephrine" as const, ratio: 200_000 },
      { name: "levonordefrin" as const, ratio: 20_000 },
      { name: "felypressin" as const, iuPerMl: 0.03 },
      undefined,
    );
    fc.assert(
      fc.property(agent, vasoconstrictor, fc.constantFrom(0.5, 2, 4), (name, constrictor, percent) => {
        const solution = {
          ...{ agent: name, percent, cartridgeMl: 1.7 },
          ...(constrictor === undefined ? {} : { vasoconstrictor: constrictor }),
        } as const;
        expect(readSolution(solutionTyped(solution)).row).toEqual(solution);
        expect(solutionInWords(solution).includes("plain")).toBe(constrictor === undefined);
      }),
    );
    expect(solutionTyped({ agent: "mepivacaine", percent: 3, cartridgeMl: 1.8 }).vasoconstrictor).toBe(plain);
  });
});

describe("an irrigant as it is typed", () => {
  const typed = { solution: "EDTA", percent: "17", volumeMl: "5", minutes: "1", activated: "no" };
  const needle = { needle: "sideVented", depthFromStopMm: "2", gauge: "30", freeMovement: "free" };

  it("is a row of the record, with its needle, and the same after it was read again", () => {
    const { row } = readIrrigant({ ...typed, ...needle, canal: "MB1", atMin: "12" });
    expect(irrigation.safeParse([row]).error).toBeUndefined();
    expect(row?.needle).toEqual({ depthFromStopMm: 2, sideVented: true, gauge: 30, freeMovement: true });
    expect(row && readIrrigant({ ...irrigantTyped(row), atMin: "12" }).row).toEqual(row);
  });

  it("asks for what nobody chose: the solution, its amount, whether it was activated", () => {
    expect(Object.keys(readIrrigant({}).faults).sort()).toEqual(["activated", "minutes", "solution", "volumeMl"]);
    expect(readIrrigant({ ...typed, solution: "other" }).faults).toEqual({ named: "what is it called?" });
    expect(Object.keys(readIrrigant({ ...typed, needle: "open" }).faults)).toEqual(["depthFromStopMm"]);
    expect(readIrrigant({ ...typed, ...needle, gauge: "30.5" }).faults.gauge).toMatch(/whole number/);
  });

  it("refuses a negative volume at its field", () => {
    expect(readIrrigant({ ...typed, volumeMl: "-5" }).faults.volumeMl).toMatch(/below nothing/);
  });
});

describe("a dose of solvent as it is typed", () => {
  const typed = { solvent: "chloroform", volumeMl: "0.1", atMin: "3" };

  it("is a row of the record", () => {
    const { row } = readDose({ ...typed, recoveredFraction: "0.4" });
    expect(solvent.safeParse([row]).error).toBeUndefined();
    expect(row && readDose({ ...doseTyped(row), atMin: "3" }).row).toEqual(row);
  });

  it("needs its minute, and of another solvent its numbers", () => {
    expect(Object.keys(readDose({ ...typed, atMin: "" }).faults)).toEqual(["atMin"]);
    expect(Object.keys(readDose({ ...typed, solvent: "other" }).faults).sort()).toEqual([
      ...["densityGMl", "molarMassGMol", "name", "vapourPressureKPa"],
    ]);
    const own = { name: "x", molarMassGMol: "154", densityGMl: "0.92", vapourPressureKPa: "0.2" };
    const { row } = readDose({ ...typed, solvent: "other", ...own });
    expect(solvent.safeParse([row]).error).toBeUndefined();
  });

  it("tells microlitres, percent of suction and kg/m3 by what they look like", () => {
    expect(readDose({ ...typed, volumeMl: "100" }).faults.volumeMl).toMatch(/looks like microlitres/);
    expect(readDose({ ...typed, volumeMl: "0" }).faults.volumeMl).toBe("0 ml are no dose");
    expect(readDose({ ...typed, recoveredFraction: "40" }).faults.recoveredFraction).toMatch(/40 % is written 0\.4/);
    const dense = { name: "x", molarMassGMol: "119", densityGMl: "1478", vapourPressureKPa: "26" };
    expect(readDose({ ...typed, solvent: "other", ...dense }).faults.densityGMl).toMatch(/looks like kg\/m3/);
  });
});

describe("bursts of ultrasound as they are typed", () => {
  const typed = { on: "fragment", alloy: "nickelTitanium", coolant: "none", seconds: "12", canal: "MB1" };

  it("come after those before, whose pause is written", () => {
    const first = readBursts(typed, []).row ?? [];
    const both = readBursts({ ...typed, restSeconds: "8.5" }, first).row;
    expect(ultrasonics.safeParse(both).error).toBeUndefined();
    expect(both?.map(({ seconds, restSeconds }) => [seconds, restSeconds])).toEqual([
      [12, 8.5],
      [12, 0],
    ]);
  });

  it("ask for the pause that nobody counted, and what the tip works on before it starts", () => {
    const first = readBursts(typed, []).row ?? [];
    expect(Object.keys(readBursts(typed, first).faults)).toEqual(["restSeconds"]);
    expect(Object.keys(beforeBurst({}))).toEqual(["on", "coolant"]);
    expect(readBursts({ ...typed, seconds: "-3" }, []).faults.seconds).toMatch(/below nothing/);
  });

  it("of a post or a canal have no alloy of a fragment", () => {
    expect(readBursts({ ...typed, on: "post" }, []).row?.at(-1)?.alloy).toBeUndefined();
  });
});
