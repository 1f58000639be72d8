import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { diagnosisOf, healthy, type Sheet, sheetOf } from "../../../test/diagnosis-sheet.ts";
import { vignettes } from "../../../test/diagnosis-vignettes.ts";

const sheets = [...vignettes.map(({ input }) => input), healthy];
const anySheet = fc.constantFrom(...sheets);

describe("diagnosis C9: what can't matter changes nothing", () => {
  const many = sheetOf(
    { cold: { reply: "heightened", lingersSeconds: 20 }, percussion: "slight" },
    {
      history: { painLike: ["sinus", "muscle", "joint"], painToCold: "yes" },
      seen: { swelling: "extraoral", swellingAt: ["neck", "cheek", "floorOfMouth"] },
      existing: [
        { canal: "MB", is: "untouched" },
        { canal: "ML", is: "opened" },
        { canal: "D", is: "filled" },
      ],
    },
  );
  const controls = ["35", "37", "46"].map((tooth, at) => ({
    ...{ tooth, role: "control" as const, cold: { reply: at === 1 ? ("none" as const) : ("normal" as const) } },
    percussion: "slight" as const,
  }));
  const shuffled = <T>(list: readonly T[]) => fc.shuffledSubarray([...list], { minLength: list.length });

  it("the order of teeth, canals, places and likenesses, and of the fields", () => {
    const whole = { ...many, teeth: [...many.teeth, ...controls] };
    const expected = diagnosisOf(whole);
    const orders = fc.tuple(
      shuffled(whole.teeth),
      shuffled(many.existing ?? []),
      shuffled(many.history?.painLike ?? []),
      shuffled(many.seen?.swellingAt ?? []),
    );
    fc.assert(
      fc.property(orders, ([teeth, existing, painLike, swellingAt]) => {
        const history = { ...many.history, painLike };
        const turned = { existing, seen: { ...many.seen, swellingAt }, history, teeth };
        expect(diagnosisOf(turned)).toEqual(expected);
      }),
      { numRuns: 40 },
    );
  });

  it("a finding that no row looks at", () => {
    const irrelevant = fc.record({
      mobility: fc.constantFrom(0 as const, 1 as const, 3 as const, "notDone" as const),
      lucencyMm: fc.integer({ min: 0, max: 40 }),
      restoration: fc.constantFrom("", "amalgam", "crown"),
      recentOnset: fc.constantFrom("yes" as const, "no" as const),
    });
    fc.assert(
      fc.property(anySheet, irrelevant, (sheet, { mobility, lucencyMm, restoration, recentOnset }) => {
        const more = {
          ...sheet,
          teeth: sheet.teeth.map((one) => ({ ...one, mobility })),
          history: { ...sheet.history, recentOnset },
          seen: { ...sheet.seen, restoration },
          onFilm: { ...sheet.onFilm, lucencyMm },
        };
        expect(diagnosisOf(more)).toEqual(diagnosisOf(sheet));
      }),
      { numRuns: 60 },
    );
  });
});

describe("diagnosis C9: a test that was not done never counts as negative", () => {
  const groups = ["history", "seen", "onFilm"] as const;
  const fields = groups.flatMap((group) => Object.keys(healthy[group] ?? {}).map((field) => ({ group, field })));
  const tests = Object.keys(healthy.teeth[0] ?? {}).filter((field) => !["tooth", "role"].includes(field));

  it("leaving out any part of a healthy tooth's findings never gives a disease", () => {
    const left = fc.tuple(fc.subarray(fields), fc.subarray(tests), fc.boolean());
    fc.assert(
      fc.property(left, ([out, undone, withControl]) => {
        const { pulpal, apical, urgent, source } = diagnosisOf(without(out, undone, withControl));
        expect(["Normal pulp", "not determined"]).toContain(pulpal.term);
        expect(["Normal apical tissues", "not determined"]).toContain(apical.term);
        expect([urgent, source]).toEqual([[], "this tooth"]);
        if (tests.every((test) => undone.includes(test))) expect(pulpal.status).toBe("not determined");
      }),
      { numRuns: 80 },
    );
  });

  it("leaving out any one finding of a published case never determines another term", () => {
    for (const { name, input } of vignettes) {
      const whole = diagnosisOf(input);
      for (const group of groups)
        for (const field of Object.keys(input[group] ?? {})) {
          const less = { ...input, [group]: { ...input[group], [field]: undefined } };
          for (const axis of ["pulpal", "apical"] as const) {
            const { term, status } = diagnosisOf(less)[axis];
            if (status === "determined") expect([name, field, term]).toEqual([name, field, whole[axis].term]);
          }
        }
    }
  });

  it("with everything done it is determined on both axes, and nothing is missing", () => {
    const { pulpal, apical, cautions, notComputed, asks, contradictions } = diagnosisOf(healthy);
    expect([pulpal.term, pulpal.status, apical.term, apical.status]).toEqual([
      ...["Normal pulp", "determined"],
      ...["Normal apical tissues", "determined"],
    ]);
    expect([pulpal.alternatives, apical.alternatives, cautions, notComputed, asks, contradictions].flat()).toEqual([]);
  });

  function without(
    out: readonly { readonly group: (typeof groups)[number]; readonly field: string }[],
    undone: readonly string[],
    withControl: boolean,
  ) {
    const kept = (group: (typeof groups)[number]): object =>
      Object.fromEntries(
        Object.entries(healthy[group] ?? {}).filter(
          ([name]) => !out.some((one) => one.group === group && one.field === name),
        ),
      );
    const [tooth, ...controls] = healthy.teeth;
    const left = Object.fromEntries(Object.entries(tooth ?? {}).filter(([name]) => !undone.includes(name)));
    return {
      ...{ history: kept("history"), seen: kept("seen"), onFilm: kept("onFilm") },
      teeth: [left, ...(withControl ? controls : [])],
    };
  }
});

describe("diagnosis C1: source and urgency come before both axes", () => {
  const pulpitis = { cold: { reply: "heightened" as const, lingersSeconds: 40 }, percussion: "painful" as const };
  const looked: Sheet = { seen: { swelling: "none", sinusTract: "none" } };

  it("what rests on pain is only possible while the pain is not this tooth's", () => {
    const own = diagnosisOf(sheetOf(pulpitis, looked));
    expect([own.source, own.pulpal.status, own.apical.status]).toEqual(["this tooth", "determined", "determined"]);
    const other = diagnosisOf(sheetOf(pulpitis, { ...looked, history: { painLike: ["nerve"] } }));
    expect(other.source).toBe("not odontogenic suspected");
    expect([other.pulpal.status, other.apical.status]).toEqual(["possible", "possible"]);
    expect(other.pulpal.against.map(({ row }) => row)).toContain("S1");
  });

  it("what does not rest on pain stays determined", () => {
    const filled: Sheet = { existing: [{ canal: "D", is: "filled" }], history: { painLike: ["muscle"] } };
    expect(diagnosisOf(sheetOf({}, filled)).pulpal).toMatchObject({ term: "Previously treated", status: "determined" });
  });

  it("the first of several sources is the answer, and all are told", () => {
    const both: Sheet = { history: { painLike: ["joint"], reproduced: "byNoTest" } };
    const { source, sourceBecause } = diagnosisOf(sheetOf({}, both));
    expect(source).toBe("not odontogenic suspected");
    expect(sourceBecause.map(({ row }) => row)).toEqual(["S1", "S4"]);
  });

  it("pain that every test leaves unprovoked is not reproduced, without anybody saying so", () => {
    const [tooth, ...controls] = healthy.teeth;
    const told = { ...healthy, history: { ...healthy.history, spontaneousPain: "yes" as const } };
    expect(diagnosisOf(told)).toMatchObject({ source: "not reproduced", pulpal: { status: "possible" } });
    for (const found of [
      { bite: "slight" },
      { bite: "notDone" },
      { cold: { reply: "heightened" } },
      { cold: { reply: "normal", lingersSeconds: 3 } },
    ])
      expect(diagnosisOf({ ...told, teeth: [{ ...tooth, ...found }, ...controls] }).source).toBe("this tooth");
    expect(diagnosisOf({ ...told, history: { ...told.history, reproduced: "byTests" } }).source).toBe("this tooth");
    const byHeat = { ...told, history: { ...told.history, painToHeat: "yes" as const } };
    const unheated = { ...tooth, heat: { reply: "notDone" as const } };
    expect(diagnosisOf({ ...byHeat, teeth: [unheated, ...controls] }).source).toBe("this tooth");
  });
});
