import { describe, expect, it } from "vitest";
import { clinicRules } from "../record/clinic-rules.ts";
import { roomOffered } from "./room-offered.ts";

describe("roomOffered", () => {
  it("offers figures that a room can have, the lowest first, each with its origin or as an assumption", () => {
    const room = clinicRules.shape.room.unwrap().shape;
    const forms = { ...room, ...room.nearField.unwrap().shape };
    for (const [name, figures] of Object.entries(roomOffered)) {
      expect(figures.map(({ value }) => value)).toEqual(figures.map(({ value }) => value).sort((a, b) => a - b));
      for (const { value, source, mark } of figures) {
        expect(Reflect.get(forms, name).safeParse(value).success, `${name} ${value}`).toBe(true);
        expect(mark === "assumption").toBe(source === undefined);
      }
    }
  });

  // Ren and others 2021: 3 to 45 in ten rooms; the Scottish requirement of 2021: at least 10, about 6 on average.
  it("has the changes of air as they are published, and calls the volume an assumption", () => {
    expect(roomOffered.airChangesPerHour.map(({ value }) => value)).toEqual([3, 6, 10, 45]);
    expect(roomOffered.volumeM3.map(({ mark }) => mark)).toEqual(["assumption"]);
  });
});
