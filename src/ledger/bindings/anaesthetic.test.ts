import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { part } from "../../../test/sample-case.ts";
import type { BodyOf } from "../../record/parts.ts";
import { anaestheticTold } from "../anaesthetic-told.ts";
import { historyTakenOver } from "../visit-sums/history-answers.ts";
import { entryOf, history, lidocaine, visitEntries, visitParts } from "../visit-sums/visit-for-tests.ts";

type Visit = BodyOf<"visit">;
const subject = "anaesthetic of visit-1";
const given = (cartridges: number, more: Partial<Visit["anaesthetic"][number]> = {}): Visit["anaesthetic"] => [
  { ...lidocaine, cartridges, ...more },
];
const inputOf = (used: Partial<Visit>, ...more: Parameters<typeof visitParts>[1][]) =>
  entryOf(visitParts(used, ...more), subject).input;

describe("the anaesthetic of a visit", () => {
  it("is asked where some was given or is to be given, and not elsewhere", () => {
    const subjects = (used: Partial<Visit>) => visitEntries(visitParts(used)).map((entry) => entry.subject);
    expect(subjects({})).toEqual([]);
    expect(subjects({ anaesthetic: given(1) })).toEqual([subject]);
    expect(subjects({ nextAnaesthetic: lidocaine })).toEqual([subject]);
  });

  // Lidocaine label (2018, seen): 7 mg/kg up to 500 mg with epinephrine. 2 x 1.8 ml x 20 mg/ml = 72 mg, 36 micrograms of epinephrine.
  it("comes to the milligrams that the cartridges hold, against the label's limit", () => {
    const told = anaestheticTold(
      visitEntries(visitParts({ anaesthetic: given(2), nextAnaesthetic: lidocaine })),
      "visit-1",
    );
    expect(told?.output?.agents).toMatchObject([{ agent: "lidocaine", givenMg: 72, limitMg: 490 }]);
    expect(told?.output?.vasoconstrictors).toMatchObject([{ name: "epinephrine", given: 36, limit: 200 }]);
    // 490 - 72 = 418 mg are 11.6 cartridges of 36 mg; 200 - 36 = 164 micrograms are 9.1 of 18.
    expect(told?.output?.planned).toMatchObject({ cartridgesLeft: 9, boundBy: "vasoconstrictor" });
  });

  it("is the sum of all rows, however they are split (property)", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 8 }), { minLength: 1, maxLength: 6 }), (halves) => {
        const rows = halves.flatMap((one) => given(one / 2));
        const whole = given(halves.reduce((sum, one) => sum + one, 0) / 2);
        const mg = (anaesthetic: Visit["anaesthetic"]) =>
          anaestheticTold(visitEntries(visitParts({ anaesthetic })), "visit-1")?.output?.agents[0]?.givenMg;
        // More than 20 cartridges in one row are asked for; so many together in several rows are not.
        if (whole.every(({ cartridges }) => cartridges <= 20)) expect(mg(rows)).toBeCloseTo(mg(whole) ?? -1, 3);
      }),
      { numRuns: 20 },
    );
  });

  it("rests on the mass of the visit, else on the last history up to it; with none it says where to write it", () => {
    const before = history("history-1", "2023-01-01", { bodyMassKg: 60 });
    const after = history("history-2", "2024-03-05", { bodyMassKg: 80 });
    const without = { anaesthetic: given(1), vitalSigns: undefined } as unknown as Partial<Visit>;
    const used = entryOf(visitParts(without, before, after), subject);
    expect(used.input).toMatchObject({ bodyMassKg: 60 });
    expect(used.inputPaths).toContainEqual({ input: "bodyMassKg", record: "history-1/bodyMassKg" });
    expect(inputOf({ anaesthetic: given(1) }, before)).toMatchObject({ bodyMassKg: 70 });
    const gap = entryOf(visitParts(without, after), subject);
    expect(gap.refused).toEqual([expect.stringContaining("write it into the vital signs of this visit")]);
    expect(gap.inputPaths).toEqual([{ input: "bodyMassKg", record: "visit-1/vitalSigns/bodyMassKg" }]);
  });

  it("takes the lower of both ages that a year of birth allows, and says that it did", () => {
    // Born in 1967: on 4 March 2024 56 or 57.
    const { input, output, inputPaths } = entryOf(visitParts({ anaesthetic: given(1) }), subject);
    expect(input).toMatchObject({ ageYears: 56, ageIsLeast: true, sex: "female" });
    expect(inputPaths).toContainEqual({ input: "ageYears", record: "about/birthYear" });
    expect(JSON.stringify(output)).toContain("56 years at least");
    const asked = inputOf({ anaesthetic: given(1), vitalSigns: { bodyMassKg: 70, ageYears: 57, heightCm: 165 } });
    expect(asked).toMatchObject({ ageYears: 57, heightCm: 165 });
    expect(asked).not.toHaveProperty("ageIsLeast");
  });

  it("hears what the history answers, and asks what nobody answered", () => {
    const told = (...more: Parameters<typeof visitParts>[1][]) =>
      inputOf({ anaesthetic: given(1), historyConfirmed: false }, ...more);
    expect(told()).not.toHaveProperty("cardiacRisk");
    expect(told()).not.toHaveProperty("history");
    const flagged = history("history-1", "2023-01-01", {
      flags: [{ flag: "cardiacRisk" }, { flag: "thyroidUncontrolled" }, { flag: "highBloodPressure" }],
      denied: ["allergySulphite", "cocaineWithinADay"],
    });
    // That there is high blood pressure does not say that it is out of control; a no about cocaine holds for its day.
    expect(told(flagged)).toMatchObject({ cardiacRisk: true });
    expect(told(flagged)).toHaveProperty("history", { uncontrolledThyroid: "yes", sulphiteAllergy: "no" });
    const later = history("history-2", "2024-03-04", { denied: ["cardiacRisk", "cocaineWithinADay"] });
    expect(told(flagged, later)).toMatchObject({
      cardiacRisk: false,
      history: { uncontrolledThyroid: "yes", sulphiteAllergy: "no", cocaineWithinADay: "no" },
    });
    expect(told(history("history-1", "2024-01-01", { nothingToNote: true }))).toMatchObject({
      cardiacRisk: false,
      history: { uncontrolledBloodPressure: "no", liverFailure: "no" },
    });
    expect(told(history("history-1", "2024-01-01", { nothingToNote: true }))).not.toHaveProperty("history.pregnancy");
  });

  it("hears of blood pressure out of control by a flag of its own, of the day it was asked", () => {
    const asked = (...more: Parameters<typeof visitParts>[1][]) =>
      inputOf({ anaesthetic: given(1), historyConfirmed: false }, ...more);
    const high = { flags: [{ flag: "highBloodPressure" as const }] };
    const before = history("history-1", "2023-01-01", { ...high, denied: ["bloodPressureUncontrolled", "tricyclic"] });
    expect(asked(before)).not.toHaveProperty("history.uncontrolledBloodPressure");
    const no = history("history-2", "2024-03-04", { ...high, denied: ["bloodPressureUncontrolled"] });
    expect(asked(before, no)).toHaveProperty("history.uncontrolledBloodPressure", "no");
    const yes = history("history-2", "2024-03-04", { flags: [{ flag: "bloodPressureUncontrolled" }] });
    expect(asked(before, yes)).toHaveProperty("history.uncontrolledBloodPressure", "yes");
    expect(asked(history("history-2", "2024-01-01", { denied: ["highBloodPressure"] }))).toHaveProperty(
      "history.uncontrolledBloodPressure",
      "no",
    );
  });

  it("counts an answer of the day in a history taken over from another, and none of that other day", () => {
    const old = {
      ...{ takenOn: "2023-01-01", nothingToNote: false, flags: [{ flag: "asthma" as const }], medicines: ["m"] },
      ...{ denied: ["cocaineWithinADay" as const, "tricyclic" as const], bodyMassKg: 60, note: "" },
    };
    const over = historyTakenOver(old, "2024-03-04");
    expect(over).toMatchObject({ takenOn: "2024-03-04", flags: old.flags, medicines: ["m"], denied: ["tricyclic"] });
    expect(over).not.toHaveProperty("bodyMassKg");
    expect(historyTakenOver(old, old.takenOn)).toBe(old);
    const answered = { ...over, denied: [...(over.denied ?? []), "pregnancy" as const] };
    const used = inputOf(
      { anaesthetic: given(1), historyConfirmed: false },
      part("medicalHistory", "history-1", old),
      part("medicalHistory", "history-2", answered),
    );
    expect(used).toHaveProperty("history", { pregnancy: "no", tricyclic: "no" });
  });

  it("holds 40 micrograms of epinephrine where the heart is flagged, 200 where it is not", () => {
    const limit = (...more: Parameters<typeof visitParts>[1][]) =>
      anaestheticTold(visitEntries(visitParts({ anaesthetic: given(3) }, ...more)), "visit-1")?.output;
    expect(limit()?.vasoconstrictors[0]?.limit).toBe(200);
    const cardiac = limit(history("history-1", "2024-01-01", { flags: [{ flag: "cardiacRisk" }] }));
    expect(cardiac?.vasoconstrictors[0]).toMatchObject({ given: 54, limit: 40 });
    expect(cardiac?.overLimit).toBe(true);
  });

  it("is held to the limits of the visit's clinic, and says so where own ones are chosen and none is written", () => {
    const own = [{ agent: "lidocaine", mgPerKg: 4.4, source: "house rules" }];
    const used = entryOf(
      visitParts({ anaesthetic: given(1), clinic: { doseLimits: "own", ownDoseLimits: own } }),
      subject,
    );
    expect(used.input).toMatchObject({ limitSet: own });
    expect(used.inputPaths).toContainEqual({ input: "limitSet", record: "visit-1/clinic/ownDoseLimits" });
    expect(inputOf({ anaesthetic: given(1), clinic: { doseLimits: "canada" } })).toMatchObject({ limitSet: "canada" });
    expect(entryOf(visitParts({ anaesthetic: given(1), clinic: { doseLimits: "own" } }), subject).refused).toEqual([
      expect.stringContaining("the clinic's own limits are chosen and none is written"),
    ]);
  });
});

describe("amounts of an anaesthetic that can't be, or are unusual", () => {
  const refusedOf = (used: Partial<Visit>) => entryOf(visitParts(used), subject).refused;

  it("a strength outside what is usual is refused until it is confirmed, for that row alone", () => {
    const weak = { ...lidocaine, percent: 0.2, cartridges: 1 };
    expect(refusedOf({ anaesthetic: [weak] })).toEqual([
      expect.stringMatching(/^given\[0\]\.percent: 0\.2 is unusual of lidocaine .*confirm percent/),
    ]);
    const confirmed = { by: "N. N.", asked: ["0.2 % is unusual"], unusual: ["percent" as const] };
    expect(refusedOf({ anaesthetic: [{ ...weak, confirmed }] })).toBeUndefined();
    expect(refusedOf({ anaesthetic: [{ ...weak, confirmed }, weak] })).toEqual([
      expect.stringContaining("given[1].percent"),
    ]);
    expect(
      refusedOf({ anaesthetic: [{ ...weak, confirmed }], nextAnaesthetic: { ...lidocaine, percent: 0.2 } }),
    ).toBeUndefined();
    expect(
      refusedOf({ anaesthetic: [{ ...weak, confirmed }], nextAnaesthetic: { ...lidocaine, percent: 0.3 } }),
    ).toEqual([expect.stringContaining("planned.percent")]);
    // What was confirmed is the amount that was read: the row changed afterwards is asked for again.
    expect(refusedOf({ anaesthetic: [{ ...weak, percent: 0.3, confirmed }] })).toEqual([
      expect.stringContaining("given[0].percent"),
    ]);
    // Who stands by the planned solution itself is heard as well, and of it alone.
    const planned = { ...lidocaine, percent: 0.3, confirmed: { ...confirmed, asked: ["0.3 % is unusual"] } };
    expect(refusedOf({ nextAnaesthetic: planned })).toBeUndefined();
    expect(refusedOf({ anaesthetic: [{ ...weak, percent: 0.3 }], nextAnaesthetic: planned })).toEqual([
      expect.stringContaining("given[0].percent"),
    ]);
  });

  it("a ratio of another vasoconstrictor's strength is refused: 1:20000 of epinephrine", () => {
    const strong = { name: "epinephrine", ratio: 20_000 } as const;
    expect(refusedOf({ anaesthetic: given(1, { vasoconstrictor: strong }) })).toEqual([
      expect.stringContaining("given[0].vasoconstrictor.ratio: 20000 is unusual"),
    ]);
    expect(refusedOf({ anaesthetic: given(1, { vasoconstrictor: { name: "epinephrine" } }) })).toEqual([
      "given[0].vasoconstrictor.ratio: nothing is given; 1:100000 is written 100000",
    ]);
  });

  it("an adult of 7 kg is refused whoever confirms it; a small child of 7 kg is not", () => {
    const confirmed = { by: "N. N.", asked: ["7 kg"], unusual: ["bodyMassKg" as const] };
    const light = { anaesthetic: given(0.5, { confirmed }), vitalSigns: { bodyMassKg: 7 } };
    expect(refusedOf(light)).toEqual([
      expect.stringContaining("bodyMassKg: 7 kg is not the mass of a person of 56 years"),
    ]);
    const child = { ...light, vitalSigns: { bodyMassKg: 7, ageYears: 0.5 } };
    expect(refusedOf(child)).toBeUndefined();
  });

  it("a mass that a person stands by goes through, and is said", () => {
    const heavy = { vitalSigns: { bodyMassKg: 28 }, anaesthetic: given(0.5) };
    expect(refusedOf(heavy)).toEqual([expect.stringContaining("bodyMassKg: 28 kg is unusual")]);
    const confirmed = { by: "N. N.", asked: ["28 kg"], unusual: ["bodyMassKg" as const] };
    const { output } = entryOf(visitParts({ ...heavy, anaesthetic: given(0.5, { confirmed }) }), subject);
    expect(JSON.stringify(output)).toContain("Confirmed although unusual: bodyMassKg.");
    expect(refusedOf({ vitalSigns: { bodyMassKg: 25 }, anaesthetic: given(0.5, { confirmed }) })).toEqual([
      expect.stringContaining("bodyMassKg: 25 kg is unusual"),
    ]);
  });

  it.each([
    ["percent", { percent: 0.02 }],
    ["percent", { percent: 100_000 }],
    ["cartridges", { cartridges: -1 }],
    ["cartridgeMl", { cartridgeMl: -1.8 }],
  ])("a %s of %o does not reach the record", (_field, wrong) => {
    expect(() => visitParts({ anaesthetic: [{ ...lidocaine, cartridges: 1, ...wrong }] })).toThrow();
  });
});

/** The sample's other person, for what hangs on the case itself. */
it("leaves out a sex that is not told and an age that nobody has", () => {
  const [about, ...rest] = visitParts({ anaesthetic: given(1) });
  if (about?.kind !== "case") throw new Error("the first part is the case");
  const other = part("case", "about", { ...about.body, sex: "notRecorded", birthYear: 1900 });
  const { input } = entryOf([other, ...rest], subject);
  expect(input).not.toHaveProperty("sex");
  expect(input).not.toHaveProperty("ageYears");
});
