import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anaestheticTopic } from "../core/safety/anaesthetic-topic.ts";
import type { BodyOf } from "./parts.ts";
import {
  expiredAsked,
  mistakenPercent,
  mistakenRatio,
  unusualDose,
  unusualInjection,
  unusualIrrigant,
} from "./unusual-amounts.ts";

type Visit = BodyOf<"visit">;
type Injection = Visit["anaesthetic"][number];

const injection = (over: Partial<Injection> = {}): Injection => ({
  ...{ agent: "lidocaine", percent: 2, vasoconstrictor: { name: "epinephrine", ratio: 100_000 } },
  ...{ cartridgeMl: 1.8, cartridges: 1 },
  ...over,
});
const irrigant = (over: Partial<Visit["irrigation"][number]> = {}): Visit["irrigation"][number] => ({
  ...{ solution: "sodium hypochlorite", percent: 3, volumeMl: 5, minutes: 2, activated: "no" },
  ...over,
});

describe("an injection", () => {
  it("of a cartridge that is sold is not asked for", () => {
    expect(unusualInjection(injection())).toEqual([]);
    expect(unusualInjection(injection({ agent: "bupivacaine", percent: 0.5 }))).toEqual([]);
  });

  it.each([
    [{ percent: 5 }, "percent", /5 is unusual of lidocaine \(0\.5 to 4 is usual\): is it so\?/],
    [{ vasoconstrictor: { name: "epinephrine", ratio: 10_000 } }, "vasoconstrictor.ratio", /10000 is unusual/],
    [{ vasoconstrictor: { name: "felypressin", iuPerMl: 0.3 } }, "vasoconstrictor.iuPerMl", /0\.3 is unusual/],
    [{ cartridgeMl: 0.5 }, "cartridgeMl", /0\.5 is unusual of a cartridge/],
    [{ cartridges: 21 }, "cartridges", /21 cartridges at a time are unusual: cartridges, not ml\?/],
  ] as const)("with %o is asked once", (over, at, says) => {
    const asked = unusualInjection(injection(over));
    expect(asked.map((one) => one.at)).toEqual([at]);
    expect(asked[0]?.says).toMatch(says);
    expect(at.endsWith(asked[0]?.unusual ?? "nothing")).toBe(true);
  });

  it("at the edge of what is usual is not asked for", () => {
    expect(unusualInjection(injection({ percent: 4, cartridges: 20, cartridgeMl: 2.5 }))).toEqual([]);
  });

  // The sum refuses exactly what is asked here, and takes it once it is told that a person stands by it.
  it("is asked for exactly where the sum would refuse it, and taken by the sum once confirmed", () => {
    const amounts = fc.record({
      percent: fc.constantFrom(0.1, 0.4, 0.5, 2, 4, 4.5, 5),
      ratio: fc.constantFrom(10_000, 50_000, 100_000, 400_000, 500_000, 1_000_000),
      cartridgeMl: fc.constantFrom(0.5, 1, 1.8, 2.5, 3),
      cartridges: fc.constantFrom(0.5, 1, 20, 20.5, 30),
    });
    fc.assert(
      fc.property(amounts, ({ ratio, ...over }) => {
        const row = injection({ ...over, vasoconstrictor: { name: "epinephrine", ratio } });
        const asked = unusualInjection(row);
        const confirmed = asked.flatMap(({ unusual }) => unusual ?? []);
        const compute = (names: typeof confirmed) => () =>
          anaestheticTopic.compute({
            ...{ bodyMassKg: 70, ageYears: 40, given: [{ ...row, confirmed: [] }] },
            ...(names.length === 0 ? {} : { confirmed: names }),
          });
        expect(confirmed.length).toBe(asked.length);
        if (asked.length === 0) expect(compute([])).not.toThrow();
        else expect(compute([])).toThrow();
        expect(compute(confirmed)).not.toThrow();
      }),
    );
  });
});

describe("an irrigant", () => {
  it("as it is usually used is not asked for", () => {
    expect(unusualIrrigant(irrigant())).toEqual([]);
    expect(unusualIrrigant(irrigant({ solution: "other", named: "propolis", percent: 90 }))).toEqual([]);
    expect(unusualIrrigant(irrigant({ volumeMl: 60, minutes: 60 }))).toEqual([]);
  });

  it.each([
    [{ volumeMl: 60.1 }, "volumeMl", /60\.1 ml at once are unusual/],
    [{ minutes: 61 }, "minutes", /61 min of contact are unusual/],
    [{ percent: 12 }, "percent", /12 % is unusual of sodium hypochlorite \(0\.5 to 8\.25 % is usual\)/],
    [{ percent: 0.0525 }, "percent", /0\.0525 % is unusual/],
    [{ solution: "chlorhexidine", percent: 20 }, "percent", /20 % is unusual of chlorhexidine/],
    [
      { needle: { depthFromStopMm: 2, sideVented: true, flowMlPerMin: 16 } },
      "needle.flowMlPerMin",
      /16 ml\/min through a needle/,
    ],
  ] as const)("with %o is asked once", (over, at, says) => {
    const asked = unusualIrrigant(irrigant(over));
    expect(asked.map((one) => one.at)).toEqual([at]);
    expect(asked[0]?.says).toMatch(says);
  });
});

describe("a dose of solvent", () => {
  it("is asked for above a millilitre, with what microlitres are written as", () => {
    expect(unusualDose({ solvent: "chloroform", volumeMl: 1, atMin: 3 })).toEqual([]);
    const [asked] = unusualDose({ solvent: "chloroform", volumeMl: 1.1, atMin: 3 });
    expect(asked?.says).toBe(
      "1.1 ml of solvent at once are unusual (up to 1 is usual); 100 microlitres are written 0.1: is it so?",
    );
  });
});

describe("a package", () => {
  it("is asked for from the day after its last", () => {
    expect(expiredAsked("sealer", undefined, "2026-03-02")).toEqual([]);
    expect(expiredAsked("sealer", "2026-03-02", "2026-03-02")).toEqual([]);
    expect(expiredAsked("sealer", "2026-03-01", "2026-03-02")[0]?.says).toBe(
      "sealer expired on 2026-03-01: is it used all the same?",
    );
  });
});

describe("a number in the wrong field", () => {
  it.each([
    [100_000, /looks like the ratio of the vasoconstrictor \(1:100000\)/],
    [40, /looks like mg\/ml: 40 mg\/ml are 4 %/],
    [0.04, /looks like a share: 4 % is written 4, not 0\.04/],
    [-4, /a strength is above 0/],
    [0, /a strength is above 0/],
    [6, /above every strength of a cartridge/],
  ])("of a strength, %f, is told for what it looks like", (value, says) => {
    expect(mistakenPercent(value)).toMatch(says);
  });

  it.each([
    [4, /4 looks like the strength in percent; the ratio 1:100000 is written 100000/],
    [10, /looks like micrograms a ml/],
    [0.000_01, /looks like a share/],
    [1_000, /a strength for emergencies or a nought short/],
    [-100_000, /a ratio is above 0/],
    [2_000_000, /weaker than any cartridge/],
  ])("of a ratio, %f, is told for what it looks like", (value, says) => {
    expect(mistakenRatio(value)).toMatch(says);
  });

  it("is let pass where it can be one", () => {
    expect([0.1, 2, 4, 5].map(mistakenPercent)).toEqual([undefined, undefined, undefined, undefined]);
    expect([10_000, 100_000, 1_000_000].map(mistakenRatio)).toEqual([undefined, undefined, undefined]);
  });
});
