import { expect, test } from "vitest";
import { firstSettings, settingsSchema } from "./settings.ts";

test("the first settings fit their own form", () => {
  expect(settingsSchema.parse(firstSettings)).toEqual(firstSettings);
});

test.each([
  { clickSigmaPx: 0 },
  { clickSigmaPx: 20.1 },
  { stopShortMm: -0.1 },
  { stopShortMm: 5.1 },
  { who: "x".repeat(81) },
  { role: "patient" },
  { notation: "other" },
  { more: 1 },
])("%o does not fit", (wrong) => {
  expect(settingsSchema.safeParse({ ...firstSettings, ...wrong }).success).toBe(false);
});

test.each([{ clickSigmaPx: 20 }, { stopShortMm: 0 }, { stopShortMm: 5 }, { who: "x".repeat(80) }])(
  "%o fits",
  (edge) => {
    expect(settingsSchema.safeParse({ ...firstSettings, ...edge }).success).toBe(true);
  },
);
