import { describe, expect, it } from "vitest";
import { z } from "zod";
import { faultsOf } from "./faults-of.ts";
import { share } from "./share.ts";

const faultOf = (value: unknown): string | undefined => {
  const { error } = z.strictObject({ prior: share }).safeParse({ prior: value });
  return error && faultsOf(error, { prior: value }).map(({ path, says }) => `${path}: ${says}`)[0];
};

describe("share", () => {
  it.each([0, 0.5, 1])("takes %d", (value) => {
    expect(faultOf(value)).toBeUndefined();
  });

  it.each([
    [87, "prior: 87 is outside 0..1; a percent is written 0.87"],
    [100, "prior: 100 is outside 0..1; a percent is written 1"],
    [1.5, "prior: 1.5 is outside 0..1; a percent is written 0.015"],
    [250, "prior: 250 is outside 0..1"],
    [-0.1, "prior: -0.1 is outside 0..1"],
  ])("says of %d how a percent is written, where it may be one", (value, fault) => {
    expect(faultOf(value)).toBe(fault);
  });

  it("publishes its range", () => {
    expect(z.toJSONSchema(share)).toMatchObject({ type: "number", minimum: 0, maximum: 1 });
  });
});
