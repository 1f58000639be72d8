import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CostField, type LeastCostTree, leastCostTree, pathTo } from "./least-cost-tree.ts";

interface Answers extends Omit<CostField, "cost"> {
  cost: number[];
  start: number;
  end: number;
  costTo: number[];
  path: number[];
  pathCost: number;
}

const answersFile = new URL("../../../test/reference/least-cost/answers.json", import.meta.url);
const answers: Answers = JSON.parse(readFileSync(answersFile, "utf8"));

/** What a way costs, added up step by step from the definition. */
function costOfPath({ cost, columns }: CostField, path: readonly number[]): number {
  let sum = 0;
  for (const [step, to] of path.entries()) {
    const from = path[step - 1];
    if (from === undefined) continue;
    const right = Math.abs((to % columns) - (from % columns));
    const down = Math.abs(Math.floor(to / columns) - Math.floor(from / columns));
    if (Math.max(right, down) !== 1) throw new Error(`pixels ${from} and ${to} are not neighbours`);
    sum += (((cost[from] ?? 0) + (cost[to] ?? 0)) / 2) * Math.hypot(right, down);
  }
  return sum;
}

/** Every pixel offers its neighbours a way until nothing improves: slow and plain. */
function bruteForce({ cost, columns, rows }: CostField, start: number): number[] {
  const costTo = Array.from({ length: columns * rows }, (_, index) => (index === start ? 0 : Number.POSITIVE_INFINITY));
  for (let improved = true; improved; ) {
    improved = false;
    for (let to = 0; to < costTo.length; to++)
      for (let from = 0; from < costTo.length; from++) {
        const right = Math.abs((to % columns) - (from % columns));
        const down = Math.abs(Math.floor(to / columns) - Math.floor(from / columns));
        if (Math.max(right, down) !== 1) continue;
        const offered = (costTo[from] ?? 0) + (((cost[from] ?? 0) + (cost[to] ?? 0)) / 2) * Math.hypot(right, down);
        if (offered >= (costTo[to] ?? 0) - 1e-12) continue;
        costTo[to] = offered;
        improved = true;
      }
  }
  return costTo;
}

const uniform = (columns: number, rows: number, cost = 1): CostField => ({
  cost: new Float64Array(columns * rows).fill(cost),
  columns,
  rows,
});

const anyField = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 })).chain(([columns, rows]) =>
  fc.record({
    columns: fc.constant(columns),
    rows: fc.constant(rows),
    start: fc.integer({ min: 0, max: columns * rows - 1 }),
    // Costs from a millionth to a million: steps that differ more than the buckets can tell apart.
    exponents: fc.array(fc.double({ min: -6, max: 6, noNaN: true }), {
      minLength: columns * rows,
      maxLength: columns * rows,
    }),
  }),
);

describe("leastCostTree", () => {
  // The stored answers are rounded to 12 decimals, and both add up about 20 steps in doubles.
  it("agrees with scikit-image's MCP_Geometric on every pixel", () => {
    const field = { ...answers, cost: Float64Array.from(answers.cost) };
    const tree = leastCostTree(field, answers.start);
    answers.costTo.forEach((known, index) => {
      expect(tree.costTo[index]).toBeCloseTo(known, 10);
    });
    expect(costOfPath(field, pathTo(tree, answers.end))).toBeCloseTo(answers.pathCost, 10);
  });

  it("gives the distance of a king on an even field", () => {
    const [columns, rows, start] = [9, 7, 2 * 9 + 3];
    const tree = leastCostTree(uniform(columns, rows, 2), start);
    for (let index = 0; index < columns * rows; index++) {
      const [right, down] = [Math.abs((index % columns) - 3), Math.abs(Math.floor(index / columns) - 2)];
      const steps = Math.abs(right - down) + Math.SQRT2 * Math.min(right, down);
      expect(tree.costTo[index]).toBeCloseTo(2 * steps, 12);
    }
  });

  it("goes round a wall through its only gap", () => {
    const field = uniform(5, 5);
    for (let row = 0; row < 5; row++) field.cost[row * 5 + 2] = row === 4 ? 1 : 1000;
    expect(pathTo(leastCostTree(field, 0), 4)).toContain(4 * 5 + 2);
  });

  it("equals brute force for costs of any span", () => {
    fc.assert(
      fc.property(anyField, ({ columns, rows, start, exponents }) => {
        const field = { columns, rows, cost: Float64Array.from(exponents, (exponent) => 10 ** exponent) };
        const tree = leastCostTree(field, start);
        bruteForce(field, start).forEach((known, index) => {
          expect(Math.abs((tree.costTo[index] ?? 0) - known)).toBeLessThanOrEqual(1e-9 * Math.max(known, 1e-9));
        });
      }),
      { numRuns: 200 },
    );
  });

  it("has for every pixel a path of neighbours that costs what it says", () => {
    fc.assert(
      fc.property(anyField, ({ columns, rows, start, exponents }) => {
        const field = { columns, rows, cost: Float64Array.from(exponents, (exponent) => 10 ** exponent) };
        const tree = leastCostTree(field, start);
        tree.costTo.forEach((cost, index) => {
          const path = pathTo(tree, index);
          expect([path[0], path.at(-1)]).toEqual([start, index]);
          expect(Math.abs(costOfPath(field, path) - cost)).toBeLessThanOrEqual(1e-9 * Math.max(cost, 1e-9));
        });
      }),
      { numRuns: 100 },
    );
  });

  it("stopped at a pixel has the way to it that the whole tree has, and does not go on", () => {
    fc.assert(
      fc.property(anyField, fc.nat(), ({ columns, rows, start, exponents }, anywhere) => {
        const field = { columns, rows, cost: Float64Array.from(exponents, (exponent) => 10 ** exponent) };
        const until = anywhere % (columns * rows);
        const known = leastCostTree(field, start).costTo[until] ?? 0;
        const tree = leastCostTree(field, start, undefined, until);
        expect(Math.abs((tree.costTo[until] ?? 0) - known)).toBeLessThanOrEqual(1e-9 * Math.max(known, 1e-9));
        expect(costOfPath(field, pathTo(tree, until))).toBeCloseTo(tree.costTo[until] ?? 0, 6);
      }),
      { numRuns: 300 },
    );
    const [columns, rows] = [60, 60];
    const near = leastCostTree(uniform(columns, rows), 0, undefined, 3);
    expect(near.costTo.filter(Number.isFinite).length).toBeLessThan(60);
  });

  it("doubles every cost when the field doubles", () => {
    const field = { ...answers, cost: Float32Array.from(answers.cost) };
    const doubled = { ...answers, cost: field.cost.map((cost) => 2 * cost) };
    const [once, twice] = [leastCostTree(field, answers.start), leastCostTree(doubled, answers.start)];
    once.costTo.forEach((cost, index) => {
      expect(twice.costTo[index]).toBeCloseTo(2 * cost, 10);
    });
  });

  it("costs the same there and back", () => {
    const field = { ...answers, cost: Float64Array.from(answers.cost) };
    const there = leastCostTree(field, answers.start).costTo[answers.end] ?? 0;
    expect(leastCostTree(field, answers.end).costTo[answers.start]).toBeCloseTo(there, 10);
  });

  it("keeps to its bounds and answers there as a field of that size does", () => {
    const field = { ...answers, cost: Float64Array.from(answers.cost) };
    const bounds = { column: 4, row: 2, columns: 10, rows: 8 };
    const tree = leastCostTree(field, 3 * answers.columns + 5, bounds);
    const inner = { column: 0, row: 0, columns: 10, rows: 8 };
    const cut = { columns: 10, rows: 8, cost: new Float64Array(80) };
    const outer = (index: number) => (2 + Math.floor(index / 10)) * answers.columns + 4 + (index % 10);
    cut.cost.forEach((_, index) => {
      cut.cost[index] = field.cost[outer(index)] ?? 0;
    });
    const known: LeastCostTree = leastCostTree(cut, 1 * 10 + 1, inner);
    known.costTo.forEach((cost, index) => {
      expect(tree.costTo[outer(index)]).toBeCloseTo(cost, 12);
    });
    expect([...tree.costTo].filter(Number.isFinite)).toHaveLength(80);
  });

  it("answers for a single pixel", () => {
    const tree = leastCostTree(uniform(1, 1), 0);
    expect([...tree.costTo]).toEqual([0]);
    expect(pathTo(tree, 0)).toEqual([0]);
  });

  it.each([
    ["sizes that disagree", () => leastCostTree({ cost: new Float64Array(5), columns: 2, rows: 2 }, 0)],
    ["no columns", () => leastCostTree({ cost: new Float64Array(0), columns: 0, rows: 2 }, 0)],
    ["a cost of 0", () => leastCostTree(uniform(2, 2, 0), 0)],
    ["a cost below 0", () => leastCostTree(uniform(2, 2, -1), 0)],
    ["a cost that is no number", () => leastCostTree(uniform(2, 2, Number.NaN), 0)],
    ["an endless cost", () => leastCostTree(uniform(2, 2, Number.POSITIVE_INFINITY), 0)],
    ["a start beyond the field", () => leastCostTree(uniform(2, 2), 4)],
    ["a start between pixels", () => leastCostTree(uniform(2, 2), 0.5)],
    ["a start outside the bounds", () => leastCostTree(uniform(3, 3), 0, { column: 1, row: 1, columns: 2, rows: 2 })],
    ["bounds outside the field", () => leastCostTree(uniform(3, 3), 4, { column: 1, row: 1, columns: 3, rows: 2 })],
    ["empty bounds", () => leastCostTree(uniform(3, 3), 0, { column: 0, row: 0, columns: 0, rows: 2 })],
  ])("refuses %s", (_, ask) => {
    expect(ask).toThrow(expect.objectContaining({ code: "input.impossible" }));
  });
});

describe("pathTo", () => {
  it.each([
    ["outside the bounds", 0],
    ["outside the field", 99],
  ])("refuses a pixel %s", (_, index) => {
    const tree = leastCostTree(uniform(3, 3), 4, { column: 1, row: 1, columns: 2, rows: 2 });
    expect(() => pathTo(tree, index)).toThrow(expect.objectContaining({ code: "input.impossible" }));
  });
});
