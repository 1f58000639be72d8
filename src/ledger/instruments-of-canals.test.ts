import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../test/sample-case.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { BodyOf, Part } from "../record/parts.ts";
import { firstSettings } from "../record/settings.ts";
import { bendTold } from "./bend-told.ts";
import { deriveLedger } from "./derive-ledger.ts";
import { instrumentsOfCanals, mostBent } from "./instruments-of-canals.ts";
import { lengthOfCourse, numberAtCourse, numberAtShare, numberNearest, placeNumbered } from "./place-on-instrument.ts";
import { bendAbout, bendsOnFilm, strainOnFilms } from "./strain-on-film.ts";

type Use = BodyOf<"visit">["instruments"][number];
const use = (more: Partial<Use> = {}): Use => ({
  ...{ canal: "MB1", size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous", rpm: 300, seconds: 30 },
  ...{ depthMm: 15, depthFrom: "referencePoint", ...more },
});

/** The sample with instruments in its first visit, and with what else is asked. */
const partsWith = (instruments: Use[], ...more: Part[]): Part[] => {
  const visits = sampleParts().filter(({ kind }) => kind === "visit");
  return [
    ...sampleParts().map((one) =>
      one.kind === "visit" && one.id === visits[0]?.id ? { ...one, body: { ...one.body, instruments } } : one,
    ),
    ...more,
  ];
};
const ledgerOf = (parts: Part[]): LedgerEntry[] =>
  deriveLedger({
    ...{ caseId: "case-sample", settings: firstSettings, at: "2024-10-01T10:00:00Z" },
    ...{ parts, known: () => undefined },
  });
const read = (instruments: Use[], ...more: Part[]) => {
  const parts = partsWith(instruments, ...more);
  const ledger = ledgerOf(parts);
  return { parts, ledger, canals: instrumentsOfCanals(parts, ledger) };
};

const broke = (visit: string): Part =>
  part("mishap", "mishap-1", {
    ...{
      what: "separatedInstrument",
      on: "2024-04-02",
      visit,
      canal: "MB1",
      story: "",
      third: "apical",
      bend: "in",
      handled: "bypassed",
      toldPatient: "told",
    },
    instrument: { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" },
    separated: {
      ...{ tipDepthMm: 15, depthFrom: "referencePoint", signs: [], headSeen: "hidden", stage: "cleaned" },
      ...{ tipBound: "no", stoppedAtTorqueLimit: "no" },
    },
  });

describe("what went into each canal", () => {
  it("stands canal by canal with depth, time and turns, and what the ledger says of it", () => {
    const { canals } = read([use(), use({ size: 10, taper: 0.02, canal: "P", movement: "hand" })]);
    expect(canals.map(({ canal }) => canal)).toEqual(["MB1", "P"]);
    const all = canals.flatMap(({ visits }) => visits.flatMap(({ instruments }) => instruments));
    expect(all.map(({ byHand }) => byHand)).toEqual([false, true]);
    const [used] = canals[0]?.visits[0]?.instruments ?? [];
    expect(used).toMatchObject({ name: "25/.06", says: "nickel-titanium, continuous", broke: false });
    // 300 turns a minute for half a minute.
    expect(used?.uses).toMatchObject([{ depthMm: 15, depthFrom: "referencePoint", seconds: 30, turns: 150 }]);
    expect(used?.diameters[0]).toMatchObject({ atMm: 0, diameterMm: 0.25 });
    // The bend of the sample begins 10 mm down, 5 mm from this tip: 0.55 mm on a radius of 5 mm is 5.5 %.
    expect(bendTold(used?.bend)?.peakStrain).toBeCloseTo(0.055, 2);
    expect(used?.life?.output).toBeDefined();
  });

  it("leaves turns open where no time is said, and keeps the refusal that says what is missing", () => {
    const { canals } = read([use({ seconds: undefined, depthMm: undefined })]);
    const [used] = canals[0]?.visits[0]?.instruments ?? [];
    expect(used?.uses[0]?.turns).toBeUndefined();
    expect(used?.bend?.refused?.join()).toContain("say how deep its tip went");
    expect(used?.life?.refused?.join()).toContain("say the seconds");
  });

  it("takes the life of a counted file over the whole case, and names the file", () => {
    const { canals } = read([use({ file: { id: "file-7", label: "B7" } })]);
    const [used] = canals[0]?.visits[0]?.instruments ?? [];
    expect(used?.life?.subject).toBe("lifeUsed of file file-7");
    expect(used?.uses[0]?.file).toBe("B7");
  });

  it("tells one that broke once more, as it broke", () => {
    const visit = sampleParts().find(({ kind }) => kind === "visit")?.id ?? "";
    const { canals } = read([use()], broke(visit));
    const all = canals[0]?.visits[0]?.instruments ?? [];
    expect(all.map(({ name, broke: did }) => [name, did])).toEqual([
      ["25/.06", false],
      ["25/.06", true],
    ]);
    expect(all[1]).toMatchObject({ key: "mishap-1", uses: [{ depthMm: 15 }] });
    expect(all[1]?.bend?.subject).toBe("bend of mishap-1");
    expect(all[1]?.diameters.length).toBeGreaterThan(2);
  });

  it("has none for rows without a canal, and shows first what was bent most", () => {
    const { canals } = read([use({ canal: undefined }), use({ size: 15, taper: 0.02 }), use()]);
    expect(canals).toHaveLength(1);
    expect(canals[0] && mostBent(canals[0])?.name).toBe("25/.06");
    const unknown = read([use({ depthMm: undefined }), use({ size: 30, depthMm: undefined })]).canals[0];
    expect(unknown && mostBent(unknown)?.name).toBe("30/.06");
  });
});

describe("a place along a seated instrument", () => {
  const { parts, ledger, canals } = read([use()]);
  const [used] = canals[0]?.visits[0]?.instruments ?? [];
  const told = bendTold(used?.bend);
  if (told === undefined) throw new Error("no bend is told");

  it("counts from the tip and from where the course begins, and stays on the instrument", () => {
    const last = told.profile.length - 1;
    const at = placeNumbered(told, numberNearest(told, 5));
    expect((at?.fromTipMm ?? 0) + (at?.fromStartMm ?? 0)).toBeCloseTo(15, 9);
    expect(placeNumbered(told, -3)?.fromTipMm).toBe(0);
    expect(placeNumbered(told, last + 9)?.fromTipMm).toBe(told.profile[last]?.fromTipMm);
    expect([numberAtShare(told, 0), numberAtShare(told, 1)]).toEqual([0, last]);
  });

  it("is found by the way along the canal, whose length is that of its points", () => {
    // 10 mm and an arc of 5 mm by 60 degrees.
    expect(lengthOfCourse(told)).toBeCloseTo(10 + (5 * Math.PI) / 3, 2);
    const half = placeNumbered(told, numberAtCourse(told, 10 / lengthOfCourse(told)));
    expect(half?.fromTipMm).toBeCloseTo(5, 0);
    expect(numberAtCourse(told, 1)).toBe(0);
  });

  it("lies on the film where the canal was traced", () => {
    const [on] = strainOnFilms(told, "2024-03-04", { parts, ledger });
    // 10 mm down the sample's canal, at 0.05 mm a pixel from (300, 100).
    const [u = 0, v = 0] = on?.at(5) ?? [];
    expect(Math.hypot(u - 300, v - 300)).toBeLessThan(0.5);
    expect(on?.seated[0]?.at[1]).toBeGreaterThan(v);
    expect(on?.byShare).toBe(false);
    expect(on?.tightest?.[1]).toBeGreaterThan(290);
  });

  it("is on no film once its trace is gone", () => {
    const without = parts.filter(({ kind }) => kind !== "mark");
    expect(strainOnFilms(told, "2024-03-04", { parts: without, ledger })).toEqual([]);
  });

  it("is offered on its own film alone, by instrument, canal and day", () => {
    const film = parts.find(({ kind }) => kind === "film")?.id ?? "";
    const [bend] = bendsOnFilm(film, { parts, ledger });
    expect(bend && bendAbout(bend.entry, parts)).toMatchObject({ name: "25/.06", canal: "MB1", broke: false });
    expect(bendsOnFilm("film-9", { parts, ledger })).toEqual([]);
    expect(bendAbout({ subject: "bend of visit-9 MB1 25/.06" }, parts)).toBeUndefined();
  });
});
