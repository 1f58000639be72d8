import { describe, expect, it } from "vitest";
import { partId } from "../../../../core/ids.ts";
import type { Part } from "../../../../record/parts.ts";
import { entrySubject, entryTitle } from "./entry-subject.ts";
import { ledgerLines } from "./ledger-lines.ts";

const thin = "\u202f";
const told = { basis: { formula: "", assumptions: [], sources: [] }, cautions: [], notComputed: [] };
const said = (topic: string, output: unknown) =>
  ledgerLines({ topic, output }).map(({ name, value, interval }) => [name, value, ...(interval ? [interval] : [])]);

describe("what an entry about an instrument says", () => {
  it("is its largest strain in percent with its interval and what it bounds", () => {
    const output = {
      ...{ peakStrain: 0.0472, fromTipMm: 7.41, fromOrificeMm: 4.29, turnDeg: 65.4 },
      intervals: { peakStrain: { low: 0.0435, high: 0.0518 }, fromTipMm: { low: 6.5, high: 8.1 } },
      bounds: [{ bound: "asMeasured" }, { bound: "asMeasured" }, { bound: "upper" }],
    };
    expect(said("bend", output)).toEqual([
      ["Largest strain", `4.7${thin}%`, "4.3\u20135.2"],
      ["There, from its tip", `7.4${thin}mm`, "6.5\u20138.1"],
      ["There, from the orifice", `4.3${thin}mm`],
      ["All turning of the canal", "65°"],
      ["The true strain is", "no more"],
    ]);
  });

  it("is its diameters, with the colour of its size or none", () => {
    const at = (atMm: number, diameterMm: number) => ({
      ...{ atMm, diameterMm, low: diameterMm - 0.02, high: diameterMm + 0.02 },
    });
    const output = { ...told, profile: [at(0, 0.25), at(8, 0.73), at(16, 1.21)], custom: false, toleranceMm: 0.02 };
    expect(said("instrument", { ...output, colour: "red" })).toEqual([
      ["At the tip", `0.25${thin}mm at the tip`, "0.23\u20130.27"],
      ["At 16 mm", `1.21${thin}mm`, "1.19\u20131.23"],
      ["Tolerance by the standard", `0.02${thin}mm`],
      ["Colour of its size", "red"],
    ]);
    expect(said("instrument", output).at(-1)).toEqual(["Colour of its size", "none: a custom size"]);
  });

  it("is the wear as a band, with every limit that is passed and never a count that is left", () => {
    const band = (low: number, high: number) => ({ low, high });
    const output = {
      ...{ ...told, turns: { net: 100, swept: 150 }, equivalentTurns: band(37, 54), referenceStrain: 0.07 },
      ...{ ratioToReference: band(0.12, 0.18), worstSection: { fromTipMm: 7.4, within: band(7, 8) } },
      ...{ uses: [], profile: [], over: [{ name: "turns", limit: 90, found: 100 }], discard: true },
    };
    expect(said("lifeUsed", output)).toEqual([
      ["Wear, in minutes of the reference canal", `0.12 to 0.18${thin}ref. min`],
      ["Equivalent reference turns", "37 to 54"],
      ["Turns, net", "100"],
      ["Turns, all turning added", "150"],
      ["Worn most, from its tip", `7.4${thin}mm`],
      ["Over its limit of turns", "100, limit 90"],
    ]);
    const straight = { ...output, turns: { net: 100, swept: 100 }, worstSection: undefined, over: [] };
    expect(said("lifeUsed", { ...straight, equivalentTurns: band(0, 0) }).slice(1)).toEqual([
      ["Equivalent reference turns", "0"],
      ["Turns, net", "100"],
    ]);
  });

  it("is which instruments fit a piece, and why one can't", () => {
    const output = {
      ...told,
      candidates: [
        { name: "25/.06", misfitSd: 0.23, consistent: true, compared: [] },
        { name: "08/.02", consistent: false, compared: [], impossible: "it is shorter than the piece" },
      ],
    };
    expect(said("fit", output)).toEqual([
      ["Instruments that fit the piece", "1 of 2"],
      ["25/.06", "0.2 standard deviations off"],
      ["08/.02", "It is shorter than the piece"],
    ]);
  });

  const broken = (means: readonly number[], half: number) => ({
    explanations: (["torsionalOverload", "bendingFatigue", "flawOrJoint"] as const).map((name, at) => {
      const mean = means[at] ?? 0;
      const counted = name === "flawOrJoint" ? {} : { n: 44, N: 79 };
      const interval = { low: mean - half, high: mean + half, level: 0.95 };
      return {
        ...{ name, predictedFromTipMm: null, places: [], likelihood: 1 },
        ...{ prior: { mean: 0.3, source: "", ...counted }, posterior: { mean, interval } },
      };
    }),
    ...{ weighsMost: "the tip was not bound.", wouldDecide: [], facts: [], priors: [], sensitivity: [], shifts: [] },
    ...{ atMiddle: { bendingFatigue: 0.4, torsionalOverload: 0.4, flawOrJoint: 0.2 }, ...told },
  });

  it("is what a break is most consistent with, its prior counted or assumed, and whether that decides", () => {
    expect(said("fracture", broken([0.27, 0.69, 0.04], 0.25))).toEqual([
      ["Most consistent with", `bending fatigue, 69${thin}%`, "44\u201394"],
      ["The intervals overlap", "the facts do not decide"],
      ["Bending fatigue, 44 of 79 in series", `69${thin}%`, "44\u201394"],
      ["Torsional overload, 44 of 79 in series", `27${thin}%`, "2.0\u201352"],
      ["A flaw or joint, its share assumed", `4.0${thin}%`, "0\u201329"],
      ["Weighs most", "The tip was not bound."],
    ]);
    expect(said("fracture", broken([0.1, 0.85, 0.05], 0.05))[1]?.[0]).toBe("Bending fatigue, 44 of 79 in series");
  });

  it("is nothing for an older form or a refusal", () => {
    for (const topic of ["instrument", "lifeUsed", "fit", "fracture", "removal"]) {
      expect(said(topic, undefined)).toEqual([]);
      expect(said(topic, { turns: 3 })).toEqual([]);
    }
  });
});

const part = (kind: string, id: string, body: object): Part =>
  ({ id: partId(id), kind, revision: 1, body }) as unknown as Part;
const parts = [
  part("visit", "visit-1", {
    on: "2024-03-05",
    instruments: [{ canal: "MB1", size: 25, taper: 0.06, file: { id: "file-7", label: "25/.06 B" } }],
  }),
  part("mishap", "mishap-1", { on: "2024-03-05", what: "separatedInstrument", canal: "MB1" }),
  part("removal", "removal-1", { on: "2024-03-06", mishap: "mishap-1" }),
];
const named = (subject: string) => {
  const entry = { subject, topic: subject.split(" ")[0] ?? "" };
  return [entryTitle(entry, parts), entrySubject(entry, parts).film];
};

describe("what such an entry is called", () => {
  it("says instrument, canal and visit", () => {
    const visit = "instruments of 5 Mar 2024";
    expect(named("bend of visit-1 MB1 25/.06 (2)")).toEqual(["25/.06 (2) in MB1: largest strain", visit]);
    expect(named("instrument of visit-1 25/v")).toEqual(["25/v: diameters", visit]);
    expect(named("lifeUsed of visit-1 25/.06 (2)")).toEqual(["25/.06 (2): life used", visit]);
  });

  it("says the counted file as the clinic marks it", () => {
    expect(named("lifeUsed of file file-7")).toEqual(["File 25/.06 B: life used", "counted files"]);
    expect(named("lifeUsed of file file-8")).toEqual(["File file-8: life used", "counted files"]);
  });

  it("stands on the day of the break, the weighing of its removal as well", () => {
    const broke = "broken instrument of 5 Mar 2024";
    expect(named("fracture of mishap-1")).toEqual(["MB1: how it broke", broke]);
    expect(named("fit of mishap-1")).toEqual(["MB1: instruments that fit the piece", broke]);
    expect(named("removal of removal-1")).toEqual(["MB1: its removal weighed", broke]);
    expect(named("bend of mishap-gone")).toEqual(["Largest strain", ""]);
  });
});
