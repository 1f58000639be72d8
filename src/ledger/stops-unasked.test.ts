import { describe, expect, it } from "vitest";
import { anaestheticTold } from "./anaesthetic-told.ts";
import { stopsUnasked } from "./stops-unasked.ts";
import { history, lidocaine, visitEntries, visitParts } from "./visit-sums/visit-for-tests.ts";

/** 12 cartridges of 18 micrograms are 216 of epinephrine, above 200; what was read when they were noted. */
const read = "With these cartridges: Epinephrine: 216 micrograms are above the limit of 200 micrograms by 16.00.";
const confirmed = { by: "S", asked: [read], because: "pain" };

const unasked = (cartridges: number, asked: boolean, ...more: Parameters<typeof visitParts>[1][]) => {
  const anaesthetic = [{ ...lidocaine, cartridges, ...(asked ? { confirmed } : {}) }];
  const told = anaestheticTold(visitEntries(visitParts({ anaesthetic }, ...more)), "visit-1");
  return stopsUnasked(told?.output?.stops ?? [], anaesthetic).map(({ by }) => by);
};

describe("a limit that nobody was asked about", () => {
  it("is one that was passed by a change of a row, and none that was read and confirmed", () => {
    expect(unasked(12, true)).toEqual([]);
    expect(unasked(12, false)).toEqual(["vasoconstrictor"]);
    expect(unasked(13, true)).toEqual(["vasoconstrictor"]);
    expect(unasked(11, false)).toEqual([]);
    // Whether 16 or 16.00 was read is the same.
    const rows = [{ ...lidocaine, cartridges: 12, confirmed: { ...confirmed, asked: ["above by 16.00."] } }];
    expect(stopsUnasked([{ by: "vasoconstrictor", says: "above by 16.", mark: "seen" }], rows)).toEqual([]);
    expect(stopsUnasked([{ by: "vasoconstrictor", says: "above by 16.5.", mark: "seen" }], rows)).toHaveLength(1);
  });

  it("is one that what was learnt of the person made lower", () => {
    const cardiac = history("history-1", "2024-01-01", { flags: [{ flag: "cardiacRisk" }] });
    expect(unasked(3, false)).toEqual([]);
    expect(unasked(3, false, cardiac)).toEqual(["vasoconstrictor"]);
    expect(unasked(12, true, cardiac)).toEqual(["vasoconstrictor"]);
  });

  it("is none where nothing was given", () => {
    expect(stopsUnasked([{ by: "sum", says: "above", mark: "seen" }], [])).toEqual([]);
  });
});
