import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import { solutionNames } from "./irrigation/irrigation-input.ts";
import { irrigationTopic } from "./irrigation-topic.ts";
import { standingCaution } from "./standing-caution.ts";

const of = (input: object) => answer(irrigationTopic, input);
const step = (solution: unknown, volumeMl = 5, minutes = 2, more: object = {}) => ({
  solution,
  volumeMl,
  minutes,
  ...more,
});
const inOrder = (...solutions: readonly unknown[]) => of({ sequence: solutions.map((solution) => step(solution)) });
const pairs = (found: ReturnType<typeof of>) => found.clashes.map(({ first, second }) => `${first} > ${second}`);

describe("what must not meet", () => {
  it.each([
    ["sodium hypochlorite", "chlorhexidine", "precipitate", "khatib-2020"],
    ["sodium hypochlorite", "citric acid", "chlorine gas", "wright-2017"],
    ["sodium hypochlorite", "maleic acid", "chlorine gas", "wright-2017"],
    ["sodium hypochlorite", "phosphoric acid", "chlorine gas", "wright-2017"],
    ["sodium hypochlorite", "EDTA", "free chlorine", "grawehr-2003"],
    ["EDTA", "chlorhexidine", "white precipitate", "arratia-2019"],
    ["sodium hypochlorite", "hydrogen peroxide", "Oxygen", "common practice"],
    ["saline", "chlorhexidine", "salt of chlorhexidine", "common practice"],
  ])("%s and %s, in either order (C1)", (one, other, what, source) => {
    for (const [first, second] of [
      [one, other],
      [other, one],
    ]) {
      const { clashes } = inOrder(first, second);
      expect(clashes).toHaveLength(1);
      expect(clashes[0]).toMatchObject({ first, second, steps: [0, 1], rinse: { volumeMl: 0, minutes: 0 } });
      expect(clashes[0]?.what).toContain(what);
      expect(clashes[0]?.source).toContain(source);
      expect(clashes[0]?.remedy).not.toBe("");
    }
  });

  it("no other two of the list, nor one with itself", () => {
    const known = new Set(
      [
        ...["chlorhexidine", "citric acid", "maleic acid", "phosphoric acid", "EDTA", "hydrogen peroxide"].map(
          (other) => ["sodium hypochlorite", other],
        ),
        ["EDTA", "chlorhexidine"],
        ["saline", "chlorhexidine"],
      ].flatMap(([a, b]) => [`${a}+${b}`, `${b}+${a}`]),
    );
    for (const first of solutionNames)
      for (const second of solutionNames)
        expect(inOrder(first, second).clashes.length, `${first}+${second}`).toBe(
          known.has(`${first}+${second}`) ? 1 : 0,
        );
  });

  it("are consecutive ones: each step is held against the one before it", () => {
    expect(pairs(inOrder("sodium hypochlorite", "EDTA", "chlorhexidine"))).toEqual([
      "sodium hypochlorite > EDTA",
      "EDTA > chlorhexidine",
    ]);
  });
});

describe("a rinse between", () => {
  const between = (rinse: object | readonly object[], settings: object = {}) =>
    of({ sequence: [step("sodium hypochlorite"), ...[rinse].flat(), step("EDTA")], settings });

  it("keeps them apart from the volume and the time that are set, both (C2, C3)", () => {
    const settings = { rinse: { volumeMl: 3, minutes: 0.5 } };
    expect(between(step("sterile water", 3, 0.5), settings).clashes).toEqual([]);
    expect(between(step("sterile water", 2.9, 5), settings).clashes[0]).toMatchObject({
      steps: [0, 2],
      rinse: { volumeMl: 2.9, minutes: 5 },
    });
    expect(between(step("sterile water", 50, 0.4), settings).clashes).toHaveLength(1);
  });

  it("says what was used, whose it is, and that nothing published settles it", () => {
    const usual = between(step("sterile water", 2, 1));
    expect(usual.clashes).toEqual([]);
    expect(usual.settings).toMatchObject({
      rinseVolumeMl: { value: 2, from: "default" },
      rinseMinutes: { value: 1, from: "default" },
    });
    expect(usual.basis.assumptions[0]).toContain("from 2 ml and 1 min on (common practice, no published figure)");
    expect(between(step("sterile water", 1.9, 1)).clashes).toHaveLength(1);
    const own = between(step("saline"), { rinse: { volumeMl: 4, minutes: 1 } });
    expect(own.settings.rinseVolumeMl).toEqual({ value: 4, from: "input" });
    expect(own.basis.assumptions[0]).toContain("from 4 ml and 1 min on (set by the clinic)");
  });

  it("adds up over several rinses, without the noise of decimals", () => {
    const settings = { rinse: { volumeMl: 0.3, minutes: 0.3 } };
    const thirds = [step("saline", 0.1, 0.1), step("ethanol", 0.1, 0.1), step("sterile water", 0.1, 0.1)];
    expect(between(thirds, settings).clashes).toEqual([]);
    expect(between(thirds.slice(1), settings).clashes[0]?.rinse).toEqual({ volumeMl: 0.2, minutes: 0.2 });
  });

  it("of saline before chlorhexidine clears the hypochlorite and is a clash of its own; water is none", () => {
    expect(pairs(inOrder("sodium hypochlorite", "saline", "chlorhexidine"))).toEqual(["saline > chlorhexidine"]);
    expect(pairs(inOrder("sodium hypochlorite", "saline", "sterile water", "chlorhexidine"))).toEqual([]);
    const little = of({ sequence: [step("sodium hypochlorite"), step("saline", 0.5, 0.1), step("chlorhexidine")] });
    expect(pairs(little)).toEqual(["sodium hypochlorite > chlorhexidine", "saline > chlorhexidine"]);
  });

  it("more of it never makes a clash (property)", () => {
    for (const first of solutionNames)
      for (const second of solutionNames) {
        let before = Number.POSITIVE_INFINITY;
        for (const volumeMl of [0, 1, 1.99, 2, 10]) {
          const { clashes } = of({ sequence: [step(first), step("sterile water", volumeMl, 1), step(second)] });
          expect(clashes.length).toBeLessThanOrEqual(before);
          before = clashes.length;
        }
        expect(before, `${first}, ${second}`).toBe(0);
      }
  });

  it.each([[{ own: "dye" }], ["iodine"]])(
    "a drop of %j, of which nothing is known, does not keep two others apart",
    (unknown) => {
      const around = (volumeMl: number, minutes: number) =>
        of({ sequence: [step("sodium hypochlorite"), step(unknown, volumeMl, minutes), step("chlorhexidine")] });
      expect(around(0.1, 0.1).clashes).toEqual([
        expect.objectContaining({ steps: [0, 2], rinse: { volumeMl: 0.1, minutes: 0.1 } }),
      ]);
      expect(around(2, 1).clashes).toEqual([]);
    },
  );

  it("an active solution of no volume does not keep two others apart", () => {
    const found = of({ sequence: [step("sodium hypochlorite"), step("EDTA", 0, 0), step("chlorhexidine")] });
    expect(pairs(found)).toContain("sodium hypochlorite > chlorhexidine");
  });
});

describe("chlorine at worst", () => {
  // Stoichiometry of NaOCl (74.442) and Cl2 (70.906), recomputed: 1 ml of 5.25 % holds 50.006 mg, 17.24 ml of gas, in 30 m3 0.5748 ppm.
  it("of 1 ml of 5.25 % is 50.006 mg, 17.24 ml (C4)", () => {
    const found = of({ sequence: [step("sodium hypochlorite", 1, 1, { percent: 5.25 }), step("citric acid")] });
    expect(found.clashes[0]?.worstCase?.chlorineMg).toBeCloseTo(50.006, 3);
    expect(found.clashes[0]?.worstCase?.chlorineMl).toBeCloseTo(17.24, 2);
    const ppm = (found.clashes[0]?.worstCase?.chlorineMl ?? 0) / 30;
    expect(ppm).toBeCloseTo(0.5748, 4);
    expect(found.clashes[0]?.what).toContain("0.57 ppm");
    expect(ppm).toBeGreaterThan(0.5);
    const back = of({ sequence: [step("citric acid"), step("sodium hypochlorite", 2, 1, { percent: 5.25 })] });
    expect(back.clashes[0]?.worstCase?.chlorineMg).toBeCloseTo(100.012, 3);
  });

  it("without a strength is absent, with the reason; of no acid there is none", () => {
    const found = inOrder("sodium hypochlorite", "citric acid");
    expect(found.clashes[0]).not.toHaveProperty("worstCase");
    expect(found.notComputed).toContainEqual({
      name: "clashes[0].worstCase",
      why: "the strength of the hypochlorite is not given",
    });
    const edta = of({ sequence: [step("sodium hypochlorite", 1, 1, { percent: 3 }), step("EDTA")] });
    expect(edta.clashes[0]).not.toHaveProperty("worstCase");
    expect(edta.notComputed.map(({ name }) => name)).toEqual(["protocol"]);
  });
});

describe("totals and the clinic's protocol", () => {
  it("take a line of one's own solution, found by its name (C8)", () => {
    const own = { own: "a mixture of our own" };
    const sequence = [{ solution: own, volumeMl: 3, minutes: 4 }];
    const rows = of({ sequence, settings: { protocol: [{ solution: own, volumeMlAtLeast: 5 }] } }).protocol;
    expect(rows).toEqual([
      { solution: own.own, what: "volumeMlAtLeast", wanted: 5, found: 3, stands: "below", met: false },
    ]);
  });

  const sequence = [
    step("sodium hypochlorite", 5, 2.1),
    step("saline", 2, 1),
    step("EDTA", 3, 1, { activated: true }),
    step("saline", 2.2, 1),
    step("sodium hypochlorite", 5.1, 10.2, { activated: true }),
  ];

  it("are summed by solution, in the order of first use, activation apart", () => {
    expect(of({ sequence }).totals).toEqual([
      { solution: "sodium hypochlorite", volumeMl: 10.1, minutes: 12.3, activatedMinutes: 10.2 },
      { solution: "saline", volumeMl: 4.2, minutes: 2, activatedMinutes: 0 },
      { solution: "EDTA", volumeMl: 3, minutes: 1, activatedMinutes: 1 },
    ]);
    expect(of({ sequence: [] })).toMatchObject({ totals: [], clashes: [] });
  });

  it("stand below, at or above what the clinic wants (C8)", () => {
    const protocol = [
      { solution: "sodium hypochlorite", minutesAtLeast: 20, volumeMlAtLeast: 10 },
      { solution: "EDTA", minutesAtLeast: 1, minutesAtMost: 0.5 + 0.5 },
      { solution: "saline", minutesAtMost: 1 },
      { solution: "chlorhexidine", minutesAtLeast: 1 },
    ];
    const rows = of({ sequence, settings: { protocol } }).protocol;
    expect(rows?.map(({ solution, what, found, stands, met }) => [solution, what, found, stands, met])).toEqual([
      ["sodium hypochlorite", "minutesAtLeast", 12.3, "below", false],
      ["sodium hypochlorite", "volumeMlAtLeast", 10.1, "above", true],
      ["EDTA", "minutesAtLeast", 1, "at", true],
      ["EDTA", "minutesAtMost", 1, "at", true],
      ["saline", "minutesAtMost", 2, "above", false],
      ["chlorhexidine", "minutesAtLeast", 0, "below", false],
    ]);
    expect(of({ sequence }).notComputed).toContainEqual({
      name: "protocol",
      why: "no protocol of the clinic is given",
    });
  });
});

describe("needles", () => {
  const needle = (fields: object, more: object = {}, volumeMl = 3) =>
    of({
      sequence: [
        step("sodium hypochlorite", volumeMl, 2, { needle: { depthFromStopMm: 5, sideVented: true, ...fields } }),
      ],
      ...more,
    }).cautions.filter((text) => text.startsWith("Step 1"));

  it.each([
    [{ sideVented: false, depthFromStopMm: 2.9 }, 1],
    [{ sideVented: false, depthFromStopMm: 3 }, 0],
    [{ sideVented: true, depthFromStopMm: 1.9 }, 1],
    [{ sideVented: true, depthFromStopMm: 2 }, 0],
    [{ flowMlPerMin: 3 }, 0],
    [{ flowMlPerMin: 3.1 }, 1],
    [{ freeMovement: false }, 1],
    [{ freeMovement: true }, 0],
    [{ sideVented: false, depthFromStopMm: 1, flowMlPerMin: 5, freeMovement: false }, 3],
  ])("%j give %d cautions (C5)", (fields, count) => {
    expect(needle(fields)).toHaveLength(count);
  });

  it("by settings of the clinic", () => {
    const settings = { openEndedMm: 4, sideVentedMm: 1, flowMlPerMin: 6 };
    expect(needle({ sideVented: false, depthFromStopMm: 3.5 }, { settings })).toHaveLength(1);
    expect(needle({ sideVented: true, depthFromStopMm: 1, flowMlPerMin: 5 }, { settings })).toEqual([]);
  });

  it("a flow that was not told is at least volume over minutes", () => {
    expect(needle({}, {}, 6)).toEqual([]);
    expect(needle({}, {}, 7)[0]).toContain("7 ml in 2 min are at least 3.5 ml/min, above the 3 ml/min");
    expect(needle({ flowMlPerMin: 1 }, {}, 7)).toEqual([]);
  });

  it.each([["openApex"], ["resorption"], ["perforation"]])("at any depth with %s (C6)", (opening) => {
    expect(needle({ gauge: 30 }, { root: { [opening]: true } })).toHaveLength(1);
    expect(needle({ gauge: 30 }, { root: { [opening]: true } })[0]).toContain("gauge 30");
    expect(needle({}, { root: { [opening]: false } })).toEqual([]);
  });

  // Khan 2013, Lee 2018, Park 2013 and a study against 30 mmHg (all seen).
  it("shows where the sources disagree, once, and only where a needle is told", () => {
    const text =
      "above 5.88 mmHg was read above 1 ml/min; 3 mm short and under 3 ml/min are recommended; other models name 4 ml/min, and no extrusion up to 3 ml/min against 30 mmHg";
    const one = { depthFromStopMm: 5, sideVented: true };
    const found = of({ sequence: [step("saline", 1, 1, { needle: one }), step("saline", 1, 1, { needle: one })] });
    expect(found.cautions.filter((caution) => caution.includes(text))).toHaveLength(1);
    expect(found.basis.sources).toEqual(expect.arrayContaining(["khan-2013", "lee-2018", "park-shen-2013"]));
    expect(inOrder("saline").cautions).toEqual([standingCaution]);
  });
});

describe("order, bonding and allergy (C7)", () => {
  const cautions = (solutions: readonly string[], more: object = {}) =>
    of({ sequence: solutions.map((solution) => step(solution)), ...more }).cautions.join("\n");

  it("hypochlorite last after a chelator is contested, whatever rinses follow", () => {
    expect(cautions(["EDTA", "saline", "sodium hypochlorite", "saline"])).toContain("contested (from memory)");
    expect(cautions(["citric acid", "saline", "sodium hypochlorite"])).toContain("contested");
    expect(cautions(["sodium hypochlorite", "saline", "EDTA"])).not.toContain("contested");
    expect(cautions(["sodium hypochlorite"])).not.toContain("contested");
  });

  it("hypochlorite before bonding is told, asked, or left out", () => {
    expect(cautions(["sodium hypochlorite"], { bondingNext: true })).toContain("Dentine is bonded next");
    expect(cautions(["sodium hypochlorite"])).toContain("Is dentine bonded next?");
    expect(cautions(["sodium hypochlorite"], { bondingNext: false })).not.toContain("bonded");
    expect(cautions(["EDTA"], { bondingNext: true })).not.toContain("bonded");
  });

  it("iodine is asked for, told, or left out", () => {
    expect(cautions(["iodine"])).toContain("An allergy to iodine?");
    expect(cautions(["iodine"], { iodineAllergy: true })).toContain("an allergy to iodine is recorded");
    expect(cautions(["iodine"], { iodineAllergy: false })).not.toContain("iodine");
    expect(cautions(["saline"], { iodineAllergy: true })).not.toContain("iodine");
  });

  it("a solution of one's own is summed, and its clashes are not known", () => {
    const found = inOrder("sodium hypochlorite", { own: "propolis" });
    expect(found.totals[1]?.solution).toBe("propolis");
    expect(found.clashes).toEqual([]);
    expect(found.notComputed).toContainEqual({
      name: "clashes of propolis",
      why: "what it must not meet is not known here",
    });
  });

  it("every answer ends with the standing caution, and names each clash before it", () => {
    const found = inOrder("sodium hypochlorite", "chlorhexidine");
    expect(found.cautions[0]).toBe("Steps 1 and 2: sodium hypochlorite and chlorhexidine met.");
    expect(found.cautions.at(-1)).toBe(standingCaution);
  });
});

describe("refusals", () => {
  function refusalOf(input: object): Refusal {
    try {
      of(input);
    } catch (thrown) {
      if (thrown instanceof Refusal) return thrown;
      throw thrown;
    }
    throw new Error("nothing was refused");
  }

  it.each([
    ["sodium hypochlorite", 0.0525, "5.25 % is written 5.25, not 0.0525"],
    ["sodium hypochlorite", 52.5, "0.1 to 15 is accepted"],
    ["EDTA", 0.17, "1 to 25 is accepted"],
    ["chlorhexidine", 0.02, "0.05 to 20 is accepted"],
    ["ethanol", 0.7, "10 to 100 is accepted"],
    ["sterile water", 1, "has no strength"],
  ])("%s of %d %% (C9)", (solution, percent, says) => {
    const refusal = refusalOf({ sequence: [step("saline"), step(solution, 1, 1, { percent })] });
    expect(refusal.code).toBe("input.impossible");
    expect(refusal.faults).toEqual([{ path: "sequence[1].percent", says: expect.stringContaining(says) }]);
  });

  it.each([
    ["volumeMl", -1],
    ["volumeMl", 5_000],
    ["minutes", -1],
    ["minutes", 1_000],
    ["percent", 0],
    ["solution", "bleach"],
  ])("%s %j", (field, value) => {
    expect(refusalOf({ sequence: [{ ...step("saline"), [field]: value }] })).toMatchObject({
      code: "input.invalid",
      faults: [expect.objectContaining({ path: `sequence[0].${field}` })],
    });
  });

  it("a needle beyond the stop, and a protocol that can't be met", () => {
    const needle = { depthFromStopMm: -1, sideVented: true };
    expect(refusalOf({ sequence: [step("saline", 1, 1, { needle })] }).faults[0]?.path).toBe(
      "sequence[0].needle.depthFromStopMm",
    );
    const protocol = [{ solution: "EDTA", minutesAtLeast: 3, minutesAtMost: 1 }];
    expect(refusalOf({ sequence: [], settings: { protocol } }).faults).toEqual([
      { path: "settings.protocol[0].minutesAtMost", says: "1 is below the 3 min that are wanted at least" },
    ]);
  });
});

describe("the page of the method", () => {
  const page = readFileSync(fileURLToPath(new URL("../../../docs/methods/irrigation.md", import.meta.url)), "utf8");

  it("says what its example comes to", () => {
    const found = of(JSON.parse(/```json input\n([\s\S]*?)```/.exec(page)?.[1] ?? ""));
    expect(pairs(found)).toEqual(["sodium hypochlorite > EDTA", "saline > chlorhexidine"]);
    expect(found.protocol?.map(({ stands }) => stands)).toEqual(["below"]);
    expect(found.cautions.filter((text) => text.startsWith("Step 1,"))).toHaveLength(1);
  });
});
