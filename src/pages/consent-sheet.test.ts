import { describe, expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../test/sample-case.ts";
import { sampleWays, withWays } from "../../test/sample-ways.ts";
import { linesOfModel, valueAtPath, wordsOfModel } from "../../test/words-of-model.ts";
import { partId } from "../core/ids.ts";
import { jargonIn } from "../core/plain-words/jargon.ts";
import { readingGrade } from "../core/plain-words/reading-grade.ts";
import { teeth } from "../core/tooth/teeth.ts";
import type { BodyOf, Part } from "../record/parts.ts";
import { consentWords } from "./consent/consent-words.ts";
import { ownRisks } from "./consent/own-risks.ts";
import { notPlain, plainGrade } from "./consent/plain-reason.ts";
import { plainChecks } from "./consent/still-to-check.ts";
import { toothPlainly } from "./consent/tooth-plainly.ts";
import { consentSheet } from "./consent-sheet.ts";
import { numbersIn } from "./page-model.ts";

const plan = (more: Partial<BodyOf<"plan">> = {}) =>
  part("plan", "plan-1", {
    ...{ madeOn: "2024-03-04", options: [], chosen: "retreat", because: "", risksNamed: [] },
    saidPlainly: "One root was not cleaned the first time. Only this way gets to it.",
    ...more,
  });
/** The sample's ledger, worked out once; what these tests change in the parts no sum of it reads. */
const known = sampleSource();
const sourceOf = (parts: readonly Part[], ways = sampleWays()) => withWays({ ...known, parts }, ways);
const sheet = (more: Partial<BodyOf<"plan">> = {}, ways = sampleWays()) =>
  consentSheet(sourceOf([...sampleParts(), plan(more)], ways));
const aged = (birthYear: number, demo = false) =>
  sampleParts().map((one) => (one.kind === "case" ? { ...one, body: { ...one.body, birthYear, demo } } : one));

describe("every sentence that the page brings itself", () => {
  it.each([...Object.values(consentWords), ...new Set(Object.values(plainChecks)), ...teeth.map(toothPlainly)])(
    "is read at the age of twelve, without a word of the trade: %s",
    (words) => {
      expect(jargonIn(words)).toEqual([]);
      // A heading of two or three words is no sentence; its grade says nothing.
      if (words.split(" ").length > 3) expect(readingGrade(words)).toBeLessThanOrEqual(plainGrade);
    },
  );
});

describe("the consent page", () => {
  it("tells every open way, the advised one first, names those that wait, and no other", () => {
    const lines = linesOfModel(sheet());
    const headings = ["Clean and fill the roots again (our advice)", "Take the tooth out"];
    expect(lines.filter((line) => headings.includes(line))).toEqual([...headings, "Take the tooth out"]);
    expect(wordsOfModel(sheet())).toContain("Way surgery. We do it.");
    expect(wordsOfModel(sheet())).not.toContain("Way watch");
  });

  it("has a line for every risk that the facts call for, of the advised and of the other open ways, each once", () => {
    const lines = linesOfModel(sheet());
    const risks = sampleWays().options.flatMap(({ risks: called }) => called.map(({ plain }) => plain));
    expect(new Set(risks).size).toBe(3);
    for (const risk of new Set(risks)) expect(lines.filter((line) => line === risk)).toHaveLength(1);
  });

  it("adds the risks that the clinician named beside them, and not those again", () => {
    const own = { risksNamed: ["An instrument may break in a canal", "It may go dark."] };
    const words = wordsOfModel(sheet(own));
    expect(words).toContain(`${consentWords.alsoSaid}\nIt may go dark.`);
    expect(words).not.toContain("An instrument may break in a canal");
  });

  it("says where no risk stands out, no figure is kept, and that the choice is free", () => {
    const ways = sampleWays();
    const bare = { ...ways, options: ways.options.map((option) => ({ ...option, risks: [] })) };
    const words = wordsOfModel(sheet({}, bare));
    for (const said of [consentWords.noRisk, consentWords.noFigure, consentWords.free, consentWords.stays])
      expect(words).toContain(said);
  });

  it("asks to be asked about the risks where a fact is missing that could call for one, or the way was not judged", () => {
    const ways = sampleWays();
    const bare = { ...ways, options: ways.options.map((option) => ({ ...option, risks: [] })) };
    const asking = { ...bare, ask: [{ fact: "lesion", says: "Is there a lesion?", ways: [], risks: ["separation"] }] };
    for (const words of [
      wordsOfModel(sheet({}, asking)),
      wordsOfModel(sheet({ chosen: "surgery" })),
      wordsOfModel(sheet({ chosen: "watch", because: "The patient wants to wait." })),
    ]) {
      expect(words).toContain(consentWords.askRisks);
      expect(words).not.toContain(consentWords.noRisk);
    }
  });

  it("does not print a named risk that a printed one tells, and leaves a line for one that is not plain", () => {
    const risksNamed = [
      "A small tool may break, above all in the third root",
      "Extrusion beyond the apex",
      "It may go dark.",
    ];
    const model = sheet({ risksNamed });
    const words = wordsOfModel(model);
    expect(words).not.toMatch(/third root|apex/);
    expect(words).toContain(`${consentWords.alsoSaid}\nIt may go dark.`);
    const byHand = model.pages.find(({ title }) => title === consentWords.moreRisks);
    expect(byHand?.blocks.at(-1)).toEqual({ kind: "blanks", labels: [""] });
    expect(sheet({ risksNamed: ["It may go dark."] }).pages.map(({ title }) => title)).not.toContain(
      consentWords.moreRisks,
    );
  });

  it("prints a risk of a way that is not told in plain words, from its place in the ledger", () => {
    const ways = sampleWays();
    const bleeds = { ...ways.options[0]?.risks[0], id: "bleeding", says: "Haemorrhage", because: "a drug" };
    const from = { source: "common practice", mark: "common practice" } as const;
    const risk = { ...bleeds, plain: "You can bleed for 2 days.", ...from };
    const options = ways.options.map((one) => (one.way === "surgery" ? { ...one, risks: [risk] } : one));
    const model = sheet({ risksNamed: ["Haemorrhage"] }, { ...ways, options });
    expect(wordsOfModel(model)).toContain(`${consentWords.alsoSaid}\nYou can bleed for 2 days.`);
    const at = options.findIndex(({ way }) => way === "surgery");
    expect(numbersIn(model).map(({ path }) => path)).toContain(`options[${at}].risks[0].plain`);
  });

  it("says what is wrong, what happens if nothing is done, and what is asked afterwards", () => {
    const words = wordsOfModel(sheet());
    expect(words).toContain("The root of your tooth has an infection.");
    expect(words).toContain("It will not go away by itself. It may hurt or swell.");
    expect(words).toContain(`You need a crown.\n${consentWords.callUs}`);
  });

  it("names for every figure the entry and the place in its output, beside the study", () => {
    const source = sourceOf([...sampleParts(), plan()]);
    const model = consentSheet(source);
    const numbers = numbersIn(model);
    expect(numbers.map(({ text }) => text)).toEqual(
      expect.arrayContaining(["About 8 out of 10 teeth like this had healed.", "80", "100", "It takes 2 visits."]),
    );
    for (const { ledgerEntry, path, text } of numbers) {
      const held = valueAtPath(source.ledger.find(({ id }) => id === ledgerEntry)?.output, path);
      expect(String(held)).toBe(text);
    }
    expect(wordsOfModel(model)).toContain("had healed. (80 of 100, Known 2001*)");
    expect(wordsOfModel(model)).toContain("Known AB. On canals. J 2001;1:1-2* (* from memory)");
  });

  it("tells a way that was chosen though it waits for an answer", () => {
    const words = wordsOfModel(sheet({ chosen: "surgery" }));
    expect(words).toContain("Way surgery (our advice)");
    expect(words).not.toContain(consentWords.asksFirst);
  });

  it("says of an advised way that waits that something must be checked first, and what, where it has plain words", () => {
    expect(wordsOfModel(sheet())).not.toContain(consentWords.checkFirst);
    const general = sheet({ chosen: "surgery" });
    expect(linesOfModel(general)).toContain(consentWords.checkFirst);
    const ways = sampleWays();
    const row = { row: "surgery-bone-drug", speaks: "asks", says: "What does the physician say?" } as const;
    const options = ways.options.map((one) =>
      one.way === "surgery" ? { ...one, why: [{ ...row, source: "known-2001", mark: "memory" as const }] } : one,
    );
    const ask = [
      ...ways.ask,
      { fact: "medicalTaken", says: "Is the medical history taken?", ways: ["surgery" as const], risks: [] },
      { fact: "caries", says: "How deep is the caries?", ways: ["retreat" as const], risks: [] },
    ];
    const lines = linesOfModel(sheet({ chosen: "surgery" }, { ...ways, options, ask })).filter((line) => line !== "");
    const checks = lines.slice(lines.indexOf(consentWords.checkFirst) + 1).slice(0, 2);
    expect(checks).toEqual([plainChecks.medicalTaken, plainChecks["surgery-bone-drug"]]);
    expect(lines).not.toContain(plainChecks.caries);
  });

  it("refuses an advised way that does not fit and has no reason, and says with a reason that the facts point elsewhere", () => {
    expect(() => sheet({ chosen: "treat" })).toThrow(
      "Cannot make the consent page: the chosen way, root canal treatment, does not fit what is recorded (Nothing here asks for it); on the plan's page choose another, or write under Because why it is taken",
    );
    expect(() => sheet({ chosen: "treat", because: " " })).toThrow(/does not fit/);
    const words = wordsOfModel(sheet({ chosen: "treat", because: "The patient wants it." }));
    expect(words).toContain(consentWords.againstFacts);
    expect(words).not.toContain(consentWords.checkFirst);
    expect(wordsOfModel(sheet())).not.toContain(consentWords.againstFacts);
  });

  it("prints the reason as it was written for the patient, or the clinician's where it is plain, else lines to write on", () => {
    expect(wordsOfModel(sheet())).toContain("Only this way gets to it.");
    const plain = sheet({ saidPlainly: "", because: "It can heal if we clean it." });
    expect(wordsOfModel(plain)).toContain("It can heal if we clean it.");
    const trade = sheet({ saidPlainly: "", because: "The obturation is short of the apex." });
    expect(wordsOfModel(trade)).not.toContain("obturation");
    expect(wordsOfModel(trade)).toContain(consentWords.whyBlank);
    expect(wordsOfModel(sheet({ saidPlainly: "", because: "" }))).toContain(consentWords.whyBlank);
  });

  it("takes the plan that was made last", () => {
    const later = plan({ madeOn: "2024-05-01", chosen: "extraction" });
    const model = consentSheet(sourceOf([later, ...sampleParts(), { ...plan(), id: partId("plan-0") }]));
    expect(wordsOfModel(model)).toContain("Take the tooth out (our advice)");
  });

  it("has a parent or guardian sign for who is under 18, and for nobody else", () => {
    const of = (birthYear: number) => consentSheet(sourceOf([...aged(birthYear), plan()]));
    expect(wordsOfModel(of(2007))).toContain(consentWords.parentName);
    expect(wordsOfModel(of(2006))).not.toContain(consentWords.parentName);
  });

  it("carries the pseudonym and, for a demo, that it is invented; no day, no year, no age", () => {
    const demo = consentSheet(sourceOf([...aged(1967, true), plan()]));
    expect([demo.as, demo.mark]).toEqual(["consent", "P-0001 · Demo: invented"]);
    expect(sheet().mark).toBe("P-0001");
    expect(wordsOfModel(demo)).not.toMatch(/\d{4}-\d{2}-\d{2}|1967|2024/);
  });

  it("is refused without a plan, and with the ledger's words where the ways are not computed", () => {
    const begun = { chosen: "watch", saidPlainly: "" } as const;
    expect(() => sheet(begun)).toThrow("no way is chosen in the plan yet");
    expect(() => sheet({ ...begun, because: "No complaint." })).not.toThrow();
    expect(() => consentSheet(sourceOf(sampleParts()))).toThrow(
      "Cannot make the consent page: no plan is recorded; add a plan and choose a way",
    );
    const source = sourceOf([...sampleParts(), plan()]);
    const ledger = source.ledger.map(({ output, ...entry }) =>
      entry.topic === "plan" ? { ...entry, refused: ["no diagnosis is recorded"] } : { ...entry, output },
    );
    expect(() => consentSheet({ ...source, ledger })).toThrow(/not computed: no diagnosis is recorded$/);
    expect(() => consentSheet({ ...source, ledger: [] })).toThrow(/are not computed$/);
  });
});

describe("the risks that a person names", () => {
  const of = (...risksNamed: string[]) => ownRisks({ ways: sampleWays(), plan: { ...planOf, risksNamed } });
  const planOf: BodyOf<"plan"> = { madeOn: "2024-03-04", options: [], chosen: "retreat", because: "", risksNamed: [] };

  it("are each told, told already, or written by hand; none is lost and none stands twice", () => {
    const named = ["It may go dark.", "Extrusion beyond the apex", "A small tool may break", "Neighbours may tilt", ""];
    expect(of(...named, ...named)).toEqual({
      printed: ["It may go dark."],
      saidAlready: ["A small tool may break"],
      byHand: ["Extrusion beyond the apex"],
    });
  });

  it("are told already where a printed risk names the subject in words of the trade or in plain ones", () => {
    const again = ["An instrument may break, above all in the third root", "Neighbours tilt in the gap"];
    expect(of(...again)).toEqual({ printed: [], saidAlready: again, byHand: [] });
  });

  it.each(["The tool may break your lip and hurt the gum", "The tooth may turn sore", "It may break."])(
    "are printed where they share a word with a printed risk and tell another: %s",
    (risk) => {
      expect(of(risk)).toEqual({ printed: [risk], saidAlready: [], byHand: [] });
    },
  );
});

describe("what keeps a patient from understanding", () => {
  it("is a word of the trade or a sentence that is too hard, each said", () => {
    expect(notPlain("We clean the root and fill it.")).toBeUndefined();
    expect(notPlain("The pulp is gone.")).toEqual({ jargon: ["pulp"] });
    const hard = notPlain("Considering everything, subsequent deterioration remains comparatively improbable.");
    expect(hard?.jargon).toEqual([]);
    expect(hard?.grade).toBeGreaterThan(plainGrade);
  });
});
