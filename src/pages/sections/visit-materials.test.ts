import { expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../../test/sample-case.ts";
import { linesOfModel } from "../../../test/words-of-model.ts";
import { visitPages } from "./visits.ts";

const own = { name: "orange oil", molarMassGMol: 136, densityGMl: 0.84, vapourPressureKPa: 0.2 };
const confirmed = { by: "supervisor", asked: ["2 ml at once: is it so?"], because: "two canals" };
const worked = sampleParts().map((one) =>
  one.kind === "visit" && one.id === "visit-1"
    ? part("visit", one.id, {
        ...one.body,
        irrigation: [{ solution: "other", named: "green tea", volumeMl: 5, minutes: 1, activated: "no" }],
        solvent: [{ solvent: "other", own, volumeMl: 2, atMin: 3, confirmed }],
      })
    : one,
);

it("a visit's page names another solvent and another irrigant, and who stood by what was asked", () => {
  const said = linesOfModel({ pages: visitPages(sampleSource(worked)) });
  expect(said).toContain("Orange oil");
  expect(said).toContain("Green tea");
  expect(said).toContain(
    "Orange oil, row 1: confirmed by supervisor, because: two canals. Asked: 2 ml at once: is it so?",
  );
  expect(linesOfModel({ pages: visitPages(sampleSource(sampleParts())) })).not.toContain(
    "Asked before it was recorded",
  );
});
