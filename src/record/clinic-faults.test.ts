import { describe, expect, test } from "vitest";
import { clinicFaults } from "./clinic-faults.ts";
import { type ClinicRules, clinicRules } from "./clinic-rules.ts";

const room = { volumeM3: 30, airChangesPerHour: 0, from: "measured" };
const limit = { solvent: "chloroform", authority: "Own", averagingMin: 480, source: "a decree" } as const;

describe("rules of a clinic that can't be", () => {
  test.each<[string, ClinicRules, string]>([
    // A half sphere of 2 m radius holds 2/3 pi 8 = 16.8 m3.
    [
      "more air near the mouth than the room has",
      { room: { ...room, volumeM3: 16, nearField: { radiusM: 2, airSpeedMPerMin: 5 } } },
      "room.nearField.radiusM",
    ],
    ["a range that is upside down", { evaporationPerMin: { low: 2, high: 1 } }, "evaporationPerMin.low"],
    ["a limit in the air without a figure", { exposureLimits: [limit] }, "exposureLimits[0].ppm"],
    ["one with both", { exposureLimits: [{ ...limit, ppm: 1, mgM3: 5 }] }, "exposureLimits[0].ppm"],
    ["own doses without any", { doseLimits: "own" }, "doseLimits"],
    ["a dose without a figure", { ownDoseLimits: [{ agent: "lidocaine", source: "x" }] }, "ownDoseLimits[0].mgPerKg"],
    [
      "two of one agent",
      { ownDoseLimits: [1, 2].map((mgPerKg) => ({ agent: "lidocaine", mgPerKg, source: "x" })) },
      "ownDoseLimits[1].agent",
    ],
    [
      "two of one vasoconstrictor",
      { vasoconstrictorLimits: [1, 2].map((value) => ({ name: "epinephrine", limit: value, source: "x" })) },
      "vasoconstrictorLimits[1].name",
    ],
    [
      "contact that can't be met",
      { irrigation: { protocol: [{ solution: "EDTA", minutesAtLeast: 2, minutesAtMost: 1 }] } },
      "irrigation.protocol[0].minutesAtMost",
    ],
  ])("%s is found at its place", (_, rules, path) => {
    expect(clinicRules.safeParse(rules).success).toBe(true);
    expect(clinicFaults(rules).map((fault) => fault.path)).toEqual([path]);
  });

  test("what can be is not found: a closed room, the same ends, both figures of a dose", () => {
    expect(clinicFaults({})).toEqual([]);
    expect(
      clinicFaults({
        room: { ...room, nearField: { radiusM: 0.5, airSpeedMPerMin: 5 } },
        evaporationPerMin: { low: 1, high: 1 },
        exposureLimits: [
          { ...limit, ppm: 1 },
          { ...limit, mgM3: 5 },
        ],
        doseLimits: "own",
        ownDoseLimits: [{ agent: "lidocaine", mgPerKg: 4, maxMg: 300, source: "x" }],
        irrigation: { protocol: [{ solution: "EDTA", minutesAtLeast: 1, minutesAtMost: 1 }] },
      }),
    ).toEqual([]);
  });
});
