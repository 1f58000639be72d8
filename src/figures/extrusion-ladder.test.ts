import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear } from "./drawn-for-tests.ts";
import { type ExtrusionLadder, extrusionLadder } from "./extrusion-ladder.ts";
import { svgText } from "./svg-text.ts";

/** 0.32 mg in 70 kg against 0.01 mg/kg a day: 2.2 times below (Chutich and others 1998; IRIS 2001, recalled). */
const given: ExtrusionLadder = {
  passedMgPerKg: 0.32 / 70,
  rungs: [{ label: "daily reference dose", says: "EPA 2001, from memory", mgPerKg: 0.01 }],
  tradition: { low: 4.571, high: 68.57 },
  theme: "paper",
  widthPx: 640,
};
const drawn = (more: Partial<ExtrusionLadder> = {}): string => svgText(extrusionLadder({ ...given, ...more }));

describe("extrusionLadder", () => {
  it("says by how much what passed lies below a dose, and the dose that the saying would imply", () => {
    expect(drawn()).toContain(">2.2 times below</text>");
    const { alternative } = extrusionLadder(given);
    expect(alternative).toContain("daily reference dose, EPA 2001, from memory, 0.01 mg/kg: 2.2 times below.");
    expect(alternative).toContain("has no source; it would make the toxic dose 4.6 to 69 mg/kg.");
  });

  it("draws a dose that is passed full and thick, one that is not empty and thin", () => {
    expect(drawn()).toContain('data-part="margin"');
    const over = drawn({ rungs: [{ label: "a", says: "b", mgPerKg: 0.001 }] });
    expect(over).toContain('data-part="over"');
    expect(over).toContain(">4.6 times it</text>");
    expect(over).not.toContain('data-part="margin"');
  });

  it("hatches the saying away from what has a source, and names it so", () => {
    expect(drawn()).toMatch(/data-part="tradition"[^>]*fill="none"/);
    expect(drawn()).toContain(">no source</text>");
    expect(extrusionLadder({ ...given, rungs: [] }).alternative).toContain("No dose to hold it against is known.");
  });

  it("keeps every word clear for any amount", () => {
    const dose = fc.double({ min: 1e-7, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(dose, fc.array(dose, { maxLength: 6 }), (passedMgPerKg, doses) => {
        const rungs = doses.map((mgPerKg) => ({ label: "acute effect", says: "a table, as entered", mgPerKg }));
        const tradition = { low: 1_000 * passedMgPerKg, high: 15_000 * passedMgPerKg };
        expectClear(extrusionLadder({ ...given, passedMgPerKg, rungs, tradition }));
      }),
      { numRuns: 40 },
    );
  });
});
