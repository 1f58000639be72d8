import { expect, it } from "vitest";
import { limitsMet } from "./limits-met.ts";

it("a limit is met when one more would pass it; one below, one above and no limit are not", () => {
  const limits = { uses: 5, canals: 8, turns: 100 };
  expect(limitsMet(limits, { uses: 5, canals: 7, sterilisations: 9 })).toEqual([{ name: "uses", limit: 5, found: 5 }]);
  expect(limitsMet(limits, { uses: 6, canals: 8, sterilisations: 0 })).toEqual([
    { name: "canals", limit: 8, found: 8 },
  ]);
  expect(limitsMet(limits, { uses: 0, canals: 0, sterilisations: 0 })).toEqual([]);
  expect(limitsMet({ uses: 0 }, { uses: 0, canals: 0, sterilisations: 0 })).toHaveLength(1);
  expect(limitsMet(undefined, { uses: 5, canals: 8, sterilisations: 1 })).toEqual([]);
});
