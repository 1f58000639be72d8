import { describe, expect, it } from "vitest";
import {
  isPlainLook,
  lookInWords,
  lookOf,
  lookSettings,
  onStep,
  plainLook,
  recordedLook,
  settingInWords,
  stepped,
} from "./film-look.ts";

const view = { windowCentre: 1, windowWidth: 2, invert: false, quarterTurns: 0, mirrored: false };

describe("the look of a film", () => {
  it("is plain where nothing is recorded", () => {
    expect(lookOf(undefined)).toEqual(plainLook);
    expect(lookOf(view)).toEqual(plainLook);
    expect([isPlainLook(plainLook), recordedLook(plainLook), lookInWords(plainLook)]).toEqual([true, {}, ""]);
  });

  it("comes back from the record as it was", () => {
    const look = { gamma: 1.4, localContrast: 0.3, sharpening: { amount: 1.2, radiusPx: 2 } };
    expect(lookOf({ ...view, ...recordedLook(look) })).toEqual(look);
    expect(isPlainLook(look)).toBe(false);
    expect(lookInWords(look)).toBe("gamma 1.4, local contrast 30 %, sharpened 1.2 times at 2 px");
  });

  it("is plain again with every amount taken back, whatever the radius", () => {
    expect(isPlainLook({ ...plainLook, sharpening: { amount: 0, radiusPx: 4 } })).toBe(true);
  });

  it("goes in steps from limit to limit", () => {
    for (const setting of lookSettings) {
      const low = stepped(setting, plainLook, -1000);
      expect(setting.of(low)).toBe(setting.least);
      expect(setting.of(stepped(setting, low, 1))).toBeCloseTo(setting.least + setting.step, 9);
      expect(setting.of(stepped(setting, low, 1000))).toBe(setting.most);
    }
  });

  it("comes to rest on a step, without the dust of fractions", () => {
    const [gamma] = lookSettings;
    if (gamma === undefined) throw new Error("no gamma");
    expect(onStep(gamma, 1.2200001)).toBe(1.2);
    expect(onStep(gamma, 0.4 + 3 * 0.05)).toBe(0.55);
    expect(settingInWords(gamma, gamma.set(plainLook, 1.4))).toBe("Gamma 1.4");
  });
});
