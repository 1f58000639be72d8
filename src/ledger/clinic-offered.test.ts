import { expect, test } from "vitest";
import { doseSetsOffered, evaporationTaken, irrigationTaken, vasoconstrictorTaken } from "./clinic-offered.ts";

test("the sets that are offered are those that the sum knows, each with a source a row", () => {
  expect(doseSetsOffered.map(({ name }) => name)).toEqual([
    ...["unitedStatesLabel", "canada", "australia", "conservative"],
  ]);
  for (const { rows } of doseSetsOffered)
    for (const row of rows) {
      expect(row.source).not.toBe("");
      expect(row.mgPerKg ?? row.maxMg).toBeGreaterThan(0);
    }
});

test("what is printed stands in the offer: 7 mg/kg and 500 mg of lidocaine", () => {
  // The label set as printed in 2013: data/malamed-2013 (seen).
  const label = doseSetsOffered[0]?.rows.find(({ agent }) => agent === "lidocaine");
  expect(label).toMatchObject({ maxMg: 500, mgPerKg: 7, source: "malamed-2013" });
});

test("what is taken without a setting: 2 ml over 1 min, 3 and 2 mm, 200 and 40 micrograms", () => {
  expect(irrigationTaken).toMatchObject({ rinse: { volumeMl: 2, minutes: 1 }, sideVentedMm: { value: 2 } });
  expect(irrigationTaken.openEndedMm).toEqual({ value: 3, source: "lee-2018" });
  // Teaching documents (seen): 200 micrograms in a visit, 40 with a disease of the heart.
  expect(vasoconstrictorTaken.epinephrine?.limit).toBe(200);
  expect(vasoconstrictorTaken.epinephrineCardiac?.limit).toBe(40);
  expect(vasoconstrictorTaken.felypressin).toBeUndefined();
  expect(evaporationTaken.low).toBeLessThan(evaporationTaken.high);
});
