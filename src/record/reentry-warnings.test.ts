import { describe, expect, it } from "vitest";
import { part } from "../../test/sample-case.ts";
import type { BodyOf, Part } from "./parts.ts";
import { reentryWarnings } from "./reentry-warnings.ts";

const mishap = (what: BodyOf<"mishap">["what"], more: Partial<BodyOf<"mishap">> = {}): Part =>
  part("mishap", "mishap-1", {
    ...{ on: "2026-03-02", what, canal: "MB1", third: "apical", bend: "beyond", handled: "left" },
    ...{ toldPatient: "told", story: "" },
    ...more,
  } as BodyOf<"mishap">);
const removal = (is: NonNullable<BodyOf<"removal">["result"]>["is"]): Part =>
  part("removal", "removal-1", {
    ...{ mishap: "mishap-1", on: "2026-03-02", attempts: [] },
    result: { is, on: "2026-03-03", because: "" },
  });
const visit = (more: Partial<BodyOf<"visit">>): Part =>
  part("visit", "visit-1", {
    ...{ on: "2026-03-02", aim: "", holdPoints: [], timeOut: "notDone", historyConfirmed: false },
    ...{ isolation: { rubberDam: "used" }, magnification: "none", anaesthetic: [], canals: [], irrigation: [] },
    ...{ instruments: [], solvent: [], lots: [], films: [], flareUp: "none", told: "", note: "" },
    ...more,
  } as BodyOf<"visit">);
const canal = (name: string, more: object): BodyOf<"visit">["canals"][number] => ({
  ...{ canal: name, state: "filled", patency: "patent", reference: "" },
  ...more,
});
const said = (...parts: Part[]): string[] => reentryWarnings(parts).map(({ says }) => says);

describe("what the record offers as warnings for a later re-entry", () => {
  it("tells of a piece that stays, where, and what came of it last", () => {
    expect(said(mishap("separatedInstrument", { fragmentMm: 3 }))).toEqual([
      "A piece of an instrument, 3 mm long, stays in MB1, apical third, beyond the bend; it was left.",
    ]);
    expect(said(mishap("separatedInstrument"), removal("bypassed"))).toEqual([
      "A piece of an instrument stays in MB1, apical third, beyond the bend; it was bypassed.",
    ]);
  });

  it("is silent about a piece that is out", () => {
    expect(said(mishap("separatedInstrument"), removal("removed"))).toEqual([]);
    expect(said(mishap("separatedInstrument", { handled: "removed" }))).toEqual([]);
  });

  it.each([
    [
      mishap("perforation", {
        handled: "repaired",
        perforation: {
          place: "furcation",
          side: "notKnown",
          bleeding: "no",
          pocket: "no",
          sealedWith: "a hydraulic cement",
        },
      }),
      ["A perforation (floor, into the furcation) was repaired with a hydraulic cement."],
    ],
    [
      mishap("perforation", { handled: "open", third: "notRecorded", bend: "none" }),
      ["A perforation in MB1 is not recorded as repaired."],
    ],
    [
      mishap("ledge", { ledge: { depthMm: 12, wall: "outer", passed: "notPassed" } }),
      ["There is a ledge at 12 mm in MB1, apical third, beyond the bend; it was not passed."],
    ],
    [
      mishap("ledge", { bend: "none" }),
      ["There is a ledge in MB1, apical third; whether it was passed is not recorded."],
    ],
    [
      mishap("block", { bend: "none", block: { by: "dentine", passed: "notTried" } }),
      ["There is a block of packed dentine in MB1, apical third; nobody tried to pass it."],
    ],
    [mishap("block", { block: { by: "dentine", passed: "passed" } }), []],
    [mishap("block", { handled: "removed" }), []],
    [
      mishap("fillingExtrusion", {
        fillingExtrusion: { material: "sealer", beyondMm: 1, near: "nothing", numbness: "no" },
      }),
      ["Filling material (sealer) lies outside the foramen of MB1, 1 mm beyond it."],
    ],
    [
      mishap("missedCanal", { missedCanal: { found: "MB2", foundBy: "", treated: "left" } }),
      ["A canal, MB2, was missed before and is not treated."],
    ],
    [mishap("missedCanal", { missedCanal: { found: "MB2", foundBy: "", treated: "treated" } }), []],
    [mishap("wrongTooth"), []],
  ])("of a mishap tells what stays (%#)", (one, words) => {
    expect(said(one)).toEqual(words);
  });

  it("tells of canals that are blocked or were not found, and of what lies over the orifices", () => {
    const canals = [canal("MB1", { state: "blocked", blockedBy: "a ledge" }), canal("MB2", { state: "notFound" })];
    expect(
      said(visit({ canals: [...canals, canal("P", {})], orificeBarrier: "flowable resin", buildUp: "resin" })),
    ).toEqual([
      "MB1 is blocked: a ledge.",
      "MB2 was not found.",
      "Over the orifices lies a barrier: flowable resin. Whether a solvent takes it is not recorded.",
      "The access is closed with a build-up: resin.",
    ]);
  });

  it("offers nothing of an empty record, and names each of its offers differently", () => {
    expect(reentryWarnings([])).toEqual([]);
    const ids = reentryWarnings([mishap("separatedInstrument"), visit({ orificeBarrier: "resin", buildUp: "resin" })]);
    expect(new Set(ids.map(({ id }) => id)).size).toBe(3);
  });
});
