import { describe, expect, it } from "vitest";
import { emergencyNames } from "../../record/clinic-rules.ts";
import { hashOf, placeOfHash } from "./emergency-place.ts";

describe("the address of the emergency page", () => {
  it.each(["choice", ...emergencyNames] as const)("of %s is read back as it is written", (place) => {
    expect(placeOfHash(hashOf(place))).toBe(place);
  });

  it.each(["", "#", "#emergencys", "#emergency-", "#emergency-flood", "#farook-2014"])("is none in %j", (hash) => {
    expect(placeOfHash(hash)).toBe("shut");
  });
});
