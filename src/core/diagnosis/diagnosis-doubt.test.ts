import { describe, expect, it } from "vitest";
import { diagnosisOf, healthy, type Sheet, sheetOf, type Tests } from "../../../test/diagnosis-sheet.ts";

const none = { reply: "none" } as const;
const normal = { reply: "normal" } as const;
const notTender: Tests = { percussion: "none", palpation: "none" };
const looked = { swelling: "none", sinusTract: "none" } as const;
const filled: Sheet = { existing: [{ canal: "D", is: "filled" }] };
const rowsOf = (entries: readonly { readonly row: string }[]) => entries.map(({ row }) => row);

describe("diagnosis C1: a tract that leads to another tooth says nothing of this one", () => {
  const to = (tracedTo: string): Sheet => ({ seen: { sinusTract: "traced", tracedTo } });

  it("is no sign of infection beside one silent test; one that leads here is", () => {
    expect(diagnosisOf(sheetOf({ cold: none }, to("37"), { cold: normal })).pulpal).toMatchObject({
      ...{ term: "Pulp necrosis", status: "possible" },
    });
    expect(diagnosisOf(sheetOf({ cold: none }, to("36"), { cold: normal })).pulpal).toMatchObject({
      ...{ term: "Pulp necrosis", status: "determined" },
    });
  });

  it.each(["37", "36"])(
    "leaves an acute abscess possible where it leads to 37, and not where it leads here: %s",
    (to) => {
      const seen = { sinusTract: "traced", tracedTo: to, swelling: "intraoral", swellingOnset: "rapid" } as const;
      const { apical, source } = diagnosisOf(sheetOf({ percussion: "painful" }, { ...filled, seen }));
      expect(apical.term).toBe("Acute apical abscess");
      expect(apical.status).toBe(to === "36" ? "determined" : "possible");
      expect(source).toBe(to === "36" ? "this tooth" : "another tooth");
      expect(rowsOf(apical.against).includes("A31")).toBe(to === "37");
    },
  );
});

describe("diagnosis C6: a lesion that does not fit is no determined term", () => {
  it.each<[string, Tests, Sheet]>([
    ["Asymptomatic apical periodontitis", notTender, { ...filled, seen: looked }],
    ["Symptomatic apical periodontitis", { percussion: "painful" }, { ...filled, seen: looked }],
    [
      "Acute apical abscess",
      { percussion: "painful" },
      { ...filled, seen: { swelling: "intraoral", swellingOnset: "rapid" } },
    ],
  ])("%s is determined where the lesion fits, possible and urgent where not", (term, tests, rest) => {
    const told = (lesionFits: "yes" | "no") =>
      diagnosisOf(sheetOf(tests, { ...rest, onFilm: { lucency: "apical", lesionFits } }));
    expect(told("yes")).toMatchObject({ apical: { term, status: "determined" }, urgent: [] });
    expect(told("no")).toMatchObject({ apical: { term, status: "possible" }, urgent: [{ row: "U7" }] });
  });
});

describe("diagnosis C1: what spreads is asked for", () => {
  const spread = { trismus: "no", troubleSwallowing: "no", troubleBreathing: "no" } as const;
  const asked = (seen: Sheet["seen"], history: Sheet["history"] = {}) =>
    rowsOf(diagnosisOf(sheetOf({}, { seen: seen ?? {}, history: history ?? {} })).asks).includes("Q16");

  it("where there is swelling, pus, fever or a swollen node, until all was asked and the place is named", () => {
    for (const seen of [{ swelling: "extraoral" }, { pus: "yes" }, { temperatureC: 38.2 }, { nodes: "yes" }] as const)
      expect(asked(seen)).toBe(true);
    const whole: NonNullable<Sheet["seen"]> = { swelling: "intraoral", swellingAt: ["vestibule"], temperatureC: 37 };
    expect(asked(whole, spread)).toBe(false);
    for (const left of ["trismus", "troubleSwallowing", "troubleBreathing"] as const)
      expect(asked(whole, { ...spread, [left]: "notAsked" })).toBe(true);
    expect(asked({ swelling: "intraoral", temperatureC: 37 }, spread)).toBe(true);
    expect(asked({ swelling: "intraoral", swellingAt: ["vestibule"] }, spread)).toBe(true);
  });

  it("and not of a tooth without any of them", () => {
    expect(asked({ swelling: "none", pus: "no", nodes: "no", fever: "no" })).toBe(false);
    expect(asked({})).toBe(false);
  });

  it("a swelling that is denied and placed is neither there nor not: nothing rests on its absence", () => {
    const seen = { ...healthy.seen, swellingAt: ["floorOfMouth" as const] };
    expect(diagnosisOf({ ...healthy, seen })).toMatchObject({
      ...{ urgent: [{ row: "U1" }], contradictions: [{ row: "X11" }] },
      apical: { term: "Normal apical tissues", status: "possible" },
    });
  });
});

describe("diagnosis C4: a primary tooth", () => {
  const silent = (tooth: string) =>
    diagnosisOf(sheetOf({ tooth, cold: none, electric: "none" }, {}, { cold: normal, electric: 20 }));

  it("is not determined to be necrotic by tests alone, and its caution is told", () => {
    expect(silent("75").pulpal).toMatchObject({ term: "Pulp necrosis", status: "possible" });
    expect(silent("75").cautions.join()).toContain("[Q17]");
    expect(silent("36").pulpal).toMatchObject({ term: "Pulp necrosis", status: "determined" });
    expect(silent("36").cautions.join()).not.toContain("[Q17]");
  });
});
