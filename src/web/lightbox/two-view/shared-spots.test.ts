import { describe, expect, it } from "vitest";
import { partsOf } from "../../../record/parts.ts";
import { spot } from "./case-for-tests.ts";
import { sharedSpots } from "./shared-spots.ts";

const marks = partsOf(
  [
    spot("s1", "film-1", "apex"),
    spot("s2", "film-1", "cusp"),
    spot("s3", "film-2", "cusp"),
    spot("s4", "film-1", "filling"),
    spot("s5", "film-2", "filling"),
    spot("s6", "film-2", "filling"),
    spot("s7", "film-2", ""),
    spot("s8", "film-9", "elsewhere"),
  ],
  "mark",
);

describe("landmarks", () => {
  it("serve where they are marked once on each film, and stand first", () => {
    const found = sharedSpots(marks, ["film-1", "film-2"]);
    expect(found.map(({ what, isShared, isDoubled }) => ({ what, isShared, isDoubled }))).toEqual([
      { what: "cusp", isShared: true, isDoubled: false },
      { what: "apex", isShared: false, isDoubled: false },
      { what: "filling", isShared: false, isDoubled: true },
    ]);
    expect(found[0]?.spots.map((one) => one?.id)).toEqual(["s2", "s3"]);
    expect(found[1]?.spots.map((one) => one?.id)).toEqual(["s1", undefined]);
  });
});
