import { expect, test } from "vitest";
import { firstSettings, settingsSchema, wishedSettings } from "./settings.ts";

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

const from = { exerciseId: "exercise-1", at: "2026-11-29T10:00:00.000Z", n: 120 };
const measured = { ...firstSettings, clickSigmaPx: 0.82, clickSigmaFrom: from };

test("where the click's error came from fits its form, and nothing beside it", () => {
  expect(settingsSchema.safeParse(measured).success).toBe(true);
  for (const wrong of [{ ...from, n: 0 }, { ...from, at: "today" }, { ...from, more: 1 }, { n: 120 }])
    expect(settingsSchema.safeParse({ ...measured, clickSigmaFrom: wrong }).success).toBe(false);
});

test("the origin of the click's error stays with its value, goes with it, and can't be wished", () => {
  expect(wishedSettings(measured, { ...measured, notation: "universal" }).clickSigmaFrom).toEqual(from);
  expect(wishedSettings(measured, { ...firstSettings, clickSigmaPx: 0.82 }).clickSigmaFrom).toEqual(from);
  expect(wishedSettings(measured, { ...measured, clickSigmaPx: 0.9 })).not.toHaveProperty("clickSigmaFrom");
  expect(wishedSettings(firstSettings, { ...firstSettings, clickSigmaFrom: from })).not.toHaveProperty(
    "clickSigmaFrom",
  );
});
