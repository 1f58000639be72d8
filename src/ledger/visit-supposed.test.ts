import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BodyOf } from "../record/parts.ts";
import { dosesOf, supposedAsRecorded, visitSupposed } from "./visit-supposed.ts";

type Visit = BodyOf<"visit">;
type Dose = Visit["solvent"][number];

const room = { volumeM3: 31.2, airChangesPerHour: 6, from: "a plan" };
const visitWith = (solvent: readonly Dose[], clinic?: Visit["clinic"]): Visit => ({
  on: "2026-11-24",
  ...{ aim: "", holdPoints: [], timeOut: "notDone", historyConfirmed: false, magnification: "none" },
  ...{ isolation: { rubberDam: "used" }, anaesthetic: [], canals: [], irrigation: [], instruments: [], lots: [] },
  ...{ films: [], flareUp: "notRecorded", told: "", note: "", solvent: [...solvent] },
  ...(clinic === undefined ? {} : { clinic }),
});
const dose = (volumeMl: number, more: Partial<Dose> = {}): Dose => ({
  solvent: "chloroform",
  volumeMl,
  atMin: 0,
  ...more,
});
const total = (visit: Visit, name: string) => dosesOf(visit, name).reduce((sum, { volumeMl }) => sum + volumeMl, 0);

describe("visitSupposed", () => {
  it("gives the doses another volume together, in the shares that they have", () => {
    const visit = visitWith([dose(1), dose(3)]);
    expect(visitSupposed(visit, "chloroform", { volumeMl: 1 }).solvent.map(({ volumeMl }) => volumeMl)).toEqual([
      0.25, 0.75,
    ]);
  });

  it("shares out evenly where what is recorded is nothing", () => {
    const visit = visitWith([dose(0), dose(0)]);
    expect(visitSupposed(visit, "chloroform", { volumeMl: 1 }).solvent.map(({ volumeMl }) => volumeMl)).toEqual([
      0.5, 0.5,
    ]);
  });

  it("leaves other solvents, and all that is not supposed, as they are", () => {
    const own = { name: "halothane", molarMassGMol: 197.4, densityGMl: 1.87, vapourPressureKPa: 32 };
    const visit = visitWith([dose(0.1), dose(0.3, { solvent: "other", own })], { room });
    expect(visitSupposed(visit, "chloroform", {})).toEqual(visit);
    const other = visitSupposed(visit, "halothane", { volumeMl: 0.6, recoveredFraction: 0.5 });
    expect(other.solvent).toEqual([dose(0.1), dose(0.6, { solvent: "other", own, recoveredFraction: 0.5 })]);
    expect({ ...other, solvent: visit.solvent }).toEqual(visit);
  });

  it("changes the room's figures and keeps where it came from; without a room there is none to change", () => {
    const visit = visitWith([dose(0.1)], { room });
    expect(visitSupposed(visit, "chloroform", { roomM3: 60, airChangesPerHour: 0 }).clinic?.room).toEqual({
      ...room,
      volumeM3: 60,
      airChangesPerHour: 0,
    });
    expect(visitSupposed(visitWith([dose(0.1)]), "chloroform", { roomM3: 60 }).clinic).toBeUndefined();
  });

  it("makes one rate of evaporation of a range", () => {
    expect(visitSupposed(visitWith([dose(0.1)]), "chloroform", { ratePerMin: 0.2 }).clinic).toEqual({
      evaporationPerMin: { low: 0.2, high: 0.2 },
    });
  });

  it("dispenses what is supposed, whatever was recorded, and changes no recorded dose", () => {
    const volumes = fc.array(fc.double({ min: 0, max: 5, noNaN: true }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(volumes, fc.double({ min: 0, max: 20, noNaN: true }), (all, volumeMl) => {
        const visit = visitWith(all.map((one) => dose(one)));
        const before = structuredClone(visit);
        expect(total(visitSupposed(visit, "chloroform", { volumeMl }), "chloroform")).toBeCloseTo(volumeMl, 9);
        expect(visit).toEqual(before);
      }),
    );
  });
});

describe("supposedAsRecorded", () => {
  it("begins at what is recorded, so that supposing it changes nothing", () => {
    const visit = visitWith([dose(0.25, { recoveredFraction: 0.5 }), dose(0.25, { recoveredFraction: 0.5 })], {
      room,
      evaporationPerMin: { low: 0.2, high: 0.2 },
    });
    const recorded = supposedAsRecorded(visit, "chloroform");
    expect(recorded).toEqual({
      volumeMl: 0.5,
      recoveredFraction: 0.5,
      roomM3: 31.2,
      airChangesPerHour: 6,
      ratePerMin: 0.2,
    });
    expect(visitSupposed(visit, "chloroform", recorded)).toEqual(visit);
  });

  it("says nothing of a share that differs, of a range of rates, and of a room that is not told", () => {
    const visit = visitWith([dose(0.1, { recoveredFraction: 0.5 }), dose(0.1)], {
      evaporationPerMin: { low: 0.1, high: 1 },
    });
    expect(supposedAsRecorded(visit, "chloroform")).toEqual({ volumeMl: 0.2 });
    expect(supposedAsRecorded(visitWith([dose(0.1)]), "chloroform")).toEqual({ volumeMl: 0.1, recoveredFraction: 0 });
  });
});
