import { describe, expect, it } from "vitest";
import { keptLately } from "./kept-lately.ts";

/** A function with the questions that it was really asked. */
function counted() {
  const asked: number[] = [];
  const of = keptLately(
    (value: number) => {
      asked.push(value);
      if (value < 0) throw new RangeError("below 0");
      return { twice: 2 * value };
    },
    (value) => String(value),
  );
  return { of, asked };
}

describe("answers that are kept", () => {
  it("are worked out once and are the same ones", () => {
    const { of, asked } = counted();
    const first = of(3);
    expect(first).toEqual({ twice: 6 });
    expect(of(3)).toBe(first);
    expect(of(4)).toEqual({ twice: 8 });
    expect(asked).toEqual([3, 4]);
  });

  it("are forgotten, the longest unasked first", () => {
    const { of, asked } = counted();
    for (let value = 0; value < 24; value += 1) of(value);
    of(0);
    of(24);
    asked.length = 0;
    of(0);
    expect(asked).toEqual([]);
    of(1);
    expect(asked).toEqual([1]);
  });

  it("are never refusals", () => {
    const { of, asked } = counted();
    for (const _ of [1, 2]) expect(() => of(-1)).toThrow(RangeError);
    expect(asked).toEqual([-1, -1]);
  });
});
