import { describe, expect, it } from "vitest";
import { firstSettings, type Settings } from "../../record/settings.ts";
import { keepSection } from "./keep-section.ts";

/** Settings that several windows read and write. */
function shared(start: Settings) {
  let stands = start;
  return {
    now: () => stands,
    read: async () => stands,
    write: async (settings: Settings) => {
      stands = settings;
      return settings;
    },
  };
}
const room = { room: { volumeM3: 30, airChangesPerHour: 0, from: "measured" } };
const rinse = { irrigation: { rinse: { volumeMl: 3, minutes: 1 } } };

describe("two windows that keep settings", () => {
  it("leave each other's sections as they are, although neither has seen the other's", async () => {
    const world = shared({ ...firstSettings, who: "A. Writer" });
    await keepSection({ name: "room", body: room, seen: {} }, world);
    await keepSection({ name: "irrigation", body: rinse, seen: {} }, world);
    expect(world.now()).toEqual({ ...firstSettings, who: "A. Writer", clinic: { ...room, ...rinse } });
    await keepSection({ name: "room", body: {}, seen: room }, world);
    expect(world.now().clinic).toEqual(rinse);
  });

  it("are told where both wrote in the same section, and nothing is overwritten", async () => {
    const world = shared({ ...firstSettings, clinic: room });
    const mine = { room: { ...room.room, volumeM3: 40 } };
    await expect(keepSection({ name: "room", body: mine, seen: {} }, world)).rejects.toMatchObject({
      code: "record.conflict",
      facts: { settings: world.now() },
    });
    expect(world.now().clinic).toEqual(room);
    await keepSection({ name: "room", body: mine, seen: room }, world);
    expect(world.now().clinic).toEqual(mine);
  });

  it("need not be told where both wrote the same", async () => {
    const world = shared({ ...firstSettings, clinic: room });
    await keepSection({ name: "room", body: room, seen: {} }, world);
    expect(world.now().clinic).toEqual(room);
  });
});

it("a section that does not fit is not written", async () => {
  const world = shared(firstSettings);
  await expect(keepSection({ name: "room", body: { room: { volumeM3: -1 } }, seen: {} }, world)).rejects.toMatchObject({
    code: "input.invalid",
    faults: expect.arrayContaining([expect.objectContaining({ path: "room.volumeM3" })]),
  });
  expect(world.now()).toBe(firstSettings);
});
