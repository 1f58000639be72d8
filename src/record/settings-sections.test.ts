import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { firstSettings, type Settings, settingsSchema } from "./settings.ts";
import { type SectionName, sameSection, sectionNames, sectionOf, withSection } from "./settings-sections.ts";

const room = { volumeM3: 30, airChangesPerHour: 0, from: "measured" };
const bodies = {
  you: { who: "A. Writer", role: "supervisor", notation: "universal" },
  films: { clickSigmaPx: 2, stopShortMm: 0 },
  room: { room, evaporationPerMin: { low: 0.1, high: 2 } },
  air: { exposureLimits: [{ solvent: "xylene", authority: "Own", ppm: 50, averagingMin: 480, source: "a decree" }] },
  anaesthetic: { doseLimits: "canada" },
  irrigation: { irrigation: { rinse: { volumeMl: 3, minutes: 1 } } },
  emergency: { emergency: { calls: [{ who: "Ambulance", number: "112" }], protocols: { allergy: "As agreed." } } },
} as const satisfies Readonly<Record<SectionName, object>>;

const saved = (settings: Settings, name: SectionName, body: object): Settings => {
  const made = withSection(settings, name, { ...body });
  if ("faults" in made) throw new Error(JSON.stringify(made.faults));
  return made.settings;
};
const faultsOf = (name: SectionName, body: object) => {
  const made = withSection(firstSettings, name, { ...body });
  return "faults" in made ? made.faults : [];
};

describe("a section of the settings", () => {
  test("is kept as it was written, in any order, and touches no other", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...sectionNames]), (order) => {
        let settings: Settings = {
          ...firstSettings,
          clickSigmaFrom: { exerciseId: "e", at: "2026-01-01T00:00:00.000Z", n: 1 },
        };
        for (const name of order) settings = { ...settings, ...saved(settings, name, bodies[name]) };
        expect(settingsSchema.parse(settings)).toEqual(settings);
        for (const name of sectionNames)
          expect(sectionOf(settings, name)).toEqual(
            order.includes(name) ? bodies[name] : sectionOf(firstSettings, name),
          );
        expect(settings.clickSigmaFrom?.n).toBe(1);
      }),
    );
  });

  test("that was emptied is absent again, and with the last the rules of the clinic", () => {
    const both = saved(saved(firstSettings, "room", bodies.room), "irrigation", bodies.irrigation);
    const one = saved(both, "irrigation", { irrigation: { rinse: {}, protocol: [] } });
    expect(one.clinic).toEqual(bodies.room);
    expect(saved(one, "room", {})).toEqual(firstSettings);
    const emergency = saved(firstSettings, "emergency", bodies.emergency);
    expect(saved(emergency, "emergency", { emergency: { calls: [], kit: " ", protocols: { allergy: "" } } })).toEqual(
      firstSettings,
    );
  });

  test("of emergencies is one with a kit alone", () => {
    expect(saved(firstSettings, "emergency", { emergency: { kit: "first drawer" } }).emergency).toEqual({
      ...{ calls: [], kit: "first drawer", protocols: {} },
    });
  });

  test.each<[string, SectionName, object, string]>([
    ["no name", "you", { ...bodies.you, who: " " }, "who"],
    ["a figure that is not told", "room", { room: { name: "One", from: "x", volumeM3: 30 } }, "room.airChangesPerHour"],
    ["figures without their origin", "room", { room: { volumeM3: 30, airChangesPerHour: 2 } }, "room.from"],
    ["a negative volume", "room", { room: { ...room, volumeM3: -30 } }, "room.volumeM3"],
    ["half of a rinse", "irrigation", { irrigation: { rinse: { volumeMl: 2 } } }, "irrigation.rinse.minutes"],
    ["a call without its number", "emergency", { emergency: { calls: [{ who: "x" }] } }, "emergency.calls[0].number"],
    [
      "an agent that is none",
      "anaesthetic",
      { ownDoseLimits: [{ agent: "Lido 2", source: "x" }] },
      "ownDoseLimits[0].agent",
    ],
    ["what can't be", "anaesthetic", { doseLimits: "own" }, "doseLimits"],
    ["a field of another section", "air", { who: "x" }, "who"],
  ])("with %s is refused at its field", (_, name, body, path) => {
    expect(faultsOf(name, body).map((fault) => fault.path)).toContain(path);
  });

  test("an empty row is asked about, what is needed in words", () => {
    expect(faultsOf("air", { exposureLimits: [{}] })).toContainEqual({
      path: "exposureLimits[0].solvent",
      says: "is needed; nothing stands here",
    });
  });

  test("says the same with empty fields as without them", () => {
    expect(sameSection({ irrigation: { rinse: {} } }, {})).toBe(true);
    expect(sameSection({ emergency: { calls: [], protocols: {} } }, {})).toBe(true);
    expect(sameSection(bodies.irrigation, { irrigation: { rinse: { volumeMl: 4, minutes: 1 } } })).toBe(false);
  });
});
