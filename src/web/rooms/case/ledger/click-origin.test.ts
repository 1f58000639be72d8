import { describe, expect, it } from "vitest";
import { firstSettings } from "../../../../record/settings.ts";
import { clickOrigins } from "./click-origin.ts";

const setting = { input: "sigmaMm", record: "settings/clickSigmaPx" };
const exercise = { input: "sigmaMm", record: "exercise-7a/answer/sigmaPx" };
const clickSigmaFrom = { exerciseId: "exercise-7a", at: "2026-11-29T12:00:00.000Z", n: 120 };
const measured = { ...firstSettings, clickSigmaPx: 0.8, clickSigmaFrom };

describe("where a click error came from", () => {
  it("is the exercise that is in use, told once, with its day", () => {
    expect(clickOrigins(setting, [setting, exercise], measured)).toEqual([]);
    expect(clickOrigins(exercise, [setting, exercise], measured)).toEqual([
      { from: "your own, measured on 29 Nov 2026 (120 clicks)", href: "/calibration/clicks/exercise-7a" },
    ]);
  });

  it("is another exercise, where the settings have moved on", () => {
    for (const settings of [firstSettings, undefined])
      expect(clickOrigins(exercise, [setting, exercise], settings)?.[0]?.from).toContain("another exercise");
  });

  it("is what is assumed, with the way to measure it", () => {
    expect(clickOrigins(setting, [setting], firstSettings)).toEqual([
      { from: "assumed 1\u202fpx, not measured yet", href: "/calibration" },
    ]);
    expect(clickOrigins(setting, [setting], measured)?.[0]?.from).toContain("not measured");
  });

  it("is not asked of other inputs; an exercise of another input hides nothing", () => {
    expect(clickOrigins({ input: "points", record: "mark-1/points" }, [], measured)).toBeUndefined();
    expect(clickOrigins(setting, [setting, { ...exercise, input: "sigmaPx" }], firstSettings)).toHaveLength(1);
  });
});
