import { describe, expect, it } from "vitest";
import { fileItem, instrumentItem, sequenceItem } from "./cabinet-for-tests.ts";
import { fileAtFirst, filesInUse, stepsOf } from "./steps-into-canal.ts";

const scout = instrumentItem("scout", { size: 10, taper: 0.02, movement: "hand", seconds: 30 });
const shaper = instrumentItem("shaper");

describe("the steps into a canal", () => {
  it("are those of the sequence in its order; its seconds rule over the instrument's usual ones", () => {
    const sequence = sequenceItem("usual", [
      { instrument: "shaper", shortByMm: 2, seconds: 8 },
      { instrument: "scout" },
      { instrument: "shaper" },
    ]);
    const steps = stepsOf(sequence, [scout, shaper, sequence]);
    expect(steps.map(({ instrument, shortByMm, seconds }) => [instrument.id, shortByMm, seconds])).toEqual([
      ["shaper", 2, 8],
      ["scout", undefined, 30],
      ["shaper", undefined, undefined],
    ]);
  });

  it("are one for a single instrument, none for a counted file, for nothing and for an instrument that is gone", () => {
    expect(stepsOf(scout, [scout]).map(({ instrument }) => instrument)).toEqual([scout]);
    expect(stepsOf(fileItem("f-1", "scout"), [scout])).toEqual([]);
    expect(stepsOf(undefined, [scout])).toEqual([]);
    expect(stepsOf(sequenceItem("usual", [{ instrument: "gone" }]), [scout])).toEqual([]);
  });

  it("know all files of their instrument, those in use first", () => {
    const [one, two, old] = [fileItem("f-1", "scout"), fileItem("f-2", "scout"), fileItem("f-3", "scout", true)];
    const stepWith = (...files: Parameters<typeof stepsOf>[1]) => stepsOf(scout, [scout, ...files])[0] ?? { files: [] };
    expect(stepWith().files).toEqual([]);
    expect(stepWith(old, one, two).files).toEqual([one, two, old]);
    expect(filesInUse(stepWith(old, one))).toEqual([one]);
    expect(filesInUse(stepWith(old))).toEqual([]);
    expect(stepWith(fileItem("f-4", "shaper")).files).toEqual([]);
  });

  it("take a counted file without asking where one alone is in use", () => {
    const [one, two] = [fileItem("f-1", "scout"), fileItem("f-2", "scout")];
    const taken = (...files: Parameters<typeof stepsOf>[1]) =>
      stepsOf(scout, [scout, ...files]).map((step) => fileAtFirst(step)?.id);
    expect(taken(one)).toEqual(["f-1"]);
    expect(taken(fileItem("f-3", "scout", true), one)).toEqual(["f-1"]);
    expect(taken(fileItem("f-3", "scout", true))).toEqual([undefined]);
    expect(taken(one, two)).toEqual([undefined]);
    expect(taken()).toEqual([undefined]);
  });
});
