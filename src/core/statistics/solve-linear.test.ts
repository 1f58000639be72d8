import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cholesky, solveCholesky, solveTransposed } from "./solve-linear.ts";

describe("cholesky", () => {
  it("of a matrix worked by hand", () => {
    // [4 2; 2 5] = [2 0; 1 2] [2 1; 0 2]
    expect([...(cholesky(Float64Array.from([4, 2, 2, 5]), 2) ?? [])]).toEqual([2, 0, 1, 2]);
  });

  it("has no answer for a matrix that is not positive definite", () => {
    expect(cholesky(Float64Array.from([1, 2, 2, 1]), 2)).toBeUndefined();
    expect(cholesky(Float64Array.from([0]), 1)).toBeUndefined();
  });

  it("solves every system B'B + I of random B: put back, it gives the right side", () => {
    const entries = fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 20, maxLength: 20 });
    fc.assert(
      fc.property(entries, (numbers) => {
        const matrix = new Float64Array(16);
        for (let row = 0; row < 4; row++)
          for (let column = 0; column < 4; column++) {
            let sum = row === column ? 1 : 0;
            for (let k = 0; k < 4; k++) sum += (numbers[k * 4 + row] ?? 0) * (numbers[k * 4 + column] ?? 0);
            matrix[row * 4 + column] = sum;
          }
        const right = numbers.slice(16);
        const lower = cholesky(matrix, 4) ?? new Float64Array(16);
        const x = solveCholesky(lower, right);
        for (let row = 0; row < 4; row++) {
          const back = x.reduce((sum, value, column) => sum + (matrix[row * 4 + column] ?? 0) * value, 0);
          expect(back).toBeCloseTo(right[row] ?? 0, 8);
        }
      }),
      { numRuns: 50, seed: 1 },
    );
  });
});

it("solveTransposed solves L' x = b", () => {
  // [2 1; 0 2] x = [5, 4]: x2 = 2, x1 = 1.5
  expect([...solveTransposed(Float64Array.from([2, 0, 1, 2]), Float64Array.from([5, 4]))]).toEqual([1.5, 2]);
});
