import { describe, expect, it } from "vitest";
import { diagnosisOf, healthy, rowsIn, type Sheet, sheetOf, type Tests } from "../../../test/diagnosis-sheet.ts";
import { diagnosisInput } from "./terms/diagnosis-input.ts";
import { factsOf, withPulp } from "./terms/facts-of.ts";
import { examinedOf } from "./terms/input-faults.ts";
import { factWords, rows } from "./terms/rules.ts";

const none = { reply: "none" } as const;
const normal = { reply: "normal" } as const;
const short: Tests = { cold: { reply: "heightened", lingersSeconds: 2 } };
const between: Tests = { cold: { reply: "heightened", lingersSeconds: 10 } };
const notTender: Tests = { percussion: "none", palpation: "none" };
const tender: Tests = { percussion: "painful" };
const silent: Tests = { cold: none, electric: "none" };
const narrow: Tests = {
  probingMm: { mesiobuccal: 3, buccal: 9, distobuccal: 3, mesiolingual: 3, lingual: 2, distolingual: 3 },
};
const denied = { spontaneousPain: "no", painToCold: "no", painToHeat: "no" } as const;
const replies: Tests = { cold: normal, electric: 30 };
const filled: Sheet = { existing: [{ canal: "M", is: "filled" }] };
const tract: Sheet = { seen: { sinusTract: "present" } };
const lucent: Sheet = { onFilm: { lucency: "apical" } };
const swollen: Sheet = { seen: { swelling: "intraoral" } };
const rapid: Sheet = { seen: { swelling: "intraoral", swellingOnset: "rapid" } };

/** For each row of the table a sheet on which it holds; a row that decides a term is the one that decides here. */
const held: Readonly<Record<string, ReturnType<typeof sheetOf>>> = {
  U1: sheetOf({}, { seen: { swelling: "extraoral", swellingAt: ["floorOfMouth"] } }),
  U2: sheetOf({}, { history: { trismus: "yes" } }),
  U3: sheetOf({}, { history: { troubleSwallowing: "yes" } }),
  U4: sheetOf({}, { history: { troubleBreathing: "yes" } }),
  U5: sheetOf({}, { seen: { temperatureC: 38.1 } }),
  U6: sheetOf({}, { history: { numbLip: "yes" } }),
  U7: sheetOf({}, { onFilm: { lucency: "apical", lesionFits: "no" } }),
  U8: sheetOf({}, { history: { painLike: ["heart"] } }),
  S1: sheetOf({}, { history: { painLike: ["muscle"] } }),
  S2: sheetOf({}, { seen: { sinusTract: "traced", tracedTo: "37" } }),
  S3: sheetOf(notTender, {}, { percussion: "painful" }),
  S4: sheetOf({}, { history: { reproduced: "byNoTest" } }),
  P1: sheetOf({}, filled),
  P2: sheetOf({}, { existing: [{ canal: "M", is: "opened" }] }),
  P3: sheetOf(silent, {}, replies),
  P4: sheetOf({ cold: none }, lucent, { cold: normal }),
  P5: sheetOf(silent),
  P6: sheetOf({ cold: none }, {}, { cold: normal }),
  P7: sheetOf({ cold: none }, { onFilm: { lucency: "apical", apex: "open" } }, { cold: normal }),
  P8: sheetOf({ cold: none }, { onFilm: { calcified: "yes" } }, { cold: normal }),
  P9: sheetOf({ cold: { reply: "heightened", lingersSeconds: 31 } }),
  P10: sheetOf({ cold: { reply: "heightened" } }, { history: { spontaneousPain: "yes" } }),
  P11: sheetOf({ cold: normal }, { history: { referredPain: "yes" } }),
  P12: sheetOf({ heat: { reply: "heightened" } }, { history: { painToHeat: "yes", relievedByCold: "yes" } }),
  P13: sheetOf({ cold: { reply: "normal", lingersSeconds: 4 } }, { history: denied }),
  P14: sheetOf(between, { history: { nightPain: "yes" } }),
  P15: sheetOf({ cold: normal }, { history: denied, seen: { exposure: "excavation" } }),
  P16: sheetOf(between, { history: denied, seen: { exposure: "caries" } }),
  P17: sheetOf(short, { history: { ...denied, painToCold: "yes" } }),
  P18: sheetOf(between, { history: denied }),
  P19: sheetOf({ cold: { reply: "heightened" } }, { history: denied }),
  P20: sheetOf(short),
  P21: sheetOf({ cold: normal }, { history: denied }),
  P22: sheetOf({ cold: normal }, { history: denied, seen: { caries: "deep" } }),
  P23: sheetOf({ cold: normal }),
  P24: sheetOf(tender, swollen),
  P25: sheetOf({ cold: normal }),
  P26: sheetOf({ cold: normal }),
  P27: sheetOf({ tooth: "11", cold: normal }, { ...lucent, history: denied }),
  P28: sheetOf({ cold: none }, { history: { painToCold: "yes", spontaneousPain: "yes" } }),
  P29: sheetOf(short, { history: { ...denied, nightPain: "yes" } }),
  P30: sheetOf(short, { history: { ...denied, painToHeat: "yes" } }),
  P31: sheetOf(short, { history: denied, seen: { caries: "deep" } }),
  P32: sheetOf(short, { history: { ...denied, painToCold: "yes" }, seen: { exposure: "caries" } }),
  P33: sheetOf({ cold: none }, { history: { painToCold: "yes", spontaneousPain: "yes" } }),
  P34: sheetOf({ cold: none }, lucent, { cold: normal }),
  P35: sheetOf({ cold: normal }, { ...lucent, history: denied }),
  P36: sheetOf({ cold: none }, { onFilm: { lucency: "apical", calcified: "yes" } }),
  P37: sheetOf(silent, {}, { cold: none }),
  P38: sheetOf({ cold: normal }, { history: { spontaneousPain: "yes" } }),
  P39: sheetOf(short, { history: { spontaneousPain: "yes" } }),
  A1: sheetOf(tender, { ...rapid, ...filled }),
  A2: sheetOf({ ...tender, cold: normal }, rapid),
  A3: sheetOf({}, rapid),
  A4: sheetOf({ cold: normal }, tract),
  A5: sheetOf(narrow, { ...tract, ...filled }),
  A6: sheetOf({}, { seen: { sinusTract: "traced", tracedTo: "37" }, ...filled }),
  A7: sheetOf({}, { ...tract, ...filled, medical: { antiresorptive: "yes" } }),
  A8: sheetOf(tender, { ...tract, ...filled }),
  A9: sheetOf({ ...tender, cold: none }, swollen, { cold: none }),
  A10: sheetOf({}, { ...swollen, ...filled }),
  A11: sheetOf({ bite: "slight" }),
  A12: sheetOf({ cold: normal }, lucent),
  A13: sheetOf(notTender, { ...lucent, ...filled }),
  A14: sheetOf({}, { ...lucent, ...filled, history: { painOnBiting: "no" } }),
  A15: sheetOf(notTender, { onFilm: { lucency: "lateral" }, ...filled }),
  A16: sheetOf(notTender, { onFilm: { sclerosis: "yes" } }),
  A17: sheetOf({}, { onFilm: { sclerosis: "yes" } }),
  A18: sheetOf(notTender, { onFilm: { lucency: "none", ligament: "normal" } }),
  A19: sheetOf({ percussion: "none" }),
  A20: sheetOf(notTender, { onFilm: { lucency: "none", ligament: "widened" } }),
  A21: sheetOf(tender, { onFilm: { sclerosis: "yes" } }),
  A22: sheetOf(tender, { onFilm: { ligament: "widened" } }),
  A23: sheetOf(notTender, { onFilm: { lamina: "lost", lucency: "apical" }, ...filled }),
  A24: sheetOf(tender, lucent),
  A25: sheetOf(tender, { seen: { swelling: "intraoral", pus: "yes" }, ...filled }),
  A26: sheetOf(tender, { seen: { swelling: "intraoral", nodes: "yes" }, ...filled }),
  A27: sheetOf(notTender, { ...rapid, ...filled }),
  A28: sheetOf(tender, { ...tract, ...filled }),
  A29: sheetOf(tender, { onFilm: { lucency: "apical", lesionFits: "no" } }),
  A30: sheetOf({}, { seen: { sinusTract: "traced", tracedTo: "36" }, ...filled }),
  A31: sheetOf({}, { seen: { ...rapid.seen, sinusTract: "traced", tracedTo: "37" }, ...filled }),
  X1: sheetOf({ cold: none }, { history: { painToCold: "yes" } }),
  X2: sheetOf({ cold: none, electric: 30 }),
  X3: sheetOf({}, { existing: [{ canal: "M", is: "untouched" }], onFilm: { earlierFilling: "present" } }),
  X4: sheetOf({}, { ...filled, onFilm: { earlierFilling: "none" } }),
  X5: sheetOf({ cold: normal }, filled),
  X6: sheetOf({}, { seen: { fever: "no", temperatureC: 39 } }),
  X7: sheetOf({}, { seen: { caries: "exposed", exposure: "none" } }),
  X8: sheetOf({}, { seen: { caries: "none", exposure: "caries" } }),
  X9: sheetOf({ bite: "none" }, { history: { painOnBiting: "yes" } }),
  X10: sheetOf(short, { history: { coldLingersSeconds: 60 } }),
  X11: sheetOf({}, { seen: { swelling: "none", swellingAt: ["cheek"] } }),
  X12: sheetOf({ cold: normal }, rapid),
  X13: sheetOf({ cold: normal }, tract),
  X14: sheetOf({ cold: normal }, { ...lucent, history: denied }),
  X15: sheetOf({}, { onFilm: { lucency: "apical", lamina: "intact" } }),
  X16: sheetOf({}, { seen: { sinusTract: "none", tracedTo: "36" } }),
  X17: sheetOf({}, { takenOn: "2026-03-02", history: { trauma: "no", traumaOn: "2026-01-01" } }),
  Q1: sheetOf(narrow),
  Q2: sheetOf({ cold: normal }, lucent),
  Q3: sheetOf({}, { history: { painOnRelease: "yes" } }),
  Q4: sheetOf({}, { seen: { crack: "suspected" } }),
  Q5: sheetOf(between),
  Q6: sheetOf(silent, { onFilm: { apex: "open" } }),
  Q7: sheetOf({}, tract),
  Q8: sheetOf({}, { ...tract, medical: { antiresorptive: "yes" } }),
  Q9: sheetOf({}, { onFilm: { resorption: "external" } }),
  Q10: sheetOf({}, { seen: { swelling: "intraoral", swellingOnset: "gradual" } }),
  Q11: sheetOf({ cold: normal }),
  Q12: sheetOf({ cold: normal }, {}, { cold: none }),
  Q13: sheetOf({ cold: normal }),
  Q14: sheetOf({ cold: none }),
  Q15: sheetOf({}, tract),
  Q16: sheetOf({}, swollen),
  Q17: sheetOf({ tooth: "75" }),
};

describe("diagnosis C9: the table, row by row", () => {
  it("every row has its sheet, every sheet its row, and no id stands twice", () => {
    expect(Object.keys(held).sort()).toEqual(rows.map(({ id }) => id).sort());
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
  });

  it.each(rows.map((row) => [row.id, row.says, row] as const))("%s: %s", (id, _says, row) => {
    const output = diagnosisOf(held[id]);
    const axis = row.axis === "pulpal" ? output.pulpal : output.apical;
    if (row.kind === "term") {
      expect(axis.term).toBe(row.term);
      expect(axis.for[0]?.row).toBe(id);
      // What decides as possible never becomes determined; the other way round it may, where something is missing.
      expect(row.status === "determined" ? ["determined", "possible"] : [row.status]).toContain(axis.status);
    } else if (row.kind === "open") {
      expect(axis.alternatives.map(({ term }) => term)).toContain(row.term);
      expect(axis.alternatives.find(({ term }) => term === row.term)?.separatedBy).toContain(row.separatedBy);
    } else if (row.kind === "also") expect(output.apicalAlso).toBe(row.term);
    else expect(rowsIn(output)).toContain(id);
  });

  it.each(
    rows
      .filter(({ kind, status }) => kind === "term" && status === "determined")
      .map(({ id, axis, term }) => [id, axis, term] as const),
  )("%s decides as determined where nothing is missing", (id, axis, term) => {
    const whole = complete(id);
    expect(diagnosisOf(whole)[axis === "pulpal" ? "pulpal" : "apical"]).toMatchObject({ term, status: "determined" });
  });

  it("nothing holds on an empty sheet: no test that was not done speaks", () => {
    const output = diagnosisOf(sheetOf({}));
    expect(rowsIn(output)).toEqual([]);
    expect(output).toMatchObject({
      pulpal: { term: "not determined", status: "not determined", code: "no code" },
      apical: { term: "not determined", status: "not determined", code: "no code" },
      source: "this tooth",
    });
    expect(output.notComputed.map(({ name }) => name)).toEqual(["pulpal.term", "apical.term"]);
    expect(output.pulpal.alternatives.length).toBe(7);
    expect(output.apical.alternatives.length).toBe(6);
  });

  it("rows look at facts that are made, and every fact is worded", () => {
    const facts = factsOf(examinedOf(diagnosisInput.parse(healthy)));
    const made = Object.keys(withPulp(facts, { term: "Normal pulp", status: "determined" }));
    const wanted = rows.flatMap(({ when, settledBy }) => [...Object.keys(when), ...settledBy]);
    expect([...new Set(wanted)].filter((name) => !made.includes(name))).toEqual([]);
    expect([...new Set(wanted)].filter((name) => factWords[name] === undefined)).toEqual([]);
  });
});

/** The healthy sheet, everything done, with what the sheet of a row found laid over it; a silent tooth is silent to all. */
function complete(id: string) {
  const found = held[id];
  const [tooth, ...controls] = healthy.teeth;
  const tests = found?.teeth[0];
  const notDone = tests?.cold?.reply === "none" ? { heat: { reply: "notDone" }, electric: "notDone" } : {};
  return {
    ...{ ...healthy, ...found },
    history: { ...healthy.history, ...found?.history },
    seen: { ...healthy.seen, ...found?.seen },
    onFilm: { ...healthy.onFilm, ...found?.onFilm },
    teeth: [{ ...tooth, ...notDone, ...tests }, ...controls],
  };
}
