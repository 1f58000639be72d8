import { describe, expect, it } from "vitest";
import type { SolventInput } from "../core/safety/solvent/solvent-input.ts";
import { solventTopic } from "../core/safety/solvent-topic.ts";
import {
  breathed,
  firstLimitInWords,
  marginInWords,
  nearestLimit,
  rateInWords,
  rateTaken,
  solventHeadline,
} from "./solvent-in-words.ts";
import type { SolventTold } from "./solvent-told.ts";

const nearField = { radiusM: 0.5, airSpeedMPerMin: 3.6 };
const told = (more: Partial<SolventInput> = {}): SolventTold =>
  solventTopic.compute({
    solvent: "chloroform",
    doses: [{ atMin: 0, volumeMl: 0.1 }],
    evaporation: { kind: "firstOrder", ratePerMin: 0.2 },
    room: { volumeM3: 30, airChangesPerHour: 10 },
    nearField,
    ...more,
  });

const headline = (sum: SolventTold, name: string): string => {
  const { leads, follows } = solventHeadline(sum, name);
  return `${leads} ${follows}`;
};

describe("solventHeadline", () => {
  // 0.1 ml in 30 m3 with ten changes: 0.279 ppm over the worst hour near the mouth, against 2 ppm (docs/methods/solvent.md).
  it("names the limit that most is reached of, by how much, and where", () => {
    expect(headline(told(), "chloroform")).toBe(
      "7.2 times below the 60-minute limit of NIOSH (United States) 2005, 2 ppm, in the air near the mouth.",
    );
  });

  it("says how many times above, and that of the room where it is mixed throughout", () => {
    const many = told({
      doses: [{ atMin: 0, volumeMl: 2 }],
      room: { volumeM3: 30, airChangesPerHour: 0 },
      nearField: undefined,
    });
    expect(headline(many, "chloroform")).toMatch(
      /^\d[\d.]* times the .* limit of .*, in the room, mixed throughout; beside the mouth there is more\.$/,
    );
  });

  it("tells what the range of rates gives, and picks the limit by its worst end", () => {
    const ranged = told({ evaporation: { kind: "firstOrder", ratePerMin: { low: 0.03, high: 4 } } });
    const nearest = nearestLimit(ranged);
    const ends = ranged.limits.map(({ ratio, ratioWithin }) => ratioWithin?.high ?? ratio);
    expect(nearest?.ratioWithin?.high).toBe(Math.max(...ends));
    expect(headline(ranged, "chloroform")).toMatch(/; the range of rates gives [\d.]+ to [\d.]+ of it\.$/);
  });

  it("leads with the range where the rate decides whether the limit is passed", () => {
    const depends = told({
      doses: [{ atMin: 0, volumeMl: 0.7 }],
      evaporation: { kind: "firstOrder", ratePerMin: { low: 0.01, high: 20 } },
    });
    expect(nearestLimit(depends)?.stands).toBe("dependsOnRate");
    expect(headline(depends, "chloroform")).toMatch(
      /^0\.[\d]+ to [\d.]+ times the .*; whether it is passed depends on the rate of evaporation\.$/,
    );
  });

  it("says that no limit was read, and that this is no comfort", () => {
    expect(headline(told({ solvent: "eucalyptol" }), "eucalyptol")).toBe(
      "No limit for eucalyptol is set in any list that was read; that says nothing about its harm.",
    );
  });

  it("never calls anything safe", () => {
    for (const one of [told(), told({ doses: [] })])
      expect(headline(one, "chloroform") + (firstLimitInWords(one) ?? "")).not.toMatch(/\bsafe/i);
  });
});

describe("breathed", () => {
  it("gives dentist and patient the air near the mouth, and the assistant what the room says", () => {
    const zones = (assistantIn?: "near" | "far") => breathed({ staff: told(), assistantIn }).map(({ zone }) => zone);
    expect(zones()).toEqual(["near", "near", "near"]);
    expect(zones("far")).toEqual(["near", "far", "near"]);
    expect(breathed({ staff: told({ nearField: undefined }) }).map(({ zone }) => zone)).toEqual(["far", "far", "far"]);
  });

  it("leaves the day's other cases to those who work there", () => {
    const staff = told({ otherCases: [{ ppm: 2, minutes: 240 }] });
    const [dentist, , patient] = breathed({ staff, patient: told() });
    const day = (one: typeof dentist) =>
      one?.means.find(({ averagingMin }) => averagingMin === 480)?.mean.ppm ?? Number.NaN;
    // 2 ppm over 240 min are 1 ppm over 480 (29 CFR 1910.1000, paragraph d).
    expect(day(dentist) - day(patient)).toBeCloseTo(1, 9);
  });

  it("holds each to the limits of the air that they breathe", () => {
    for (const one of breathed({ staff: told(), assistantIn: "far" })) expect(one.nearest?.zone).toBe(one.zone);
  });
});

describe("firstLimitInWords", () => {
  it("tells the volume at which the first limit is met, and which", () => {
    expect(firstLimitInWords(told())).toBe(
      "The first limit would be met at 0.72 ml in all: the 60-minute limit of NIOSH (United States), in the air near the mouth.",
    );
  });

  it("says nothing where no limit is set or nothing was given", () => {
    expect(firstLimitInWords(told({ solvent: "eucalyptol" }))).toBeUndefined();
  });
});

describe("marginInWords", () => {
  // 0.32 mg in 70 kg against 0.01 mg/kg a day: 2.2 times below (notes of docs/methods/solvent.md C11).
  it.each([
    [0.32, "2.2 times below"],
    [3.2, "4.6 times"],
  ])("says how %f mg stands to the daily reference dose", (massMg, words) => {
    const [margin] =
      told({ doses: [{ atMin: 0, volumeMl: 0.1 }], extrusion: { massMg, bodyMassKg: 70 } }).extrusion?.margins ?? [];
    expect(margin && marginInWords(margin)).toBe(words);
  });
});

describe("the rate of evaporation", () => {
  it("is told with where it comes from: assumed, a range, or one number", () => {
    const assumed = told({ evaporation: undefined });
    expect(rateTaken(assumed)).toEqual({ ratePerMin: 0.252 });
    expect(rateInWords(assumed)).toBe("the middle of 0.0318 to 2, which is assumed");
    const given = { kind: "firstOrder", ratePerMin: { low: 0.1, high: 0.4 } } as const;
    expect(rateInWords(told({ evaporation: given }))).toBe("the middle of 0.1 to 0.4, as recorded");
    expect(rateTaken(told())).toEqual({ ratePerMin: 0.2 });
    expect(rateInWords(told())).toBe("as recorded");
    expect(rateTaken(told({ evaporation: { kind: "instant" } }))).toEqual({});
  });
});
