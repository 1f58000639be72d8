import type { CabinetItem, CabinetItemOf } from "./cabinet-item.ts";

type Instrument = CabinetItemOf<"instrument">["body"];

/** An instrument of a cabinet; for tests. */
export const instrumentItem = (id: string, more: Partial<Instrument> = {}): CabinetItemOf<"instrument"> => ({
  ...{ id, kind: "instrument", revision: 1 },
  body: { name: id, size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous", ...more },
});

/** A counted file of an instrument; for tests. */
export const fileItem = (id: string, instrument: string, discarded = false): CabinetItemOf<"file"> => ({
  ...{ id, kind: "file", revision: 1 },
  body: {
    ...{ instrument, label: id.toUpperCase(), since: "2026-01-02", sterilisedOn: [] },
    ...(discarded ? { discarded: { on: "2026-03-01", because: "at its limit" } } : {}),
  },
});

/** A sequence of some steps; for tests. */
export const sequenceItem = (id: string, steps: CabinetItemOf<"sequence">["body"]["steps"]): CabinetItem => ({
  ...{ id, kind: "sequence", revision: 1 },
  body: { name: id, steps },
});
