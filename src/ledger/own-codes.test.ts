import { describe, expect, it } from "vitest";
import { diagnosisOf, sheetOf } from "../../test/diagnosis-sheet.ts";
import { vignettes } from "../../test/diagnosis-vignettes.ts";
import { codeRows } from "../core/diagnosis/terms/codes-of.ts";
import type { BodyOf } from "../record/parts.ts";
import { apicalWords, pulpalWords } from "../record/words/case-words.ts";
import { diagnosisTold, termsTold } from "./diagnosis-told.ts";
import { codesShown, ownCodes } from "./own-codes.ts";

type Own = Pick<BodyOf<"diagnosis">, "pulpal" | "apical">;
const own = (pulpal: Own["pulpal"], apical: Own["apical"]): Own => ({ pulpal, apical });
const entryOf = (input: unknown) => ({ input, output: diagnosisOf(input) });
const rapid = (swelling: "intraoral" | "extraoral", sinusTract: "none" | "present" | "notDone") =>
  entryOf(sheetOf({}, { seen: { swelling, swellingOnset: "rapid", sinusTract } }));
const abscess = own("pulpNecrosis", "acuteApicalAbscess");

describe("diagnosis C11: codes of a person's own terms", () => {
  // Titles: WHO ICD-10 K04 (2016), ICD-11 DA09 (2024), ICD-10-CM (2025), all seen: pulpitis .0 (.01 reversible, .02
  // irreversible), necrosis .1, acute apical periodontitis of pulpal origin .4, chronic .5, abscess with sinus .6, without .7.
  it.each([
    [own("reversiblePulpitis", "normalApicalTissues"), ["K04.0", "K04.01", "DA09.0"], ["no code"]],
    [own("asymptomaticIrreversiblePulpitis", "notDetermined"), ["K04.0", "K04.02", "DA09.0"], ["no code"]],
    [own("pulpNecrosis", "symptomaticApicalPeriodontitis"), ["K04.1", "K04.1", "DA09.1"], ["K04.4", "K04.4", "DA09.7"]],
    [own("previouslyTreated", "asymptomaticApicalPeriodontitis"), ["no code"], ["K04.5", "K04.5", "DA09.7"]],
    [own("normalPulp", "symptomaticApicalPeriodontitis"), ["no code"], ["no code"]],
    [own("previouslyInitiatedTherapy", "condensingOsteitis"), ["no code"], ["no code"]],
    [own("pulpNecrosis", "chronicApicalAbscess"), ["K04.1", "K04.1", "DA09.1"], ["K04.6", "K04.6", "DA09.61"]],
  ])("%j have %j and %j, without any findings", (terms, pulpal, apical) => {
    const { codes } = ownCodes(terms);
    const [first, second] = (["pulpal", "apical"] as const).map((axis) =>
      (["icd10", "icd10Cm", "icd11"] as const).map((list) => codes[list]?.[axis]),
    );
    expect([first, second]).toEqual([pulpal, apical].map((of) => (of.length === 1 ? [...of, ...of, ...of] : of)));
  });

  // ICD-11 (seen): DA09.60 with facial involvement, .61 with sinus, .62 without.
  it.each([
    ["outside the mouth, no tract", rapid("extraoral", "none"), "K04.7", "DA09.60"],
    ["inside the mouth, no tract", rapid("intraoral", "none"), "K04.7", "DA09.62"],
    ["with a tract", rapid("intraoral", "present"), "K04.6", "DA09.61"],
  ])("an abscess %s is coded by the findings beside it", (_, entry, icd10, icd11) => {
    const { codes, cautions } = ownCodes(abscess, entry);
    expect([codes.icd10.apical, codes.icd11.apical, cautions]).toEqual([icd10, icd11, []]);
  });

  it("say what an abscess's code hangs on where the findings do not tell", () => {
    const hangs = (tail: string) => [
      `Acute apical abscess may have another code: it hangs on ${tail}, which the findings do not tell`,
    ];
    expect(ownCodes(abscess)).toMatchObject({
      codes: { icd10: { apical: "K04.7" }, icd11: { apical: "DA09.6" } },
      cautions: hangs("a sinus tract and where a swelling lies"),
    });
    expect(ownCodes(abscess, rapid("intraoral", "notDone")).cautions).toEqual(hangs("a sinus tract"));
    expect(ownCodes(abscess, { input: sheetOf({}) }).cautions).toHaveLength(1);
    expect(ownCodes(own("pulpNecrosis", "chronicApicalAbscess")).cautions).toEqual([]);
  });

  it("are those of the findings wherever the terms are, and the European terms with them", () => {
    for (const { input, name } of vignettes) {
      const entry = entryOf(input);
      const told = diagnosisTold(entry);
      if (told === undefined) throw new Error(`${name} has no answer`);
      const { codes, european, notComputed } = ownCodes(termsTold(told), entry);
      expect({ codes, european }, name).toEqual({ codes: told.codes, european: told.european });
      expect(told.notComputed, name).toEqual(expect.arrayContaining(notComputed));
    }
    expect(vignettes.length).toBeGreaterThan(20);
  });

  it("are looked up for every term that the table knows", () => {
    const pulpal = Object.keys(pulpalWords) as Own["pulpal"][];
    const apical = Object.keys(apicalWords) as Own["apical"][];
    const reached = new Set([
      ...pulpal.map((one) => ownCodes(own(one, "notDetermined")).pulpal.term),
      ...apical.map((one) => ownCodes(own("notDetermined", one)).apical.term),
    ]);
    for (const { term } of codeRows) expect(reached, term).toContain(term);
  });

  it("C12: name pulpitis as the European guideline does, once spontaneous pain was asked for", () => {
    const pulpitis = own("symptomaticIrreversiblePulpitis", "symptomaticApicalPeriodontitis");
    const asked = entryOf(sheetOf({}, { history: { spontaneousPain: "yes" } }));
    expect(ownCodes(pulpitis, asked).european).toEqual({
      ...{ pulpal: "Pulpitis with spontaneous pain", apical: "Apical periodontitis" },
    });
    expect(ownCodes(pulpitis).european).toEqual({ apical: "Apical periodontitis" });
    expect(ownCodes(pulpitis).notComputed.map(({ name }) => name)).toEqual(["european.pulpal"]);
  });
});

describe("whose codes are shown", () => {
  const necrotic = entryOf(
    sheetOf({ cold: { reply: "none" }, electric: "none", percussion: "painful" }, {}, { cold: { reply: "normal" } }),
  );

  it("is one table where the terms are the same, and two where they are not", () => {
    const same = codesShown(own("pulpNecrosis", "symptomaticApicalPeriodontitis"), necrotic);
    expect([same.own?.pulpal.term, same.told]).toEqual(["Pulp necrosis", undefined]);
    const other = codesShown(own("pulpNecrosis", "asymptomaticApicalPeriodontitis"), necrotic);
    expect([other.own?.codes.icd10.apical, other.told?.codes.icd10.apical]).toEqual(["K04.5", "K04.4"]);
  });

  it("is the findings' alone where the person left both terms open, and the person's where the findings did", () => {
    const open = own("notDetermined", "notDetermined");
    expect(codesShown(open, necrotic)).toEqual({ told: diagnosisTold(necrotic) });
    expect(codesShown(open)).toEqual({});
    expect(codesShown(open, entryOf(sheetOf({})))).toEqual({});
    expect(codesShown(abscess, entryOf(sheetOf({}))).told).toBeUndefined();
    expect(codesShown(abscess).own?.codes.icd10).toEqual({ pulpal: "K04.1", apical: "K04.7" });
  });
});
