import { expect, it } from "vitest";
import { fileItem, instrumentItem } from "../../../../record/cabinet/cabinet-for-tests.ts";
import { stepsOf } from "../../../../record/cabinet/steps-into-canal.ts";
import { fileOfStep, fileTakenAt } from "./file-of-step.ts";

const [one, two] = [fileItem("f-1", "shaper"), fileItem("f-2", "shaper")];
const stepWith = (...files: (typeof one)[]) => {
  const shaper = instrumentItem("shaper");
  const [step] = stepsOf(shaper, [shaper, ...files]);
  if (step === undefined) throw new Error("no step");
  return { step, index: 1 };
};

it("the person's choice rules over the only file in use, and can be none", () => {
  expect(fileOfStep({}, stepWith(one))).toBe(one);
  expect(fileOfStep({}, stepWith(one, two))).toBeUndefined();
  expect(fileOfStep({ 1: "f-2" }, stepWith(one, two))).toBe(two);
  expect(fileOfStep({ 1: "" }, stepWith(one))).toBeUndefined();
  expect(fileOfStep({ 0: "" }, stepWith(one))).toBe(one);
});

it("a file is taken with what stands against it, or with nothing while that is not known", () => {
  const tally = { uses: 2, canals: 5, cases: 2, sterilisations: 1, turnsNet: 90, turnsSwept: 90, untimed: 0, over: [] };
  expect(fileTakenAt({}, stepWith(one), { files: { "f-1": tally } })).toEqual({ file: one, standing: tally });
  expect(fileTakenAt({}, stepWith(one), { files: {} })).toEqual({ file: one, standing: undefined });
  expect(fileTakenAt({}, stepWith(), { files: {} })).toBeUndefined();
});
