import type { ClinicRules } from "../../../src/record/clinic-rules.ts";
import type { BodyOf } from "../../../src/record/parts.ts";
import { demoTemplates } from "../cabinet/demo-templates.ts";

type Visit = BodyOf<"visit">;

/** The clinic that the demo's visits are worked in; all of it is invented. */
export const clinicOfDemo: ClinicRules = {
  room: {
    ...{ name: "Room 2", volumeM3: 31, airChangesPerHour: 6, temperatureC: 22 },
    nearField: { radiusM: 0.5, airSpeedMPerMin: 3.6 },
    assistantIn: "near",
    from: "31 m3, 6 air changes, invented for the demo",
  },
  evaporationPerMin: { low: 0.03, high: 0.3 },
  doseLimits: "unitedStatesLabel",
  irrigation: {
    rinse: { volumeMl: 2, minutes: 0.5 },
    ...{ openEndedMm: 3, sideVentedMm: 2, flowMlPerMin: 4 },
    protocol: [{ solution: "sodium hypochlorite", minutesAtLeast: 20 }],
  },
};

/** A closed needle with a side vent, so far from its stop, moved freely. */
export const needle = (depthFromStopMm: number, flowMlPerMin = 3): Visit["irrigation"][number]["needle"] => ({
  ...{ depthFromStopMm, sideVented: true, gauge: 30, flowMlPerMin, freeMovement: true },
});

/** When a visit's clock ran: from a time of its day, `08:35`, for so many minutes. */
export function clock(on: string, from: string, minutes: number): Pick<Visit, "startedAt" | "endedAt" | "minutes"> {
  const startedAt = `${on}T${from}:00Z`;
  const endedAt = new Date(Date.parse(startedAt) + minutes * 60_000).toISOString().replace(".000Z", "Z");
  return { startedAt, endedAt, minutes };
}

/** The side and tooth named again before the access. */
export const namedAgain = (tooth: string, by = "the assistant"): NonNullable<Visit["timeOutCheck"]> => ({
  ...{ tooth, filmSide: "checked", by, atMin: 1 },
});

/** A template's steps as they went: the minute at which each was done, or why it was left out; open where nothing is said. */
export function stepsOf(
  id: keyof typeof demoTemplates,
  went: readonly (number | string)[],
): Pick<Visit, "template" | "steps"> {
  const { name, steps } = demoTemplates[id];
  return {
    template: { id, name },
    steps: steps.map((step, index) => {
      const how = went[index];
      if (how === undefined) return step;
      return typeof how === "number" ? { ...step, doneAtMin: how } : { ...step, leftOut: how };
    }),
  };
}
