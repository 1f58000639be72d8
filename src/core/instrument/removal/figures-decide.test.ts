import { describe, expect, it } from "vitest";
import type { RemovalOutput } from "../removal-output.ts";
import { figuresDecide } from "./figures-decide.ts";

type Way = RemovalOutput["ways"][number];

const way = (name: Way["way"], low: number, high: number): Way => ({
  ...{ way: name, steps: "", from: [] },
  healed: { mean: (low + high) / 2, interval: { low, high, level: 0.95 } },
});

describe("the figures", () => {
  it("do not decide where two intervals touch, and those two are named (C14)", () => {
    const found = figuresDecide([way("remove", 0.8, 0.9), way("leave", 0.5, 0.8), way("surgery", 0.1, 0.2)]);
    expect(found.figuresDecide).toBe(false);
    expect(found.figuresSay).toContain("(remove and leave)");
  });

  it("lie apart where none does, and even then the groups are not comparable (C14)", () => {
    const found = figuresDecide([way("remove", 0.8, 0.9), way("leave", 0.5, 0.79)]);
    expect(found.figuresDecide).toBe(true);
    expect(found.figuresSay).toContain("not comparable");
  });

  it("of a way without healing are not asked (C14)", () => {
    const gone: Way = { way: "extraction", steps: "", from: [] };
    expect(figuresDecide([way("leave", 0.5, 0.8), gone]).figuresDecide).toBe(true);
  });
});
