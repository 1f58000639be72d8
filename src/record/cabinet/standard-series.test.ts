import { expect, test } from "vitest";
import { type CabinetItem, cabinetInstrument } from "./cabinet-item.ts";
import { standardSeries } from "./standard-series.ts";

const asItems = (bodies: ReturnType<typeof standardSeries>): CabinetItem[] =>
  bodies.map((body, index) => ({ id: `hand-${index}`, kind: "instrument", revision: 1, body }));

// ISO 3630-1 (memory): 06, 08, 10, then 15 to 60 by fives, then 70 to 140 by tens: 3 + 10 + 8 sizes, taper .02, 16 mm.
test("an empty cabinet is offered 21 sizes in three lengths, each as the standard has it", () => {
  const offers = standardSeries([]);
  expect(offers).toHaveLength(63);
  expect([...new Set(offers.map(({ lengthMm }) => lengthMm))]).toEqual([21, 25, 31]);
  const sizes = offers.filter(({ lengthMm }) => lengthMm === 25).map(({ size }) => size);
  const standard = [6, 8, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 70, 80, 90, 100, 110, 120, 130, 140];
  expect(sizes).toEqual(standard);
  for (const body of offers) {
    expect(body).toMatchObject({ taper: 0.02, workingMm: 16, alloy: "stainlessSteel", movement: "hand" });
    expect(cabinetInstrument.safeParse(body).success).toBe(true);
  }
  expect(new Set(offers.map(({ name }) => name)).size).toBe(63);
});

test("what is there already, by geometry and alloy, is not offered again", () => {
  const offers = standardSeries([]);
  expect(standardSeries(asItems(offers))).toEqual([]);
  const [first, ...others] = offers;
  const renamed = asItems(offers.slice(0, 1).map((body) => ({ ...body, name: "Finder", note: "For small canals" })));
  expect(standardSeries(renamed)).toEqual(others);
  const unstated = asItems(offers.slice(0, 1).map(({ workingMm: _, ...body }) => body));
  expect(standardSeries(unstated)).toEqual(others);
  const other = asItems(offers.slice(0, 1).map((body) => ({ ...body, alloy: "nickelTitanium" as const })));
  expect(standardSeries(other)).toContainEqual(first);
});
