import { describe, expect, it } from "vitest";
import { diagnosisOf, type Sheet, sheetOf, type Tests } from "../../../test/diagnosis-sheet.ts";
import { Refusal } from "../refusal.ts";

const refusalOf = (input: unknown): Refusal => {
  try {
    diagnosisOf(input);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error("nothing was refused");
};
const rowsOf = (entries: readonly { readonly row: string }[]) => entries.map(({ row }) => row);
const none = { reply: "none" } as const;
const normal = { reply: "normal" } as const;

describe("diagnosis C5: how long is lingering", () => {
  const told = { spontaneousPain: "no" } as const;
  const lasting = (lingersSeconds: number, rest: Sheet = {}) =>
    diagnosisOf(sheetOf({ cold: { reply: "heightened", lingersSeconds } }, { history: told, ...rest })).pulpal;

  // Br Dent J 2025, table 1 (seen): at most about 2 s reversible, over 30 s irreversible; the span between is open.
  it.each([
    [0, "Reversible pulpitis", "determined"],
    [2, "Reversible pulpitis", "determined"],
    [2.9, "Reversible pulpitis", "determined"],
    [3, "Reversible pulpitis", "possible"],
    [30, "Reversible pulpitis", "possible"],
    [30.1, "Symptomatic irreversible pulpitis", "determined"],
  ])("%d s without a protocol: %s, %s", (seconds, term, status) => {
    expect(lasting(seconds)).toMatchObject({ term, status });
  });

  it.each([
    [9.9, "Reversible pulpitis"],
    [10, "Symptomatic irreversible pulpitis"],
  ])("%d s under a protocol that cuts at 10 s: %s, determined", (seconds, term) => {
    expect(lasting(seconds, { lingeringFromSeconds: 10 })).toMatchObject({ term, status: "determined" });
  });

  it("a second sign turns the open span to the other term, still possible; without asking for one there is none", () => {
    const open = (history: Sheet["history"], tests: Tests = {}) =>
      diagnosisOf(sheetOf({ cold: { reply: "heightened", lingersSeconds: 8 }, ...tests }, { history: history ?? {} }))
        .pulpal;
    for (const sign of ["nightPain", "painToHeat"] as const)
      expect(open({ [sign]: "yes" })).toMatchObject({ term: "Symptomatic irreversible pulpitis", status: "possible" });
    expect(open({}, { percussion: "slight" })).toMatchObject({ term: "Symptomatic irreversible pulpitis" });
    expect(open({})).toMatchObject({ term: "not determined", status: "not determined" });
    expect(open({}).alternatives.map(({ term }) => term)).toEqual(
      expect.arrayContaining(["Symptomatic irreversible pulpitis", "Reversible pulpitis"]),
    );
  });

  it("a reply that was judged normal stays a normal pulp's inside the open span, possible, and above it no longer", () => {
    const denied = { ...told, painToCold: "no", painToHeat: "no" } as const;
    const replied = (lingersSeconds: number) =>
      diagnosisOf(sheetOf({ cold: { reply: "normal", lingersSeconds } }, { history: denied })).pulpal;
    expect(replied(2)).toMatchObject({ term: "Normal pulp", status: "determined" });
    expect(replied(3)).toMatchObject({ term: "Normal pulp", status: "possible" });
    expect(replied(3).alternatives.map(({ term }) => term)).toContain("Reversible pulpitis");
    expect(replied(31).term).toBe("Symptomatic irreversible pulpitis");
  });

  it("how long it lasts counts as provoked pain where it is told, not where a normal reply was timed", () => {
    const timed = diagnosisOf(sheetOf({ cold: { reply: "normal", lingersSeconds: 8 }, percussion: "painful" }));
    expect(timed.pulpal.term).toBe("not determined");
    const toldToo = sheetOf({ cold: normal, percussion: "painful" }, { history: { coldLingersSeconds: 8 } });
    expect(diagnosisOf(toldToo).pulpal).toMatchObject({
      term: "Symptomatic irreversible pulpitis",
      status: "possible",
    });
  });

  it("takes the longest of what was tested and told, for cold and heat", () => {
    const long = "Symptomatic irreversible pulpitis";
    const short = { cold: { reply: "heightened", lingersSeconds: 1 } } as const;
    expect(diagnosisOf(sheetOf(short, { history: { coldLingersSeconds: 60 } })).pulpal.term).toBe(long);
    expect(diagnosisOf(sheetOf(short, { history: { heatLingersSeconds: 60 } })).pulpal.term).toBe(long);
    expect(diagnosisOf(sheetOf({ ...short, heat: { reply: "normal", lingersSeconds: 31 } })).pulpal.term).toBe(long);
  });
});

describe("diagnosis C3, C4: what silence is worth", () => {
  it("thermal pain in the history counts as a reply, and against silent tests as a contradiction", () => {
    const heat: Sheet = { history: { painToHeat: "yes", relievedByCold: "yes" } };
    expect(diagnosisOf(sheetOf({}, heat)).pulpal).toMatchObject({
      ...{ term: "Symptomatic irreversible pulpitis", status: "possible" },
    });
    const torn = diagnosisOf(sheetOf({ cold: none, electric: "none" }, heat, { cold: normal, electric: 30 }));
    expect(torn.pulpal).toMatchObject({ term: "Symptomatic irreversible pulpitis", status: "possible" });
    expect(torn.pulpal.alternatives.map(({ term }) => term)).toContain("Pulp necrosis");
    expect(torn.contradictions).toContainEqual(
      expect.objectContaining({
        row: "X1",
        places: expect.arrayContaining(["tooth 36: cold", "tooth 36: electric", "history.painToHeat"]),
      }),
    );
  });

  it.each([
    ["a swelling", { seen: { swelling: "intraoral" } }, {}],
    ["a tract", { seen: { sinusTract: "present" } }, {}],
    ["a lucency", { onFilm: { lucency: "furcal" } }, {}],
    ["pain on percussion", {}, { percussion: "slight" }],
    ["pain on biting, tested", {}, { bite: "painful" }],
    ["pain on biting, told", { history: { painOnBiting: "yes" } }, {}],
  ] as readonly [string, Sheet, Tests][])("one silent test with %s is necrosis", (_name, rest, tests) => {
    expect(diagnosisOf(sheetOf({ cold: none, ...tests }, rest, { cold: normal })).pulpal).toMatchObject({
      ...{ term: "Pulp necrosis", status: "determined" },
    });
  });

  it("pain on palpation alone is no such sign", () => {
    const { status } = diagnosisOf(sheetOf({ cold: none, palpation: "painful" }, {}, { cold: normal })).pulpal;
    expect(status).toBe("possible");
  });

  it("a control counts only in the test that the tooth had", () => {
    const { pulpal, cautions } = diagnosisOf(sheetOf({ cold: none, heat: none }, {}, { electric: 30 }));
    expect(pulpal).toMatchObject({ term: "Pulp necrosis", status: "possible" });
    expect(cautions.join(" ")).toContain("unreferenced");
  });

  // Jacobsen 1980 (abstract, seen): necrosis mostly found within 4 months, replies changed until 9.
  it.each([
    ["2026-03-01", "not determined"],
    ["2025-11-05", "not determined"],
    ["2025-09-01", "possible"],
    ["2025-01-01", "determined"],
    [undefined, "possible"],
  ])("a trauma of %s before 2026-03-02: two silent tests are %s", (traumaOn, status) => {
    const history = { trauma: "yes" as const, ...(traumaOn === undefined ? {} : { traumaOn }) };
    const looked: Sheet = { takenOn: "2026-03-02", history, seen: { swelling: "none", sinusTract: "none" } };
    const silent = sheetOf({ cold: none, electric: "none" }, looked, { cold: normal, electric: 30 });
    expect(diagnosisOf(silent).pulpal.status).toBe(status);
  });

  it("a protocol's own cut for a new trauma is taken", () => {
    const old: Sheet = { takenOn: "2026-03-02", history: { trauma: "yes", traumaOn: "2026-02-01" } };
    const silent = (rest: Sheet) => sheetOf({ cold: none, electric: "none" }, rest, { cold: normal, electric: 30 });
    expect(diagnosisOf(silent({ ...old, newTraumaUntilDays: 28 })).pulpal.status).toBe("determined");
    expect(diagnosisOf(silent({ ...old, newTraumaUntilDays: 29 })).pulpal.status).toBe("not determined");
  });
});

describe("diagnosis C6: fever and swelling", () => {
  const dead: Sheet = { existing: [{ canal: "D", is: "opened" }] };
  it.each([
    [{ temperatureC: 38 }, "Chronic apical abscess"],
    [{ temperatureC: 38.1 }, "Acute apical abscess"],
    [{ fever: "yes" }, "Acute apical abscess"],
    [{ fever: "yes", temperatureC: 37 }, "Acute apical abscess"],
  ] as const)("a tract with %j: %s", (seen, term) => {
    expect(diagnosisOf(sheetOf({}, { ...dead, seen: { sinusTract: "present", ...seen } })).apical.term).toBe(term);
  });

  it("fever without swelling, pus or tract is urgent and no abscess", () => {
    const seen = { swelling: "none", sinusTract: "none", pus: "no", fever: "yes" } as const;
    const out = diagnosisOf(sheetOf({ percussion: "painful" }, { ...dead, seen }));
    expect(out.apical.term).toBe("Symptomatic apical periodontitis");
    expect(rowsOf(out.urgent)).toEqual(["U5"]);
  });

  it("pus that came rapidly is as good as a swelling; a swelling that came gradually gives no term", () => {
    const pus: Sheet = { ...dead, seen: { swelling: "none", pus: "yes", swellingOnset: "rapid" } };
    expect(diagnosisOf(sheetOf({}, pus)).apical.term).toBe("Acute apical abscess");
    const slow: Sheet = {
      ...dead,
      seen: { swelling: "intraoral", swellingOnset: "gradual", fever: "no", sinusTract: "none" },
    };
    const out = diagnosisOf(sheetOf({ percussion: "painful", palpation: "none" }, slow));
    expect([out.apical.status, rowsOf(out.asks)]).toEqual(["not determined", ["Q10", "Q16"]]);
  });

  it("a place of swelling alone is a swelling", () => {
    expect(rowsOf(diagnosisOf(sheetOf({}, { seen: { swellingAt: ["neck"] } })).urgent)).toEqual(["U1"]);
  });
});

describe("diagnosis C8: a narrow deep probing", () => {
  const at = (probingMm: Tests["probingMm"]) =>
    rowsOf(diagnosisOf(sheetOf({ ...(probingMm ? { probingMm } : {}) })).asks);
  const shallow = { mesiobuccal: 3, buccal: 3, distobuccal: 3, mesiolingual: 3, lingual: 3, distolingual: 3 };
  // Lee et al. 2023 (abstract, seen): teeth with an isolated depth of 5 mm or more.
  it("is one site of 5 mm or more between sites of at most 3 mm", () => {
    expect(at({ ...shallow, buccal: 5 })).toEqual(["Q1"]);
    expect(at({ ...shallow, buccal: 4.9 })).toEqual([]);
    expect(at({ ...shallow, buccal: 5, distobuccal: 3.1 })).toEqual([]);
    expect(at({ ...shallow, mesiolingual: 8 })).toEqual(["Q1"]);
    expect(at({ buccal: 9 })).toEqual([]);
    expect(at({ mesiobuccal: 2, buccal: 9, distobuccal: 2 })).toEqual(["Q1"]);
  });
});

describe("diagnosis C11, C12: codes and European terms", () => {
  const dead: Sheet = { existing: [{ canal: "D", is: "opened" }] };
  const rapid = (swelling: "intraoral" | "extraoral") => ({ swelling, swellingOnset: "rapid" as const });
  // Titles: WHO ICD-10 K04 and ICD-11 DA09 (seen): .6 with sinus, .7 without; 60 with facial involvement, 61 with sinus, 62 without.
  it.each([
    [{ seen: rapid("intraoral") }, "K04.7", "DA09.62"],
    [{ seen: rapid("extraoral") }, "K04.7", "DA09.60"],
    [{ seen: { swelling: "none", pus: "yes", swellingOnset: "rapid" } }, "K04.7", "DA09.6"],
    [{ seen: { ...rapid("intraoral"), sinusTract: "present" } }, "K04.6", "DA09.61"],
    [{ seen: { sinusTract: "present" } }, "K04.6", "DA09.61"],
  ] as readonly [Sheet, string, string][])("an abscess with %j: %s, %s", (rest, icd10, icd11) => {
    const { codes, apical } = diagnosisOf(sheetOf({}, { ...dead, ...rest }));
    expect([codes.icd10.apical, apical.code, codes.icd11.apical]).toEqual([icd10, icd10, icd11]);
  });

  it("pulpitis has one code in ICD-10 and ICD-11, and two in the American modification", () => {
    const codesOf = (seconds: number) =>
      diagnosisOf(
        sheetOf({ cold: { reply: "heightened", lingersSeconds: seconds } }, { history: { spontaneousPain: "no" } }),
      ).codes;
    expect(codesOf(2)).toMatchObject({
      icd10: { pulpal: "K04.0" },
      icd11: { pulpal: "DA09.0" },
      icd10Cm: { pulpal: "K04.01" },
    });
    expect(codesOf(40)).toMatchObject({
      icd10: { pulpal: "K04.0" },
      icd11: { pulpal: "DA09.0" },
      icd10Cm: { pulpal: "K04.02" },
    });
  });

  it("says no code where no title fits: treatment, health, and tenderness of a normal pulp's tooth", () => {
    const { pulpal, codes } = diagnosisOf(sheetOf({}, dead));
    expect([pulpal.code, codes.icd11.pulpal, codes.icd10Cm.pulpal]).toEqual(["no code", "no code", "no code"]);
    const high = diagnosisOf(sheetOf({ cold: normal, percussion: "painful" }));
    expect([high.apical.term, high.apical.code]).toEqual(["Symptomatic apical periodontitis", "no code"]);
    const necrotic = diagnosisOf(sheetOf({ cold: none, percussion: "painful" }));
    expect([necrotic.codes.icd10.pulpal, necrotic.apical.code]).toEqual(["K04.1", "K04.4"]);
  });

  it("the European guideline parts pulpitis by spontaneous pain alone", () => {
    const european = (spontaneousPain: "yes" | "no" | "notAsked") =>
      diagnosisOf(
        sheetOf(
          { cold: { reply: "heightened", lingersSeconds: 40 }, percussion: "painful" },
          { history: { spontaneousPain } },
        ),
      );
    expect(european("yes").european).toEqual({
      pulpal: "Pulpitis with spontaneous pain",
      apical: "Apical periodontitis",
    });
    expect(european("no").european.pulpal).toBe("Pulpitis with no or non-spontaneous pain");
    expect(european("notAsked").european).toEqual({ apical: "Apical periodontitis" });
    expect(european("notAsked").notComputed.map(({ name }) => name)).toEqual(["european.pulpal"]);
    expect(diagnosisOf(sheetOf({}, dead)).european).toEqual({});
  });
});

describe("diagnosis C10: no term", () => {
  const dead: Sheet = { existing: [{ canal: "D", is: "opened" }] };

  it("says why, by the row that gives none, and leaves open what it may still be", () => {
    const seen = { sinusTract: "traced", tracedTo: "37" } as const;
    const { apical, notComputed, source } = diagnosisOf(sheetOf({}, { ...dead, seen }));
    expect([apical.term, apical.status, source]).toEqual(["not determined", "not determined", "another tooth"]);
    expect(apical.alternatives.map(({ term }) => term)).toContain("Chronic apical abscess");
    expect(notComputed[0]).toMatchObject({
      name: "apical.term",
      why: expect.stringContaining("leads to another tooth"),
    });
  });

  it("says that nothing fits where all is known and no row holds", () => {
    const slow = {
      swelling: "intraoral",
      swellingOnset: "gradual",
      fever: "no",
      sinusTract: "none",
      pus: "no",
    } as const;
    const film = { lucency: "none", ligament: "normal", lamina: "intact", sclerosis: "no" } as const;
    const tests: Tests = { percussion: "none", palpation: "none" };
    const { notComputed } = diagnosisOf(sheetOf(tests, { ...dead, seen: slow, onFilm: film }));
    expect(notComputed).toContainEqual({ name: "apical.term", why: "the findings fit none of the terms" });
  });
});

describe("diagnosis refuses, every fault at its path", () => {
  const tooth = (more: object = {}) => ({ tooth: "36", role: "tooth", ...more });
  const control = (number: string, more: object = {}) => ({ tooth: number, role: "control", ...more });
  it.each([
    [
      "a silent test that lingers",
      { teeth: [tooth({ cold: { reply: "none", lingersSeconds: 12 } })] },
      "teeth[0].cold.lingersSeconds",
    ],
    [
      "an undone test that lingers",
      { teeth: [tooth(), control("35", { heat: { lingersSeconds: 2 } })] },
      "teeth[1].heat.lingersSeconds",
    ],
    ["the tooth as its own control", { teeth: [tooth(), control("36")] }, "teeth[1].tooth"],
    ["a control twice", { teeth: [tooth(), control("35"), control("35")] }, "teeth[2].tooth"],
    ["two teeth", { teeth: [tooth(), { tooth: "37", role: "tooth" }] }, "teeth[1].role"],
    ["no tooth", { teeth: [control("36")] }, "teeth"],
    [
      "a canal twice",
      {
        teeth: [tooth()],
        existing: [
          { canal: "D", is: "opened" },
          { canal: "D", is: "filled" },
        ],
      },
      "existing[1].canal",
    ],
    [
      "a later trauma",
      { teeth: [tooth()], takenOn: "2026-03-02", history: { trauma: "yes", traumaOn: "2026-03-03" } },
      "history.traumaOn",
    ],
  ])("%s", (_name, input, path) => {
    const refusal = refusalOf(input);
    expect([refusal.code, refusal.faults.map((fault) => fault.path)]).toEqual(["input.impossible", [path]]);
  });

  it("a tooth that is none of ISO 3950, the controls' and the tract's too", () => {
    const refusal = refusalOf({
      teeth: [tooth({ tooth: "19" }), control("99")],
      seen: { sinusTract: "traced", tracedTo: "49" },
    });
    expect(refusal.code).toBe("tooth.unknown");
    expect(refusal.faults.map(({ path }) => path)).toEqual(["teeth[0].tooth", "teeth[1].tooth", "seen.tracedTo"]);
  });

  it.each([
    [{ probingMm: { buccal: 20.1 } }, "teeth[0].probingMm.buccal"],
    [{ probingMm: { buccal: -1 } }, "teeth[0].probingMm.buccal"],
    [{ electric: 81 }, "teeth[0].electric"],
    [{ cold: { reply: "normal", lingersSeconds: 601 } }, "teeth[0].cold.lingersSeconds"],
    [{ percussion: "a bit" }, "teeth[0].percussion"],
  ])("%j outside its range", (more, path) => {
    const refusal = refusalOf({ teeth: [tooth(more)] });
    expect([refusal.code, refusal.faults.map((fault) => fault.path)]).toEqual(["input.invalid", [path]]);
  });

  it("several faults at once, all of them", () => {
    const refusal = refusalOf({ teeth: [tooth({ cold: { reply: "none", lingersSeconds: 1 } }), control("36")] });
    expect(refusal.faults.map(({ path }) => path)).toEqual(["teeth[1].tooth", "teeth[0].cold.lingersSeconds"]);
  });
});
