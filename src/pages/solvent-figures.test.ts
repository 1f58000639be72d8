import { describe, expect, it } from "vitest";
import type { SolventInput } from "../core/safety/solvent/solvent-input.ts";
import { solventTopic } from "../core/safety/solvent-topic.ts";
import { expectClear } from "../figures/drawn-for-tests.ts";
import { svgText } from "../figures/svg-text.ts";
import type { SolventTold } from "../ledger/solvent-told.ts";
import { extrusionFigure, limitsFigure, vapourFigure } from "./solvent-figures.ts";

const doses = [
  { atMin: 5, volumeMl: 0.1 },
  { atMin: 30, volumeMl: 0.2 },
];
const told = (more: Partial<SolventInput> = {}): SolventTold =>
  solventTopic.compute({
    ...{ solvent: "chloroform", doses, room: { volumeM3: 30, airChangesPerHour: 10 } },
    ...{ nearField: { radiusM: 0.5, airSpeedMPerMin: 3.6 }, extrusion: { massMg: 0.32, bodyMassKg: 70 }, ...more },
  });
const shown = { theme: "paper", widthPx: 640 } as const;

describe("vapourFigure", () => {
  it("draws what was told in ppm: its highest is the peak that the sum tells", () => {
    const sum = told({ evaporation: { kind: "firstOrder", ratePerMin: 0.2 } });
    const peak = Number(sum.near?.peak.ppm.toPrecision(2));
    expect(vapourFigure(sum, doses, shown).alternative).toContain(
      `At each moment: near the mouth at most ${peak} ppm,`,
    );
  });

  it("names every limit once, in the panel of its own time", () => {
    const sum = told();
    const { alternative } = vapourFigure(sum, doses, shown);
    for (const { authority, averagingMin, zone } of sum.limits) {
      if (zone === "near") continue;
      const panel = alternative
        .split(". ")
        .find((one) => one.startsWith(averagingMin === 0 ? "At each moment" : `Mean over ${averagingMin} min`));
      expect(panel, authority).toContain(authority);
    }
    expect(alternative).toContain("Mean over 15 min");
  });

  it("draws what is supposed beside it, and stands without a near field and without doses", () => {
    expect(svgText(vapourFigure(told(), doses, { ...shown, supposed: told({ doses: [] }) }))).toContain("what if");
    for (const sum of [told({ nearField: undefined }), told({ doses: [], extrusion: undefined })])
      expectClear(vapourFigure(sum, [], shown));
  });
});

describe("limitsFigure", () => {
  it("has a row for each limit of the zones asked for, with a star where a limit was recalled", () => {
    const sum = told();
    const near = sum.limits.filter(({ zone }) => zone === "near");
    const { alternative } = limitsFigure(sum, ["near"], shown);
    expect(alternative.match(/near the mouth/g)).toHaveLength(near.length);
    expect(alternative).not.toContain("in the room");
    expect(alternative.match(/\*:/g)).toHaveLength(near.filter(({ mark }) => mark === "memory").length);
    expectClear(limitsFigure(sum, ["near", "far"], shown));
  });

  it("sets each limit beside itself as supposed", () => {
    const supposed = told({ doses: doses.map((one) => ({ ...one, volumeMl: one.volumeMl * 40 })) });
    const { alternative } = limitsFigure(told(), ["near"], { ...shown, supposed });
    expect(alternative.match(/what if:/g)).toHaveLength(supposed.limits.filter(({ zone }) => zone === "near").length);
    expect(alternative).toContain("above");
  });
});

describe("extrusionFigure", () => {
  it("says kind, source and whether it was read", () => {
    const { extrusion } = told();
    if (extrusion === undefined) throw new Error("no extrusion");
    const { alternative } = extrusionFigure(extrusion, shown);
    expect(alternative).toContain("daily reference dose, 0.01 mg/kg, EPA IRIS Chloroform 2001, from memory");
    expect(alternative).toContain("2.2 times below");
  });
});
