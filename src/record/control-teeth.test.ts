import { describe, expect, it } from "vitest";
import { teeth } from "../core/tooth/teeth.ts";
import { controlTeeth, nextControl } from "./control-teeth.ts";

/** ISO 3950 numbers quadrants 1 upper right, 2 upper left, 3 lower left, 4 lower right; 5 to 8 likewise for primary teeth. */
describe("the teeth to test against", () => {
  it("are the neighbours and the same tooth of the other side", () => {
    expect(controlTeeth("26")).toEqual(["25", "27", "16"]);
    expect(controlTeeth("46")).toEqual(["45", "47", "36"]);
    expect(controlTeeth("35")).toEqual(["34", "36", "45"]);
    expect(controlTeeth("75")).toEqual(["74", "85"]);
  });

  it("go over the midline for a first tooth, which has its like there", () => {
    expect(controlTeeth("11")).toEqual(["21", "12"]);
    expect(controlTeeth("31")).toEqual(["41", "32"]);
  });

  it("end with the last tooth of a row", () => {
    expect(controlTeeth("18")).toEqual(["17", "28"]);
  });

  it("are never the tooth itself, always of its row and dentition, and each the other's", () => {
    for (const { twoDigit, arch, dentition } of teeth)
      for (const control of controlTeeth(twoDigit)) {
        expect(control).not.toBe(twoDigit);
        expect(teeth.find((one) => one.twoDigit === control)).toMatchObject({ arch, dentition });
        expect(controlTeeth(control)).toContain(twoDigit);
      }
  });

  it.each(["", "19", "9", "60"])("are none for %j, which is no tooth", (tooth) => {
    expect(controlTeeth(tooth)).toEqual([]);
  });
});

describe("the next tooth to test against", () => {
  it("is a control that is not on the sheet, then any other tooth, never the tooth itself", () => {
    expect(nextControl("26", ["26"])).toBe("25");
    expect(nextControl("26", ["26", "25", "27"])).toBe("16");
    expect(nextControl("11", ["21", "12"])).toBe("13");
  });
});
