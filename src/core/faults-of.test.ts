import { describe, expect, it } from "vitest";
import { z } from "zod";
import { faultsOf } from "./faults-of.ts";

const range = z.strictObject({ low: z.number(), high: z.number() });
const fluid = z.strictObject({
  fluid: z.union([z.enum(["water", "oil"], { error: "is neither water nor oil" }), range]),
});

const faultsIn = (schema: z.ZodType, raw: unknown) => faultsOf(schema.safeParse(raw).error ?? new z.ZodError([]), raw);

describe("the faults of a union", () => {
  it("are those inside the form that was meant, though another form has fewer", () => {
    expect(faultsIn(fluid, { fluid: {} })).toEqual([
      { path: "fluid.low", says: "nothing stands where a number is needed" },
      { path: "fluid.high", says: "nothing stands where a number is needed" },
    ]);
    expect(faultsIn(fluid, { fluid: { low: 1, high: 2, middle: 3 } })).toEqual([
      { path: "fluid.middle", says: "is not a field of this input" },
    ]);
  });

  it("are those of the form with the fewest where none was meant", () => {
    expect(faultsIn(fluid, { fluid: 7 })).toEqual([{ path: "fluid", says: "7 is neither water nor oil" }]);
  });
});

describe("a list", () => {
  it("says itself what is wrong, or names what it takes", () => {
    expect(faultsIn(fluid, { fluid: "wine" })).toEqual([{ path: "fluid", says: '"wine" is neither water nor oil' }]);
    expect(faultsIn(z.strictObject({ side: z.enum(["left", "right"]) }), { side: "up" })).toEqual([
      { path: "side", says: '"up" is none of left, right' },
    ]);
  });
});
