import { expect, it } from "vitest";
import { recallPairs, recallStudy } from "./compare-films-study.ts";

// The stored table has every angle at the full size; here the molar's films are a third of it.
it("films with depth: compared at 3 degrees with the lesion's area ratio within 8 %, refused at 20", () => {
  for (const pair of recallPairs.slice(1)) {
    const [near, far] = recallStudy(
      pair,
      [3, 20].map((horizontalDeg) => ({ horizontalDeg, verticalDeg: 0 })),
      3,
    );
    expect(near?.found.comparable, near?.found.statement).toBe(true);
    expect(Math.abs((near?.found.areaRatio ?? 0) / (near?.trueRatio ?? 1) - 1)).toBeLessThan(0.08);
    expect(near?.found.residualMm).toBeLessThan(0.2);
    expect(far?.found.residualMm).toBeGreaterThan(near?.found.residualMm ?? 0);
    expect(far?.found.comparable).toBe(false);
    expect(far?.found).not.toHaveProperty("areaRatio");
  }
}, 60_000);
