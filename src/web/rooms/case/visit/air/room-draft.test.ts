import { describe, expect, it } from "vitest";
import { roomOfDraft } from "./room-draft.ts";

describe("roomOfDraft", () => {
  const whole = { volumeM3: 31.2, airChangesPerHour: 6 };

  it("takes a room that has its volume and its changes of air; a closed one too", () => {
    expect(roomOfDraft(whole)).toEqual({ room: { ...whole, from: "" } });
    expect(roomOfDraft({ ...whole, airChangesPerHour: 0 })).toEqual({
      room: { ...whole, airChangesPerHour: 0, from: "" },
    });
  });

  it.each([
    [{ airChangesPerHour: 6 }, "volumeM3"],
    [{ volumeM3: 31.2 }, "airChangesPerHour"],
    [{ ...whole, volumeM3: -3 }, "volumeM3"],
    [{ ...whole, airChangesPerHour: -1 }, "airChangesPerHour"],
    [{ ...whole, nearField: { radiusM: 0.5 } }, "nearField.airSpeedMPerMin"],
    [{ ...whole, nearField: { radiusM: 50, airSpeedMPerMin: 3 } }, "nearField.radiusM"],
    [{ ...whole, temperatureC: 80 }, "temperatureC"],
  ])("names the field of %j that is missing or can't be", (draft, path) => {
    const read = roomOfDraft(draft);
    expect("faults" in read && read.faults.map((fault) => fault.path)).toEqual([path]);
  });

  it("leaves out what was emptied again", () => {
    expect(roomOfDraft({ ...whole, nearField: undefined, name: undefined })).toEqual({ room: { ...whole, from: "" } });
  });
});
