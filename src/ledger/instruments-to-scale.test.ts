import { describe, expect, it } from "vitest";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { BodyOf, PartOf } from "../record/parts.ts";
import { instrumentsToScale } from "./instruments-to-scale.ts";

type Use = BodyOf<"visit">["instruments"][number];
const used = (canal: string, size: number, depthMm?: number, more: Partial<Use> = {}): Use => ({
  ...{ canal, size, taper: 0.04, alloy: "nickelTitanium", movement: "continuous", ...more },
  ...(depthMm === undefined ? {} : { depthMm }),
});
const visit = (instruments: Use[], lengthMm?: number) =>
  ({
    ...{ id: "visit-1", kind: "visit", revision: 1 },
    body: { instruments, canals: [{ canal: "MB1", workingLengthMm: lengthMm }, { canal: "P" }] },
  }) as unknown as PartOf<"visit">;

const profile = [
  { atMm: 0, diameterMm: 0.2, low: 0.18, high: 0.22 },
  { atMm: 16, diameterMm: 0.84, low: 0.82, high: 0.86 },
];
const entry = (name: string, output: unknown = { profile, colour: "yellow" }) =>
  ({ id: name, topic: "instrument", subject: `instrument of visit-1 ${name}`, output }) as unknown as LedgerEntry;
const ledger = [entry("20/.04"), entry("25/.04"), entry("10/.04", {})];

describe("instruments beside their canal", () => {
  it("stand canal by canal, each once at its deepest, the largest to length marked", () => {
    const rows = [used("P", 20, 18), used("MB1", 20, 16, { lengthMm: 25 }), used("MB1", 25, 19.5), used("MB1", 20, 19)];
    const [p, mb1] = instrumentsToScale(visit(rows, 19.5), ledger);
    expect(p).toMatchObject({ canal: "P", instruments: [{ name: "20/.04", isMarked: false }] });
    expect(p?.lengthMm).toBeUndefined();
    expect(mb1).toMatchObject({ canal: "MB1", lengthMm: 19.5, largest: "25/.04" });
    // One with its length noted is another instrument than the one without: the ledger here has no shape of it.
    expect(mb1?.instruments.map(({ name }) => name)).toEqual(["25/.04", "20/.04"]);
    expect(mb1?.instruments.map(({ shortMm }) => shortMm)).toEqual([0, 0.5]);
    expect(mb1?.instruments[1]).toMatchObject({ says: "nickel-titanium, continuous", colour: "yellow", profile });
  });

  it("stand in the order in which their canal met them", () => {
    const rows = [used("P", 20), used("MB1", 25), used("MB1", 20)];
    const [, mb1] = instrumentsToScale(visit(rows), ledger);
    expect(mb1?.instruments.map(({ name }) => name)).toEqual(["25/.04", "20/.04"]);
  });

  it("are no deeper than the canal is long, and have no place in it where length or depth is unknown", () => {
    const placed = (use: Use, lengthMm?: number) =>
      instrumentsToScale(visit([use], lengthMm), ledger)[0]?.instruments[0]?.shortMm;
    expect(placed(used("MB1", 20, 20), 19.5)).toBe(0);
    expect(placed(used("MB1", 20), 19.5)).toBeUndefined();
    expect(placed(used("MB1", 20, 19))).toBeUndefined();
    expect(placed(used("MB1", 20, 9, { depthFrom: "orifice" }), 19.5)).toBeUndefined();
  });

  it("are left out while the ledger has no shape of them, and where no canal is named", () => {
    expect(instrumentsToScale(visit([used("MB1", 10), used("MB1", 40)]), ledger)[0]?.instruments).toEqual([]);
    const { canal: _, ...unnamed } = used("", 20);
    expect(instrumentsToScale(visit([unnamed]), ledger)).toEqual([]);
  });
});
