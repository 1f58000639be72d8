import { describe, expect, it } from "vitest";
import { z } from "zod";
import { part, sampleParts } from "../../../test/sample-case.ts";
import { difficultyOutput } from "../../core/diagnosis/difficulty/difficulty-output.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { BodyOf, Part } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { deriveLedger } from "../derive-ledger.ts";
import { canalFacts } from "../difficulty-facts/canal-facts.ts";
import { calibrateBinding } from "./calibrate.ts";
import { canalsBinding } from "./canals.ts";
import { curvatureBinding } from "./curvature.ts";
import { difficultyBinding } from "./difficulty.ts";
import { fragmentOnFilmBinding } from "./fragment-on-film.ts";

type Findings = BodyOf<"findings">;
type Mishap = BodyOf<"mishap">;
const asked = "notAsked" as const;

const sheet = (id: string, takenOn: string, change: { seen?: object; onFilm?: object } = {}): Part => {
  const seen = { swelling: "none", sinusTract: "none", caries: "none", crack: "none", restoration: "", fever: "no" };
  const onFilm = {
    ...{ ligament: "notDone", lamina: "notDone", lucency: "notDone", sclerosis: asked, resorption: "notDone" },
    ...{ apex: "notDone", calcified: asked, earlierFilling: "notDone" },
  };
  const touch = { percussion: "notDone", palpation: "notDone", bite: "notDone" } as const;
  const tooth = { cold: { reply: "notDone" }, heat: { reply: "notDone" }, electric: "notDone" } as const;
  return part("findings", id, {
    ...{ takenOn, note: "" },
    history: {
      ...{ spontaneousPain: asked, painToCold: asked, painToHeat: asked, relievedByCold: asked },
      ...{ painOnBiting: asked, trauma: asked, recentOnset: asked },
    },
    teeth: [{ tooth: "26", role: "tooth", ...tooth, ...touch, mobility: "notDone", probingMm: {} }],
    seen: { ...seen, ...change.seen } as Findings["seen"],
    onFilm: { ...onFilm, ...change.onFilm } as Findings["onFilm"],
  });
};

const mishap = (id: string, change: Partial<Mishap>): Part =>
  part("mishap", id, {
    ...{ on: "2024-03-20", what: "other", third: "notRecorded", bend: "notRecorded", handled: "left" },
    ...{ toldPatient: "told", story: "" },
    ...change,
  });

const among = [...[canalsBinding, calibrateBinding, curvatureBinding, fragmentOnFilmBinding], difficultyBinding];
/** What was worked out once is kept, as the store keeps it. */
const kept = new Map<string, LedgerEntry>();
function ledgerOf(parts: readonly Part[]): LedgerEntry[] {
  const known = (id: string) => kept.get(id);
  const source = { caseId: "case-sample", settings: firstSettings, at: "2024-10-01T10:00:00Z", known };
  const entries = deriveLedger({ ...source, parts }, among);
  for (const entry of entries) kept.set(entry.id, entry);
  return entries;
}
const entryOf = (parts: readonly Part[]): LedgerEntry => {
  const found = ledgerOf(parts).find(({ topic }) => topic === "difficulty");
  if (found === undefined) throw new Error("difficulty was not asked");
  expect(found.refused).toBeUndefined();
  return found;
};
const inputOf = (...parts: readonly Part[]) => entryOf([...sampleParts(), ...parts]).input;
const recordsOf = (...parts: readonly Part[]) =>
  entryOf([...sampleParts(), ...parts]).inputPaths.map(({ input, record }) => `${input} ${record}`);

describe("the difficulty of a case", () => {
  it("is asked of a plan by what was known on its day, and of the case by what came later too", () => {
    const plan = (madeOn: string) =>
      part("plan", "plan-1", { madeOn, options: [], chosen: "retreat", because: "", risksNamed: [] });
    const piece = mishap("mishap-1", { what: "separatedInstrument", canal: "MB1" });
    const late = sheet("f-2", "2024-03-20", { seen: { gag: "yes" } });
    const parts = [...sampleParts(), sheet("f-1", "2024-03-03", { seen: { gag: "no" } }), late, piece];
    const lists = (madeOn: string) => ledgerOf([...parts, plan(madeOn)]).filter(({ topic }) => topic === "difficulty");
    const [then, now] = lists("2024-03-03");
    // The sample's film and its first visit, with a working length, are of the day after.
    const names = ["MB1", "MB2", "DB", "P"].map((name) => ({ name }));
    expect(then?.subject).toBe("difficulty of plan-1");
    expect(then?.input).toEqual({
      ...{ tooth: "26", gag: false, earlierFilling: { present: true }, extraRoot: "none", extraCanal: "none" },
      canals: names,
    });
    expect(now).toMatchObject({ subject: "difficulty of about", input: { gag: true, fragments: [{ canal: "MB1" }] } });
    expect(lists("2030-01-01").map(({ subject }) => subject)).toEqual(["difficulty of plan-1"]);
  });

  it("is asked of the case, from the roots, the traced canal and its length, each with its place", () => {
    const { subject, input, inputPaths, output } = entryOf(sampleParts());
    expect(subject).toBe("difficulty of about");
    // The sample: 10 mm straight, then 60 degrees on a radius of 5 mm: 15.236 mm, on one film.
    expect(input).toMatchObject({
      ...{ tooth: "26", extraRoot: "none", extraCanal: "none", earlierFilling: { present: true } },
      canals: [
        {
          ...{ name: "MB1", fromOneFilm: true },
          deflectionDeg: expect.closeTo(60, 0),
          radiusMm: expect.closeTo(5, 1),
          lengthMm: expect.closeTo(15.236, 1),
        },
        { name: "MB2" },
        { name: "DB" },
        { name: "P" },
      ],
    });
    expect(input).not.toHaveProperty("canals.0.sCurve");
    const records = inputPaths.map((path) => `${path.input} ${path.record}`);
    expect(records.some((one) => /^canals\[0\]\.lengthMm ledger\/[0-9a-f]{64}\/lengthMm$/.test(one))).toBe(true);
    expect(records).toContain("earlierFilling roots/filledBefore");
    expect(records.some((one) => /^canals\[0\]\.deflectionDeg ledger\/[0-9a-f]{64}\/pruettDeg$/.test(one))).toBe(true);
    expect(records.some((one) => /^extraCanal ledger\/[0-9a-f]{64}\/canalCount$/.test(one))).toBe(true);
    const said = difficultyOutput.parse(output).facts.map(({ says }) => says);
    expect(said).toContain("MB1 turns by at least 60° on one film; 30° above 30°");
  });

  it("is not asked without a case, and asks nothing of the record that nobody wrote", () => {
    expect(
      ledgerOf(sampleParts().filter(({ kind }) => kind !== "case")).some(({ topic }) => topic === "difficulty"),
    ).toBe(false);
    const bare = sampleParts().filter(({ kind }) => kind === "case");
    const { input, output } = entryOf(bare);
    expect(input).toEqual({ tooth: "26" });
    expect(difficultyOutput.parse(output).facts).toEqual([]);
  });

  it("takes each fact of a sheet by the last sheet that holds it", () => {
    const first = sheet("sheet-1", "2024-03-04", {
      seen: { post: "yes", rotationDeg: 20, mouthOpeningMm: 30, gag: "no" },
      onFilm: { apex: "closed", calcified: "yes", resorption: "none" },
    });
    const second = sheet("sheet-2", "2024-06-04", {
      seen: { mouthOpeningMm: 42, tiltDeg: 5, post: asked },
      onFilm: { apex: "open", earlierFilling: "present", earlierFillingEndMm: -0.5 },
    });
    expect(inputOf(second, first)).toMatchObject({
      ...{ post: true, gag: false, rotationDeg: 20, tiltDeg: 5, mouthOpeningMm: 42 },
      ...{ openApex: true, calcified: true, resorption: "none", earlierFilling: { present: true, endMm: -0.5 } },
    });
    expect(recordsOf(first, second)).toEqual(
      expect.arrayContaining([
        ...["mouthOpeningMm sheet-2/seen/mouthOpeningMm", "post sheet-1/seen/post", "openApex sheet-2/onFilm/apex"],
        "earlierFilling.endMm sheet-2/onFilm/earlierFillingEndMm",
      ]),
    );
  });

  it("what was not done or not asked is left out", () => {
    const bare = sampleParts().filter(({ kind }) => kind === "case");
    const { input } = entryOf([...bare, sheet("sheet-1", "2024-03-04", { seen: { gag: asked } })]);
    expect(input).toEqual({ tooth: "26" });
  });

  it("a sheet that says there is no earlier filling stands above the canals that came filled", () => {
    const none = sheet("sheet-1", "2024-03-04", { onFilm: { earlierFilling: "none", earlierFillingEndMm: 2 } });
    expect(inputOf(none)).toMatchObject({ earlierFilling: { present: false } });
    expect(inputOf(none)).not.toHaveProperty("earlierFilling.endMm");
  });

  it("takes the last physical status class that was recorded", () => {
    const history = (id: string, takenOn: string, physicalStatusClass?: number): Part =>
      part("medicalHistory", id, {
        ...{ takenOn, nothingToNote: false, flags: [], medicines: [], note: "" },
        ...(physicalStatusClass === undefined ? {} : { physicalStatusClass }),
      });
    const [a, b, c] = [
      history("his-1", "2024-01-01", 3),
      history("his-2", "2024-02-01", 2),
      history("his-3", "2024-03-01"),
    ];
    expect(inputOf(b, a, c)).toMatchObject({ physicalStatusClass: 2 });
    expect(recordsOf(a, b, c)).toContain("physicalStatusClass his-2/physicalStatusClass");
  });

  it("names an extra root and more canals than usual", () => {
    const about = sampleParts().find((one) => one.kind === "case");
    if (about?.kind !== "case") throw new Error("the sample has a case");
    const lower = part("case", "about", { ...about.body, tooth: "46" });
    const roots = part("anatomy", "roots", {
      roots: [
        { name: "M", levels: [2], orifices: ["MB", "ML"] },
        { name: "DB", side: "buccal", levels: [1] },
        { name: "DL", side: "lingual", levels: [1] },
      ],
      foundBy: ["angledFilm"],
    });
    const { input } = entryOf([lower, roots]);
    expect(input).toMatchObject({ extraRoot: "radix entomolaris", extraCanal: "4 canals, 3 are usual" });
    const sideless = part("anatomy", "roots", {
      ...{
        roots: [
          { name: "M", levels: [1] },
          { name: "D", levels: [1] },
          { name: "X", levels: [1] },
        ],
        foundBy: [],
      },
    });
    expect(entryOf([lower, sideless]).input).not.toHaveProperty("extraRoot");
  });

  it("a broken instrument counts until it is removed; ledges and perforations stay", () => {
    const separated = { what: "separatedInstrument", canal: "MB1", third: "apical", bend: "beyond" } as const;
    expect(inputOf(mishap("mis-1", { ...separated, handled: "bypassed" }))).toMatchObject({
      fragments: [{ canal: "MB1", third: "apical", beyondBend: true }],
    });
    expect(inputOf(mishap("mis-1", { ...separated, handled: "removed" }))).not.toHaveProperty("fragments");
    expect(inputOf(mishap("mis-1", { what: "separatedInstrument" }))).toMatchObject({ fragments: [{}] });
    expect(inputOf(mishap("mis-1", { ...separated, bend: "before" }))).toMatchObject({
      fragments: [{ beyondBend: false }],
    });
    const both = [
      mishap("mis-1", { what: "ledge", canal: "MB1", handled: "bypassed" }),
      mishap("mis-2", { what: "perforation", handled: "repaired" }),
    ];
    expect(inputOf(...both)).toMatchObject({ alteredCourses: [{ is: "ledge", canal: "MB1" }], perforation: true });
    expect(recordsOf(...both)).toEqual(
      expect.arrayContaining(["alteredCourses[0] mis-1/what", "perforation mis-2/what"]),
    );
    expect(inputOf(mishap("mis-1", { what: "irrigantExtrusion" }))).not.toHaveProperty("alteredCourses");
  });

  it("a piece drawn on a film counts where no mishap tells of its canal", () => {
    const drawn = part("mark", "piece-1", {
      ...{ shape: "fragment", film: "film-1", canal: "MB1" },
      anchors: [
        [345, 380],
        [350, 386],
      ],
      points: [
        [345, 380],
        [350, 386],
      ],
    });
    const fromOrifice = sampleParts().map((one) =>
      one.kind === "mark" && one.body.shape === "trace" ? part("mark", one.id, { ...one.body, from: "orifice" }) : one,
    );
    const { input, inputPaths } = entryOf([...fromOrifice, drawn]);
    expect(input).toMatchObject({ fragments: [{ canal: "MB1", third: "apical" }] });
    expect(inputPaths).toContainEqual({ input: "fragments[0]", record: "piece-1/points" });
    // Counted from a cusp a course has no thirds: the piece is there, its third is not told.
    expect(inputOf(drawn)).toMatchObject({ fragments: [{ canal: "MB1" }] });
    const told = mishap("mis-1", { what: "separatedInstrument", canal: "MB1", third: "middle" });
    expect(inputOf(drawn, told)).toMatchObject({ fragments: [{ canal: "MB1", third: "middle" }] });
    expect(inputOf(drawn, mishap("mis-1", { what: "separatedInstrument", canal: "P" }))).toMatchObject({
      fragments: [{ canal: "P" }, { canal: "MB1" }],
    });
  });

  it("takes a working length of a visit where no film gives one", () => {
    const untraced = sampleParts().filter(({ kind }) => kind !== "mark");
    const fromOrifice = sampleParts().map((one) =>
      one.kind === "mark" && one.body.shape === "trace" ? part("mark", one.id, { ...one.body, from: "orifice" }) : one,
    );
    expect(entryOf(fromOrifice).input).toMatchObject({
      canals: [{ lengthMm: 14.7, deflectionDeg: expect.any(Number) }, {}, {}, {}],
    });
    const { input, inputPaths } = entryOf(untraced);
    expect(input).toMatchObject({ canals: [{ name: "MB1", lengthMm: 14.7 }, {}, {}, {}] });
    expect(inputPaths).toContainEqual({ input: "canals[0].lengthMm", record: "visit-2/canals/0/workingLengthMm" });
  });

  it("is a new entry when a fact changes, and the same while none does", () => {
    const [one, same] = [entryOf(sampleParts()), entryOf(sampleParts("other words"))];
    expect(same.id).toBe(one.id);
    expect(entryOf([...sampleParts(), mishap("mis-1", { what: "perforation" })]).id).not.toBe(one.id);
    expect(
      z
        .string()
        .regex(/^[0-9a-f]{64}$/)
        .parse(one.id),
    ).toBe(one.id);
  });
});

describe("the bend of a canal", () => {
  const film = (id: string, horizontalAngleDeg: number): Part => {
    const first = sampleParts().find((one) => one.kind === "film");
    if (first?.kind !== "film") throw new Error("the sample has a film");
    return part("film", id, { ...first.body, purpose: "angled", horizontalAngleDeg, receptor: "turnsWithBeam" });
  };
  const trace = (id: string, on: string, kind: "canal" | "filledCanal" = "canal"): Part => {
    const first = sampleParts().find((one) => one.kind === "mark");
    if (first?.kind !== "mark" || first.body.shape !== "trace") throw new Error("the sample has a trace");
    return part("mark", id, { ...first.body, film: on, kind });
  };
  const parts = [film("film-a", 0), film("film-b", 25), trace("trace-a", "film-a"), trace("trace-b", "film-b")];
  const bend = (angleDeg: number, side: string) => ({ angleDeg, side });
  const seen = (pruettDeg: number, bends: object[], more: object = {}) => ({
    pruettDeg,
    bends,
    intervals: {},
    ...more,
  });
  const interval = { low: 30, high: 50, level: 0.95 };
  const told = (outputs: Readonly<Record<string, unknown>>, some: readonly Part[] = parts) => {
    const earlier = (subject: string) => {
      const found = Object.entries(outputs).find(([start]) => subject.startsWith(start));
      return found === undefined ? undefined : { entryId: found[0], output: found[1] };
    };
    const [canals] = canalFacts({ parts: some, settings: firstSettings, earlier });
    return { first: z.array(z.looseObject({})).parse(canals?.value)[0], paths: canals?.paths ?? [] };
  };

  it("is that in space where two films give one, with its interval", () => {
    const curvature = seen(41, [bend(41, "reference")], { pruettRadiusMm: 4, intervals: { pruettDeg: interval } });
    const { first, paths } = told({ "twoView of MB1": { curvature }, "curvature of": seen(60, []) });
    expect(first).toEqual({
      ...{
        name: "MB1",
        deflectionDeg: 41,
        deflectionInterval: interval,
        radiusMm: 4,
        sCurve: false,
        fromOneFilm: false,
      },
    });
    expect(paths).toContainEqual({
      input: "canals[0].radiusMm",
      record: "ledger/twoView of MB1/curvature.pruettRadiusMm",
    });
  });

  it("is else that of the film on which it turns most; without a course in space that is one film alone", () => {
    const outputs = {
      "curvature of trace-a": seen(20, []),
      "curvature of trace-b": seen(33, []),
      "twoView of MB1": {},
    };
    expect(told(outputs).first).toEqual({ name: "MB1", deflectionDeg: 33, fromOneFilm: true });
  });

  it("runs to two sides where bends to both were seen; one film that shows none tells nothing", () => {
    const on = (...bends: object[]) => told({ "curvature of trace-a": seen(30, bends) }).first?.sCurve;
    expect(on(bend(30, "left"), bend(12, "right"))).toBe(true);
    expect(on(bend(30, "left"), bend(4, "right"))).toBeUndefined();
    expect(on(bend(30, "left"), bend(12, "left"))).toBeUndefined();
    const inSpace = (side: string) =>
      told({ "twoView of": { curvature: seen(30, [bend(30, "reference"), bend(12, side)]) } }).first?.sCurve;
    expect([inSpace("opposite"), inSpace("same")]).toEqual([true, false]);
  });

  it("is not read off a filling", () => {
    const filled = [film("film-a", 0), trace("trace-a", "film-a", "filledCanal")];
    expect(canalFacts({ parts: filled, settings: firstSettings, earlier: () => undefined })).toEqual([]);
  });
});
