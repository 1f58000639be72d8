import { describe, expect, it } from "vitest";
import { reoriented } from "./film-placement.ts";
import { seenToRight, sidesOnFilm } from "./sides-on-film.ts";

const upright = { quarterTurns: 0, mirrored: false } as const;
const mirrored = reoriented(upright, "mirrored");
const turned = reoriented(upright, "turned");

describe("the sides of a film", () => {
  // In front of the patient: the right first molar lies left of the viewer and its distal side is farther to the left.
  it.each([
    ["right", "mesial", "R"],
    ["left", "distal", "L"],
  ] as const)("of a %s tooth with %s to the right are as from outside", (side, uRunsTo, letter) => {
    expect(sidesOnFilm(side, uRunsTo, upright)).toMatchObject({ letter, isReadable: true });
    expect(sidesOnFilm(side, uRunsTo, upright)).not.toHaveProperty("says");
  });

  it("are said loudly when the film is mirrored, and its letter can't be read", () => {
    expect(sidesOnFilm("right", "mesial", mirrored)).toEqual({
      letter: "R",
      isReadable: false,
      edges: { left: "mesial", right: "distal" },
      says: "mirrored",
    });
  });

  it("are said when the film was taken in from inside", () => {
    const asTakenIn = sidesOnFilm("right", "distal", upright);
    expect(asTakenIn).toMatchObject({ isReadable: false, says: "as from inside the mouth" });
    const held = sidesOnFilm("right", "distal", mirrored);
    expect(held).toMatchObject({ isReadable: true, says: "mirrored, now as from outside", edges: { right: "mesial" } });
  });

  it("turn with the film and turn back", () => {
    expect(sidesOnFilm("left", "distal", turned).edges).toEqual({ down: "distal", up: "mesial" });
    const upsideDown = reoriented(turned, "turned");
    expect(sidesOnFilm("left", "distal", upsideDown).edges).toEqual({ left: "distal", right: "mesial" });
    expect(sidesOnFilm("left", "distal", upsideDown).isReadable).toBe(true);
    const last = reoriented(upsideDown, "turned");
    expect(sidesOnFilm("left", "distal", last).edges).toEqual({ up: "distal", down: "mesial" });
  });

  it("are exchanged by a mirror as it is seen, also of a turned film", () => {
    const both = reoriented(turned, "mirrored");
    // A film on its side is mirrored left to right: what lay below still lies below.
    expect(sidesOnFilm("left", "distal", both).edges).toEqual({ down: "distal", up: "mesial" });
    expect(sidesOnFilm("left", "distal", both).isReadable).toBe(false);
  });

  it("are not guessed where the film does not say which way it runs", () => {
    expect(sidesOnFilm("left", "unknown", upright)).toEqual({ letter: "L", isReadable: true, edges: {} });
    expect(sidesOnFilm("left", "unknown", mirrored)).toMatchObject({ isReadable: false, says: "mirrored" });
  });
});

describe("what lies to the right", () => {
  it("is what the film says as it is held, and nothing where it says nothing or lies on its side", () => {
    expect(seenToRight("distal", upright)).toBe("distal");
    expect(seenToRight("distal", mirrored)).toBe("mesial");
    expect(seenToRight("mesial", reoriented(turned, "turned"))).toBe("distal");
    expect([seenToRight("unknown", mirrored), seenToRight("mesial", turned)]).toEqual([undefined, undefined]);
  });
});
