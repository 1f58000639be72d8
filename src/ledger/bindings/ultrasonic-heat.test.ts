import { expect, it } from "vitest";
import type { BodyOf } from "../../record/parts.ts";
import { heatTold } from "../heat-told.ts";
import { entryOf, visitEntries, visitParts } from "../visit-sums/visit-for-tests.ts";

type Burst = NonNullable<BodyOf<"visit">["ultrasonics"]>[number];
const burst = (seconds: number, more: Partial<Burst> = {}): Burst => ({
  ...{ on: "fragment", seconds, restSeconds: 10, coolant: "none" },
  ...more,
});
const totals = (ultrasonics: Burst[]) => heatTold(visitEntries(visitParts({ ultrasonics })), "visit-1")?.output?.totals;

it("the ultrasound of a visit is asked where any worked, burst by burst in the order of their minutes", () => {
  expect(visitEntries(visitParts({ ultrasonics: [] }))).toEqual([]);
  expect(visitEntries(visitParts({ ultrasonics: [burst(0)] }))).toEqual([]);
  const ultrasonics = [
    burst(20, { atMin: 40, power: 0 }),
    burst(0, { atMin: 35 }),
    burst(15, { atMin: 30, canal: "MB1", power: 20 }),
  ];
  const { input, inputPaths } = entryOf(visitParts({ ultrasonics }), "ultrasonicHeat of visit-1");
  const common = { on: "fragment", restSeconds: 10, coolant: "none" };
  expect(input).toEqual({
    bursts: [
      { ...common, seconds: 15, power: 20 },
      { ...common, seconds: 20 },
    ],
  });
  expect(inputPaths).toEqual([
    { input: "bursts[0]", record: "visit-1/ultrasonics/2" },
    { input: "bursts[1]", record: "visit-1/ultrasonics/0" },
  ]);
});

it("its seconds add up, dry ones apart, and the pause after the last is none between", () => {
  expect(totals([burst(15), burst(20, { coolant: "water" }), burst(5)])).toEqual({
    ...{ bursts: 3, activeSeconds: 40, drySeconds: 20, restSeconds: 20 },
  });
});

it("less than nothing does not reach the record", () => {
  expect(() => visitParts({ ultrasonics: [burst(-1)] })).toThrow();
});
