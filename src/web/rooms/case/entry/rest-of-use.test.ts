import { expect, it } from "vitest";
import { restOfUse } from "./rest-of-use.ts";

const row = { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "reciprocating" } as const;

it("the rest of a row says what it holds and is silent about what it does not", () => {
  expect(restOfUse(row)).toEqual([]);
  expect(
    restOfUse({
      ...row,
      file: { id: "file-1", label: "P7", usesBefore: 1 },
      ...{ depthFrom: "orifice", engagedFraction: 0.5, torqueLimitNmm: 20, section: "convexTriangle" },
      ...{ lengthMm: 25, workingMm: 18, maxDiameterMm: 1.1 },
      reciprocation: { forwardDeg: 150, backDeg: 30, frequencyHz: 10 },
      profile: [
        { atMm: 0, diameterMm: 0.25 },
        { atMm: 16, diameterMm: 1.1 },
      ],
    }),
  ).toEqual([
    "counted file P7, 1 visit before",
    "depth from the orifice",
    "at that depth for 0.5 of the time",
    "torque limit 20 N mm",
    "150° forward, 30° back, 10 times a second",
    "section: convex triangle",
    ...["length 25 mm", "working part 18 mm", "stops widening at 1.1 mm", "variable taper, 2 stations"],
  ]);
  expect(restOfUse({ ...row, file: { id: "file-1", label: "P7" } })).toEqual(["counted file P7"]);
});
