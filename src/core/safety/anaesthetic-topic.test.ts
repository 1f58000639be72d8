import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import type { VasoconstrictorName } from "./anaesthetic/anaesthetic-input.ts";
import { limitSetNames } from "./anaesthetic/anaesthetic-input.ts";
import { anaestheticTopic } from "./anaesthetic-topic.ts";

const of = (input: object) => answer(anaestheticTopic, input);
const adult = { bodyMassKg: 70, ageYears: 40 };
const lidocaine = { agent: "lidocaine", percent: 2, cartridgeMl: 1.8 };
const articaine = { agent: "articaine", percent: 4, cartridgeMl: 1.8 };
const epinephrine = (ratio: number) => ({ vasoconstrictor: { name: "epinephrine", ratio } });
const noAgent = { given: [] };

describe("what is in a cartridge", () => {
  // Malamed, Handbook of local anesthesia, tables inside the cover (seen): mg in 1.8 ml; with 1.7 ml articaine has 68.
  it.each([
    ["articaine", 4, 1.8, 72],
    ["articaine", 4, 1.7, 68],
    ["bupivacaine", 0.5, 1.8, 9],
    ["lidocaine", 2, 1.8, 36],
    ["mepivacaine", 2, 1.8, 36],
    ["mepivacaine", 3, 1.8, 54],
    ["prilocaine", 4, 1.8, 72],
    // An Australian table of 2.2 ml cartridges (seen): 4.5 of prilocaine hold 396 mg, 6 of 3 % as well.
    ["prilocaine", 4, 2.2, 88],
    ["prilocaine", 3, 2.2, 66],
  ])("%s %d %% in %d ml is %d mg (C1)", (agent, percent, cartridgeMl, mg) => {
    const found = of({ ...adult, given: [{ agent, percent, cartridgeMl, cartridges: 1 }] });
    expect(found.agents[0]?.givenMg).toBe(mg);
  });

  // Teaching pages on vasoconstrictors (seen): micrograms of epinephrine in 1.8 ml.
  it.each([
    [50_000, 36],
    [80_000, 22.5],
    [100_000, 18],
    [200_000, 9],
  ])("1:%d is %d micrograms of epinephrine in 1.8 ml (C2)", (ratio, micrograms) => {
    const found = of({ ...adult, given: [{ ...lidocaine, ...epinephrine(ratio), cartridges: 1 }] });
    expect(found.vasoconstrictors).toEqual([
      expect.objectContaining({ name: "epinephrine", given: micrograms, limit: 200, unit: "micrograms" }),
    ]);
  });

  it("three cartridges 1:100000 hold 54 micrograms, two of mepivacaine 3 % 108 mg", () => {
    // A quiz page's sums (memory).
    const found = of({
      ...adult,
      given: [
        { ...lidocaine, ...epinephrine(100_000), cartridges: 3 },
        { agent: "mepivacaine", percent: 3, cartridgeMl: 1.8, cartridges: 2 },
      ],
    });
    expect(found.vasoconstrictors[0]?.given).toBe(54);
    expect(found.agents[1]?.givenMg).toBe(108);
  });
});

describe("limits", () => {
  const limit = (agent: string, bodyMassKg: number, limitSet: unknown = undefined) =>
    of({
      bodyMassKg,
      ageYears: 40,
      given: [{ agent, percent: agent === "bupivacaine" ? 0.5 : 3, cartridgeMl: 1.8, cartridges: 0 }],
      ...(limitSet === undefined ? {} : { limitSet }),
    }).agents[0]?.limitMg;

  // Malamed 2013, table 4-4 (seen); study cards for 90 kg: 630 by weight, capped at 500 (seen).
  it.each([
    ["articaine", 100, 700],
    ["lidocaine", 100, 500],
    ["lidocaine", 90, 500],
    ["lidocaine", 70, 490],
    ["mepivacaine", 60, 396],
    ["mepivacaine", 100, 400],
    ["prilocaine", 100, 600],
    ["bupivacaine", 100, 90],
  ])("of the United States' label: %s at %d kg %d mg (C5)", (agent, kg, mg) => {
    expect(limit(agent, kg)).toBe(mg);
    expect(limit(agent, kg, "unitedStatesLabel")).toBe(mg);
  });

  // The Canadian table of 2022, and the Australian one of 2011 (both seen).
  it.each([
    ["canada", "bupivacaine", 120, 200],
    ["canada", "bupivacaine", 70, 140],
    ["canada", "articaine", 100, 500],
    ["canada", "prilocaine", 100, 500],
    ["australia", "lidocaine", 70, 300],
    ["australia", "lidocaine", 60, 264],
    ["australia", "mepivacaine", 100, 300],
    ["australia", "bupivacaine", 60, 78],
    // The lowest mg/kg and the lowest maximum of all.
    ["conservative", "bupivacaine", 60, 78],
    ["conservative", "bupivacaine", 100, 90],
    ["conservative", "prilocaine", 100, 400],
  ])("of %s: %s at %d kg %d mg (C3)", (set, agent, kg, mg) => {
    expect(limit(agent, kg, set)).toBe(mg);
  });

  it("are never above any published set where the conservative one is chosen", () => {
    for (const agent of ["articaine", "lidocaine", "mepivacaine", "prilocaine", "bupivacaine"])
      for (const kg of [55, 70.3, 99.9, 140]) {
        const least = limit(agent, kg, "conservative") ?? Number.NaN;
        for (const set of limitSetNames) expect(least).toBeLessThanOrEqual(limit(agent, kg, set) ?? 0);
      }
  });

  it("of one's own are taken as they are, marked so, and told where they are above every published one", () => {
    const limitSet = [{ agent: "lidocaine", mgPerKg: 4.5, source: "the clinic's sheet" }];
    const found = of({ ...adult, given: [{ ...lidocaine, cartridges: 1 }], limitSet });
    expect(found.limitSet.name).toBe("own");
    expect(found.agents[0]).toMatchObject({ limitMg: 315, source: "the clinic's sheet", mark: "own" });
    expect(found.cautions.join()).not.toContain("above every published one");
    const higher = of({ ...adult, given: [], limitSet: [{ agent: "lidocaine", mgPerKg: 9, maxMg: 400, source: "x" }] });
    expect(higher.cautions.join()).toContain("lidocaine is above every published one");
    // Without mg/kg 500 mg for 50 kg, where 7 mg/kg come to 350; without a maximum 693 mg for 99 kg, where 500 is printed.
    const light = {
      ageYears: 40,
      bodyMassKg: 50,
      given: [],
      limitSet: [{ agent: "lidocaine", maxMg: 500, source: "x" }],
    };
    expect(of(light).cautions.join()).toContain(
      "comes to 500 mg, above every published one that is held here: they allow 350",
    );
    const heavy = { ...light, bodyMassKg: 99, limitSet: [{ agent: "lidocaine", mgPerKg: 7, source: "x" }] };
    expect(of(heavy).cautions.join()).toContain(
      "comes to 693 mg, above every published one that is held here: they allow 500",
    );
    // The label's set prints no maximum for articaine: 600 mg are not above its 700.
    const articaine = {
      ...heavy,
      bodyMassKg: 100,
      limitSet: [{ agent: "articaine", mgPerKg: 7, maxMg: 600, source: "x" }],
    };
    expect(of(articaine).cautions.join()).not.toContain("above every published one");
    const unknown = of({ ...adult, given: [], limitSet: [{ agent: "ropivacaine", mgPerKg: 3, source: "x" }] });
    expect(unknown.cautions.join()).toContain("No published set that is held here has a limit for ropivacaine");
  });

  it("print whose they are, and what the other sets would allow, the lowest first", () => {
    const found = of({ ...adult, given: [{ ...lidocaine, cartridges: 1 }] });
    expect(found.limitSet).toMatchObject({ name: "unitedStatesLabel" });
    expect(found.agents[0]?.limitRule).toBe("7 mg/kg x 70 kg = 490 mg, not above the maximum of 500 mg");
    expect(found.agents[0]?.source).toBe("malamed-2013");
    expect(found.agents[0]?.otherSets).toEqual([
      { set: "australia", limitMg: 300 },
      { set: "conservative", limitMg: 300 },
      { set: "canada", limitMg: 490 },
    ]);
  });
});

describe("sums over agents", () => {
  // By the rule of Malamed 2013 (memory): lidocaine 180 of 490 and articaine 144 of 490 at 70 kg.
  it("add fractions (C7)", () => {
    const given = [
      { ...lidocaine, cartridges: 5 },
      { ...articaine, cartridges: 2 },
    ];
    const found = of({ ...adult, given });
    expect(found.fractionSum).toBeCloseTo(180 / 490 + 144 / 490, 12);
    expect(found.fractionSum).toBeCloseTo(0.661, 3);
    expect(found.overLimit).toBe(false);
    expect(found.stops).toEqual([]);
    expect(of({ ...adult, given: [...given].reverse() }).fractionSum).toBeCloseTo(found.fractionSum, 12);
  });

  it("split doses of one agent are one agent's", () => {
    const split = of({
      ...adult,
      given: [
        { ...lidocaine, cartridges: 1, atMin: 0 },
        { ...lidocaine, cartridges: 2.5, atMin: 90 },
      ],
    });
    const whole = of({ ...adult, given: [{ ...lidocaine, cartridges: 3.5 }] });
    expect(split.agents).toEqual(whole.agents);
    expect(split.fractionSum).toBe(whole.fractionSum);
  });

  // Ten cartridges of 36 mg are the 360 mg of the limit.
  it("at exactly 1 are no stop, above 1 are one, by name", () => {
    const limitSet = [{ agent: "lidocaine", maxMg: 360, source: "x" }];
    const at = (cartridges: number) => of({ ...adult, limitSet, given: [{ ...lidocaine, cartridges }] });
    expect(at(10)).toMatchObject({ fractionSum: 1, overLimit: false, stops: [] });
    expect(at(10.01).overLimit).toBe(true);
    expect(at(10.01).stops).toEqual([expect.objectContaining({ by: "sum" })]);
    expect(at(10.01).cautions[0]).toBe("What was given of lidocaine is 1.001 of its limit: above 1.");
    // 360.018 of 360 mg are not told as 1.000, above 1.
    expect(at(10.0005).cautions[0]).toBe("What was given of lidocaine is 1.000050 of its limit: above 1.");
    const two = of({
      ...adult,
      limitSet: "australia",
      given: [
        { ...lidocaine, cartridges: 5 },
        { ...articaine, cartridges: 4 },
      ],
    });
    expect(two.fractionSum).toBeCloseTo(180 / 300 + 288 / 490, 12);
    expect(two.stops[0]?.says).toBe("The fractions of the agents' limits add up to 1.188: above 1.");
  });

  it("of thirds that are no binary numbers reach 1 exactly", () => {
    const limitSet = ["lidocaine", "articaine", "mepivacaine"].map((agent) => ({ agent, maxMg: 108, source: "x" }));
    const given = ["lidocaine", "articaine", "mepivacaine"].map((agent) => ({
      agent,
      percent: 2,
      cartridgeMl: 1.8,
      cartridges: 1,
    }));
    expect(of({ ...adult, limitSet, given })).toMatchObject({ fractionSum: 1, overLimit: false });
  });
});

describe("vasoconstrictors", () => {
  const two = { ...adult, given: [{ ...lidocaine, ...epinephrine(100_000), cartridges: 3 }] };

  it("of a heart at risk: 40 micrograms, and 54 are above it though the agent is far below (C6)", () => {
    expect(of(two).overLimit).toBe(false);
    const cardiac = of({ ...two, cardiacRisk: true });
    expect(cardiac.vasoconstrictors[0]).toMatchObject({ given: 54, limit: 40, fraction: 1.35 });
    expect(cardiac.overLimit).toBe(true);
    expect(cardiac.stops[0]?.says).toBe("Epinephrine: 54 micrograms are above the limit of 40 micrograms by 14.");
    expect(cardiac.fractionSum).toBeCloseTo(108 / 490, 12);
    expect(of({ ...two, cardiacRisk: false }).vasoconstrictors[0]?.limit).toBe(200);
    // 2.22245 x 18 micrograms, rounded up to whole nanograms, are 40.005.
    const barely = of({ ...two, cardiacRisk: true, given: [{ ...two.given[0], cartridges: 2.22245 }] });
    expect(barely.stops[0]?.says).toContain("are above the limit of 40 micrograms by 0.0050.");
  });

  it("limits of one's own go before, and are told where they are above the one that is held", () => {
    const own = (limit: number, cardiacRisk: boolean) =>
      of({ ...two, cardiacRisk, vasoconstrictorLimits: [{ name: "epinephrine", limit, source: "x" }] });
    expect(own(150, true).vasoconstrictors[0]).toMatchObject({ limit: 150, mark: "own" });
    expect(own(150, true).cautions).toContain(
      "The limit that was given for epinephrine, 150 micrograms, is above the one held here with cardiac risk, 40 micrograms.",
    );
    expect(own(500, false).cautions.join()).toContain("is above the one held here, 200 micrograms.");
    expect(own(150, false).cautions.join()).not.toContain("is above the one held here");
  });

  // Malamed 2013 (memory): levonordefrin 1:20000 has 90 micrograms in 1.8 ml, of 1000.
  it("each have their own limit, and are not added", () => {
    const levonordefrin = { name: "levonordefrin", ratio: 20_000 };
    const mepivacaine = { agent: "mepivacaine", percent: 2, cartridgeMl: 1.8, vasoconstrictor: levonordefrin };
    const found = of({ ...two, cardiacRisk: true, given: [...two.given, { ...mepivacaine, cartridges: 2 }] });
    expect(found.vasoconstrictors[1]).toMatchObject({ given: 180, limit: 1000, fraction: 0.18, mark: "memory" });
    expect(found.cautions).toContain("The limit of levonordefrin is a value from memory.");
    expect(found.cautions).toContain("For levonordefrin no lower limit with cardiac risk was found: ask.");
  });

  it("without a limit in any source say so, and a person's own is taken", () => {
    const felypressin = { name: "felypressin" satisfies VasoconstrictorName, iuPerMl: 0.03 };
    const prilocaine = { agent: "prilocaine", percent: 3, cartridgeMl: 1.8, vasoconstrictor: felypressin };
    const given = [{ ...prilocaine, cartridges: 2 }];
    const found = of({ ...adult, given, planned: prilocaine });
    expect(found.vasoconstrictors).toEqual([{ name: "felypressin", given: 0.108, unit: "IU" }]);
    expect(found.notComputed).toEqual([
      { name: "vasoconstrictors[0].limit", why: expect.stringContaining("no source") },
    ]);
    expect(found.planned?.bounds.map(({ by }) => by)).toEqual(["agent"]);
    const vasoconstrictorLimits = [{ name: "felypressin", limit: 0.27, source: "the clinic's sheet" }];
    const own = of({ ...adult, given, planned: prilocaine, vasoconstrictorLimits });
    expect(own.vasoconstrictors[0]).toMatchObject({ limit: 0.27, fraction: 0.4, mark: "own" });
    expect(own.planned).toMatchObject({ cartridgesLeft: 3, boundBy: "vasoconstrictor" });
    expect(own.notComputed).toEqual([]);
    expect(of({ ...adult, given: [], planned: prilocaine }).notComputed[0]?.name).toBe(
      "planned.bounds.vasoconstrictor",
    );
  });
});

describe("what is left of a planned solution", () => {
  const left = (input: object) => of({ ...noAgent, ...input }).planned;

  // Clinical review of 2013 (seen): 150 lb, 300 mg at most, 1:100000: 8 cartridges (288 mg), 8 being fewer than 11.
  it("is 8 cartridges and 288 mg by the conservative rule for 150 lb, bound by the agent (C8)", () => {
    const planned = { ...lidocaine, ...epinephrine(100_000) };
    const found = left({ bodyMassKg: 68.04, ageYears: 30, planned, limitSet: "conservative" });
    expect(found).toMatchObject({ cartridgesLeft: 8, mg: 288, boundBy: "agent" });
    expect(found?.bounds[1]?.by).toBe("vasoconstrictor");
    expect(found?.bounds[1]?.cartridges).toBeCloseTo(11.11, 2);
  });

  // The Canadian article's worked sum (seen): 20 kg, 140 mg, 7 ml, 3.889 cartridges; it prints 3.9, whole ones are 3.
  it("of 3.889 is 3", () => {
    const found = left({ bodyMassKg: 20, ageYears: 6, planned: lidocaine, limitSet: "canada" });
    expect(found).toMatchObject({ limitMg: 140, cartridgesLeft: 3, mg: 108 });
    expect(found?.bounds[0]?.cartridges).toBeCloseTo(3.8889, 4);
  });

  // The Australian page prints 7 cartridges of 2.2 ml (308 mg) against 300 mg: 6 whole ones are below it.
  it("never passes the limit by a printed slip: 6, not 7, of 2.2 ml at 300 mg", () => {
    const planned = { ...lidocaine, cartridgeMl: 2.2 };
    expect(left({ ...adult, planned, limitSet: "australia" })).toMatchObject({ cartridgesLeft: 6, mg: 264 });
    // Articaine 5.5 (484 mg of 490), prilocaine 4.5 (396 of 400), bupivacaine 8 (88 of 90), in whole ones 5, 4 and 8.
    const plan = (agent: string, percent: number) =>
      left({ ...adult, planned: { agent, percent, cartridgeMl: 2.2 }, limitSet: "australia" })?.cartridgesLeft;
    expect([plan("articaine", 4), plan("prilocaine", 4), plan("bupivacaine", 0.5)]).toEqual([5, 4, 8]);
  });

  // Teaching pages on vasoconstrictors (seen): 11.1 and 2.2 cartridges of 1:100000, 22.2 and 4.4 of 1:200000.
  it.each([
    [100_000, false, 11],
    [100_000, true, 2],
    [200_000, false, 22],
    [200_000, true, 4],
  ])("of 1:%d with cardiac risk %j is bound by epinephrine to %d", (ratio, cardiacRisk, cartridges) => {
    const limitSet = [{ agent: "lidocaine", maxMg: 5000, source: "none that binds" }];
    const found = left({ ...adult, cardiacRisk, planned: { ...lidocaine, ...epinephrine(ratio) }, limitSet });
    expect(found).toMatchObject({ cartridgesLeft: cartridges, boundBy: "vasoconstrictor" });
  });

  it("is never one short: every whole number of cartridges whose sum is the limit is left whole", () => {
    for (const cartridgeMl of [1.7, 1.76, 1.8, 2.2])
      for (const percent of [0.5, 2, 3, 4])
        for (let count = 1; count <= 20; count += 1) {
          const maxMg = Number((percent * 10 * cartridgeMl * count).toFixed(3));
          const limitSet = [{ agent: "lidocaine", maxMg, source: "x" }];
          const found = left({ ...adult, planned: { agent: "lidocaine", percent, cartridgeMl }, limitSet });
          expect(found?.cartridgesLeft, `${percent} % ${cartridgeMl} ml ${count}`).toBe(count);
        }
  });

  it("after other agents is bound by the sum; after its own by the agent", () => {
    const given = [{ ...lidocaine, cartridges: 5 }];
    const found = of({ ...adult, given, planned: articaine }).planned;
    // (1 - 180 / 490) x 490 / 72 = 4.3
    expect(found).toMatchObject({ cartridgesLeft: 4, boundBy: "sum", mg: 288 });
    expect(found?.bounds[0]?.cartridges).toBeCloseTo(310 / 72, 9);
    expect(of({ ...adult, given, planned: lidocaine }).planned).toMatchObject({ cartridgesLeft: 8, boundBy: "agent" });
  });

  it("one cartridge more than is left is above a limit, and what is left is not", () => {
    for (const cardiacRisk of [false, true])
      for (const cartridges of [0, 1, 2.5, 6]) {
        const given = [{ ...articaine, ...epinephrine(200_000), cartridges }];
        const planned = { ...lidocaine, ...epinephrine(100_000) };
        const whole = of({ ...adult, cardiacRisk, given, planned }).planned?.cartridgesLeft ?? Number.NaN;
        const wanted = (count: number) =>
          of({ ...adult, cardiacRisk, given, planned: { ...planned, cartridges: count } }).planned?.wanted;
        if (whole > 0) expect(wanted(whole)).toMatchObject({ overLimit: false, asks: [] });
        expect(wanted(whole + 1)?.overLimit).toBe(true);
        expect(wanted(whole + 1)?.asks.length).toBeGreaterThan(0);
      }
  });

  it("beyond the limit is nothing, not less than nothing", () => {
    const found = of({ ...adult, given: [{ ...lidocaine, cartridges: 15 }], planned: lidocaine });
    expect(found.overLimit).toBe(true);
    expect(found.planned).toMatchObject({ cartridgesLeft: 0, mg: 0, boundBy: "agent" });
    expect(found.planned?.bounds[0]?.cartridges).toBe(0);
  });
});

describe("the page of the method", () => {
  const page = readFileSync(fileURLToPath(new URL("../../../docs/methods/anaesthetic.md", import.meta.url)), "utf8");
  const [first, second] = [...page.matchAll(/```json input\n([\s\S]*?)```/g)].map(([, text]) =>
    of(JSON.parse(text ?? "")),
  );

  // By hand: 180 / 490; 90 / 200; (490 - 0) / 72, (200 - 90) / 18, (1 - 180 / 490) x 490 / 72; 180 / 490 + 360 / 490.
  it("says what its examples come to", () => {
    expect(first?.agents[0]?.fraction).toBeCloseTo(0.367, 3);
    expect(first?.vasoconstrictors[0]).toMatchObject({ given: 90, fraction: 0.45 });
    expect(first?.planned).toMatchObject({ cartridgesLeft: 4, mg: 288, boundBy: "sum" });
    expect(first?.planned?.bounds.map(({ by, cartridges }) => [by, Number(cartridges.toFixed(1))])).toEqual([
      ["sum", 4.3],
      ["vasoconstrictor", 6.1],
      ["agent", 6.8],
    ]);
    expect(first?.planned?.wanted?.fractionSum).toBeCloseTo(1.102, 3);
    expect(first?.planned?.wanted?.asks).toHaveLength(1);
    expect(second?.planned).toMatchObject({ limitMg: 140, cartridgesLeft: 3 });
  });
});
