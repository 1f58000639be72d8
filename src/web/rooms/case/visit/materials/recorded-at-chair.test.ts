import { describe, expect, it } from "vitest";
import { computedAnaesthetic } from "../../../../../../test/computed-sums.ts";
import type { WhatIfAnswer } from "../../../../../ledger/what-if.ts";
import type { CabinetItem } from "../../../../../record/cabinet/cabinet-item.ts";
import { partTypes } from "../../../../../record/parts.ts";
import { newBodies } from "../../new-bodies.ts";
import { asksOf, confirmationFaults, confirmedOf } from "./confirmed-read.ts";
import { asksOfInjection, asksOfSolutions, doseAhead, leftInWords } from "./dose-ahead.ts";
import { fractionInWords, limitMark, vasoconstrictorInWords } from "./dose-in-words.ts";
import { askedOfLot, lotOf, withExpiredNoted, withLot } from "./lots-of.ts";
import { offerOfDigit } from "./offers.tsx";
import type { Injection } from "./read-injection.ts";
import { isExpired, stockOffered } from "./stock-offered.ts";
import { secondsBetween } from "./stopwatch.ts";
import { withAnswer } from "./with-answer.ts";
import { withFilling } from "./with-filling.ts";

const on = "2026-03-02";
const visit = newBodies.visit(on, { MB: { state: "shaped" }, DB: { state: "shaped" } });
const stands = { visitId: "visit-a", revision: 3, visit };
const lidocaine: Injection = {
  ...{ agent: "lidocaine", percent: 2, vasoconstrictor: { name: "epinephrine", ratio: 100_000 } },
  ...{ cartridgeMl: 1.8, cartridges: 12 },
};

describe("what the clinic offers", () => {
  const stock = (id: string, body: object): CabinetItem =>
    ({ id, kind: "stock", revision: 1, body: { name: id, ...body } }) as CabinetItem;
  const irrigant = { holds: { kind: "irrigant", solution: "EDTA" } };
  const items: readonly CabinetItem[] = [
    stock("stock-a", irrigant),
    stock("stock-b", { ...irrigant, expires: "2026-03-01" }),
    stock("stock-c", { holds: { kind: "temporary", material: "cement" } }),
    {
      id: "template-a",
      kind: "template",
      revision: 1,
      body: { name: "t", steps: [], stock: ["stock-b", "stock-gone"] },
    },
  ];

  it("stands in the template's order first, then in the cabinet's, of its kind alone", () => {
    const ids = (template?: string) => stockOffered(items, "irrigant", template).map(({ id }) => id);
    expect(ids()).toEqual(["stock-a", "stock-b"]);
    expect(ids("template-a")).toEqual(["stock-b", "stock-a"]);
    expect(ids("template-of-nothing")).toEqual(["stock-a", "stock-b"]);
  });

  it("is past its day from the day after it", () => {
    const [first, second] = stockOffered(items, "irrigant", undefined);
    expect(first && isExpired(first, on)).toBe(false);
    expect(second && isExpired(second, on)).toBe(true);
    expect(second && isExpired(second, "2026-03-01")).toBe(false);
  });

  it("is chosen by its digit, another one by 0", () => {
    const offers = [{ id: "a" }, { id: "b" }];
    expect(["1", "2", "3", "0", "x"].map((key) => offerOfDigit(key, offers))).toEqual([
      ...["a", "b", undefined, "another", undefined],
    ]);
  });
});

describe("an answer to what is asked", () => {
  const amounts = [{ at: "percent", says: "5 is unusual: is it so?", unusual: "percent" as const }];

  it("needs who confirmed it, and over a limit why", () => {
    expect(confirmationFaults({}, { amounts: [] })).toEqual({});
    expect(Object.keys(confirmationFaults({}, { amounts }))).toEqual(["confirmedBy"]);
    expect(Object.keys(confirmationFaults({ confirmedBy: " " }, { amounts, limits: ["over"] }))).toEqual([
      ...["confirmedBy", "because"],
    ]);
    expect(confirmationFaults({ confirmedBy: "S", because: "pain" }, { amounts, limits: ["over"] })).toEqual({});
  });

  it("is recorded with the questions as they were read, as the record takes them", () => {
    const { confirmed } = confirmedOf({ confirmedBy: " S ", because: "" }, { amounts, limits: ["over", "over"] });
    expect(confirmed).toEqual({ by: "S", asked: ["over", "5 is unusual: is it so?"], unusual: ["percent"] });
    const rows = [{ ...lidocaine, confirmed }];
    expect(partTypes.visit.body.safeParse({ ...visit, anaesthetic: rows }).error).toBeUndefined();
    expect(confirmedOf({ confirmedBy: "S" }, { amounts: [] })).toEqual({});
  });

  it("holds no more and no longer questions than the record takes", () => {
    const many = Array.from({ length: 20 }, (_, at) => `${at} ${"x".repeat(400)}`);
    const asks = asksOf({ amounts: [], limits: many });
    expect(asks.length).toBe(12);
    expect(Math.max(...asks.map((ask) => ask.length))).toBe(300);
  });
});

describe("the sum before an injection is recorded", () => {
  it("is asked with the dose as the next one, and as if it were given; nothing else of the visit differs", () => {
    const [next, given] = asksOfInjection(stands, { ...lidocaine, technique: "block", atMin: 3 });
    expect(next).toMatchObject({ topic: "anaesthetic", subject: "anaesthetic of visit-a" });
    expect(next?.operations).toEqual([
      {
        ...{ op: "put", id: "visit-a", kind: "visit", baseRevision: 3 },
        body: { ...visit, nextAnaesthetic: lidocaine },
      },
    ]);
    expect(given?.operations[0]).toMatchObject({ body: { anaesthetic: [lidocaine] } });
    for (const { operations } of [next, given].flatMap((ask) => ask ?? []))
      expect(operations.map((one) => one.op === "put" && partTypes.visit.body.safeParse(one.body).error)).toEqual([
        undefined,
      ]);
    expect(asksOfSolutions(stands, [lidocaine]).length).toBe(1);
  });

  it("lets pass what is unusual, so that it is looked at as well", () => {
    const [next, given] = asksOfInjection(stands, { ...lidocaine, percent: 5 });
    const unusual = { percent: 5, confirmed: { unusual: ["percent"] } };
    expect(given?.operations[0]).toMatchObject({ body: { anaesthetic: [unusual] } });
    expect(next?.operations[0]).toMatchObject({ body: { nextAnaesthetic: unusual } });
    const [left] = asksOfSolutions(stands, [{ ...lidocaine, percent: 5 }]);
    expect(left?.operations[0]).toMatchObject({ body: { nextAnaesthetic: unusual } });
  });

  const answer = (over: Partial<WhatIfAnswer>): WhatIfAnswer => ({ topic: "anaesthetic", subject: "s", ...over });
  const computed = (input: object) => answer({ output: computedAnaesthetic(input) });

  it("asks over a limit in the sum's own words, and nothing below it", () => {
    const over = [computed({ given: [], planned: lidocaine }), computed({ given: [lidocaine] })];
    // 12 x 1.8 ml x 10 micrograms are 216, above 200.
    expect(doseAhead(over).limits).toEqual([
      "With these cartridges: Epinephrine: 216 micrograms are above the limit of 200 micrograms by 16.",
    ]);
    const few = { ...lidocaine, cartridges: 2 };
    const below = doseAhead([computed({ given: [], planned: few }), computed({ given: [few] })]);
    expect(below).toMatchObject({ waits: false, limits: [] });
    expect(below.planned && leftInWords(below.planned, lidocaine)).toBe("11 left, by the limit of epinephrine");
  });

  it("asks by the stops where the next one alone was refused as unusual", () => {
    const read = doseAhead([answer({ refusal: ["planned.percent: 5 is unusual"] }), computed({ given: [lidocaine] })]);
    expect(read.limits).toEqual([
      "With these cartridges: Epinephrine: 216 micrograms are above the limit of 200 micrograms by 16.",
    ]);
  });

  it("says why the limit can't be looked at", () => {
    const gap = answer({ gap: "the body mass is not recorded" });
    expect(doseAhead([gap, gap])).toEqual({ waits: false, why: "the body mass is not recorded", limits: [] });
    const light = "bodyMassKg: 7 kg is not the mass of a person of 40 years";
    expect(doseAhead([answer({ refusal: [light] }), answer({ refusal: [light] })]).why).toBe(light);
  });
});

describe("a share of a limit in words", () => {
  it("says below and above, also where two decimals would hide it", () => {
    expect(fractionInWords(0.4213)).toBe("0.42 of the limit, below");
    expect(fractionInWords(1)).toBe("1.00 of the limit, at it");
    expect(fractionInWords(1.00007)).toBe("1.00007 of the limit, above");
    expect([0.4, 1, 1.00007, undefined].map(limitMark)).toEqual(["●", "●", "▲", "◇"]);
  });

  it("says of a vasoconstrictor without a limit that there is none", () => {
    const row = { name: "felypressin", given: 0.054, unit: "IU" } as const;
    expect(vasoconstrictorInWords(row)).toMatch(/no limit of it is known here/);
  });
});

describe("what stays in the tooth", () => {
  const lot = { material: "sealer", lot: "L1", expires: "2027-01-01", stays: true };

  it("has a lot row where lot or expiry is told, and each once", () => {
    expect(lotOf("sealer", { lot: " L1 ", expires: "2027-01-01" })).toEqual(lot);
    expect(lotOf("sealer", {})).toBeUndefined();
    expect(withLot([], lot)).toEqual([lot]);
    expect(withLot([{ ...lot, stays: false }], lot)).toEqual([lot]);
    expect(withLot([lot], undefined)).toEqual([lot]);
  });

  it("is asked for past its day, and noted in the log while the clock runs", () => {
    expect(askedOfLot("sealer", { expires: "2026-03-01" }, on).length).toBe(1);
    expect(askedOfLot("sealer", { expires: "" }, on)).toEqual([]);
    expect(withExpiredNoted(visit, "expired", 12.7).log).toEqual([{ atMin: 12, says: "expired" }]);
    expect(withExpiredNoted(visit, "expired", undefined)).toBe(visit);
    expect(withExpiredNoted(visit, "", 12)).toBe(visit);
  });

  it("is written where it belongs, after what stands there", () => {
    const filled = withFilling(withFilling(visit, "cones", "core", ["MB"]), "sealer", "sealer", ["MB"]);
    expect(filled.canals.map(({ filledWith }) => filledWith)).toEqual(["cones, sealer", undefined]);
    expect(withFilling(filled, "sealer", "sealer", ["MB"]).canals).toEqual(filled.canals);
    expect(withFilling(visit, "resin", "barrier", []).orificeBarrier).toBe("resin");
    expect(withFilling(visit, "composite", "buildUp", []).buildUp).toBe("composite");
  });
});

describe("an answer about the person", () => {
  const history = { ...newBodies.medicalHistory(on), nothingToNote: true };

  it("of no is denied, of yes a flag; the one takes the other's place", () => {
    const no = withAnswer(history, "cardiacRisk", false);
    expect(no).toMatchObject({ denied: ["cardiacRisk"], flags: [], nothingToNote: true });
    const yes = withAnswer(no, "cardiacRisk", true);
    expect(yes).toMatchObject({ denied: [], flags: [{ flag: "cardiacRisk" }], nothingToNote: false });
    expect(withAnswer(yes, "cardiacRisk", true).flags).toEqual(yes.flags);
    expect(partTypes.medicalHistory.body.safeParse(yes).error).toBeUndefined();
  });
});

describe("the clocks", () => {
  it("count a burst to a tenth of a second, and never nothing", () => {
    expect(secondsBetween(1_000, 13_340)).toBe(12.3);
    expect(secondsBetween(1_000, 1_010)).toBe(0.1);
  });
});
