import { describe, expect, it } from "vitest";
import { fileItem, instrumentItem, sequenceItem } from "../../../record/cabinet/cabinet-for-tests.ts";
import { instrumentChoices, nameOfInstrument, nameOfItem, sizeNotTold, titleOfItem } from "./item-names.ts";

const shaper = instrumentItem("shaper", { name: "Rotary" });

describe("what an item is called", () => {
  it("is its own name or mark, else its kind", () => {
    expect(nameOfItem(shaper)).toBe("Rotary");
    expect(nameOfItem(instrumentItem("shaper", { name: "" }))).toBe("Instrument");
    expect(nameOfItem(fileItem("f-1", "shaper"))).toBe("F-1");
  });

  it("begins a gesture with its kind, once, and leaves room for what was done", () => {
    expect(titleOfItem(shaper)).toBe("Instrument Rotary");
    expect(titleOfItem(instrumentItem("a", { name: "Instrument 3" }))).toBe("Instrument 3");
    expect(titleOfItem(sequenceItem("Usual", []))).toBe("Sequence Usual");
    expect(titleOfItem(instrumentItem("a", { name: "x".repeat(300) })).length).toBe(60);
  });

  it("tells size and taper where the name does not", () => {
    expect(sizeNotTold(shaper)).toEqual(["25/.06"]);
    expect(sizeNotTold(instrumentItem("a", { name: "Rotary 25 .06" }))).toEqual([]);
    expect(sizeNotTold(instrumentItem("a", { name: "Rotary 25" }))).toEqual(["25/.06"]);
    expect(instrumentChoices([shaper, fileItem("f-1", "shaper")])).toEqual({ shaper: "Rotary, 25/.06" });
  });

  it("of an instrument that does not stand says so", () => {
    expect(nameOfInstrument([shaper], "shaper")).toBe("Rotary");
    expect(nameOfInstrument([shaper], "gone")).toBe("not in the cabinet");
  });
});
