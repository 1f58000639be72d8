import { describe, expect, it } from "vitest";
import { nextLoupe, sightFrom, usualSight } from "./sight.ts";

describe("what lies over the films", () => {
  it("comes back as it was kept", () => {
    const kept = { ...usualSight, grid: true, loupe: 4, linked: false };
    expect(sightFrom(JSON.stringify(kept))).toEqual(kept);
  });

  it("is the usual where nothing readable was kept", () => {
    for (const kept of [null, "", "{", "[]", '{"loupe":5}', '{"grid":"yes"}', "7"])
      expect(sightFrom(kept)).toEqual(usualSight);
  });

  it("takes what an older or newer program kept for what it knows", () => {
    expect(sightFrom('{"grid":true,"ruler":1}')).toEqual({ ...usualSight, grid: true });
  });

  it("never begins with hidden marks", () => {
    expect(sightFrom('{"marks":false}').marks).toBe(true);
  });

  it("goes through the loupe's strengths and back to none", () => {
    expect([0, 2, 3, 4, 6].map((now) => nextLoupe(now as 0))).toEqual([2, 3, 4, 6, 0]);
  });
});
