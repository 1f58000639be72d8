import { describe, expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../test/sample-case.ts";
import { linesOfModel, valueAtPath, wordsOfModel } from "../../test/words-of-model.ts";
import { figuresForOutlook } from "../ledger/figures-for-outlook.ts";
import type { BodyOf, Part } from "../record/parts.ts";
import { letter } from "./letter.ts";
import { numbersIn } from "./page-model.ts";

const plan = part("plan", "plan-1", {
  ...{ madeOn: "2024-03-04", options: [], chosen: "retreat", because: "It was filled short", risksNamed: [] },
});
const mishap = part("mishap", "mishap-1", {
  ...{ on: "2024-03-27", what: "separatedInstrument", canal: "MB1", third: "apical", bend: "beyond" },
  ...{ handled: "bypassed", toldPatient: "told", story: "", fragmentMm: 3 },
} as BodyOf<"mishap">);
const said: BodyOf<"handback"> = {
  ...{ on: "2024-03-27", to: "restoringDentist", restoreWith: "An adhesive build-up and cusp cover" },
  ...{
    restoreBy: "2024-04-24",
    orificesMarkedBy: "A layer of red resin",
    warnings: "MB1 holds a piece.\nMB2 is narrow.",
  },
  ...{
    prognosis: "Better than before.",
    recallOn: "2025-03-27",
    recallAsks: "A film",
    painAdvice: "Some for three days.",
  },
};
const handback = (more: Partial<BodyOf<"handback">> = {}): Part => part("handback", "handback-1", { ...said, ...more });
/** The sample with lots and a temporary filling in its last visit. */
const worked = (more: Partial<BodyOf<"visit">> = {}): Part[] => [
  ...sampleParts().map((one) =>
    one.kind === "visit" && one.id === "visit-2"
      ? part("visit", one.id, {
          ...one.body,
          temporary: { material: "glass ionomer", thicknessMm: 4 },
          lots: [
            { material: "sealer", lot: "L-7", stays: true },
            { material: "rubber dam", lot: "D-1", stays: false },
          ],
          ...more,
        })
      : one,
  ),
  ...[plan, mishap],
];
const source = sampleSource([...worked(), handback()]);
const figureOf = (at: number) => {
  const figure = figuresForOutlook(source.parts, source.ledger)[at];
  if (figure === undefined) throw new Error("no figure is offered");
  return figure;
};
const chosen = () => {
  const { entryId, way, outcome } = figureOf(0);
  return { ...source, parts: [...worked(), handback({ figure: { entry: entryId, way, outcome: outcome.id } })] };
};
const linesOf = (from = source) => linesOfModel(letter(from));

describe("a letter of hand-back", () => {
  it("says first what must be restored, with what, by when and how the orifices are marked", () => {
    const [, restore] = letter(source).pages;
    expect(linesOfModel({ pages: restore === undefined ? [] : [restore] }).filter((line) => line !== "")).toEqual([
      "What must be restored",
      ...["With", "An adhesive build-up and cusp cover", "By when", "Within 28 days of the hand-back."],
      ...["Orifices are marked by", "A layer of red resin"],
      ...["In the tooth since the last visit", "Temporary filling: glass ionomer, 4 mm"],
    ]);
  });

  it("tells each visit in sentences, each canal as it was left last, and the lots of what stays", () => {
    const lines = linesOf();
    expect(lines.filter((line) => line.startsWith("Visit "))).toHaveLength(2);
    expect(lines.join("\n")).toMatch(/Visit 1, day 0, 80 min\. Under rubber dam\. Irrigated with .*\. MB1 shaped\./);
    expect(lines.filter((line) => line === "MB1")).toHaveLength(1);
    expect(lines).toContain("14.7 mm, mesiobuccal cusp");
    expect(lines).toContain("0.8 mm short");
    expect(lines).toContain("sealer, lot L-7.");
    expect(lines.join("\n")).not.toContain("D-1");
  });

  it("tells mishaps and whether the patient knows, and the warnings as they were written, line by line", () => {
    const lines = linesOf();
    expect(lines).toContain(
      "Separated instrument, MB1, apical third, a piece of 3 mm, day 23: bypassed. The patient was told.",
    );
    expect(lines).toContain("MB1 holds a piece.");
    expect(lines).toContain("MB2 is narrow.");
  });

  it("takes no warning from the record by itself", () => {
    const words = linesOf({ ...source, parts: [...worked(), handback({ warnings: "" })] }).join("\n");
    expect(words).not.toContain("stays in MB1");
    expect(words).toContain("What whoever enters again must know.");
  });

  it("prints the figure that was chosen with n/N, its source and where it stands in the ledger", () => {
    const figure = figureOf(0);
    const model = letter(chosen());
    const entry = source.ledger.find(({ id }) => id === figure.entryId);
    const numbers = numbersIn(model).filter(({ ledgerEntry }) => ledgerEntry === figure.entryId);
    expect(numbers.map(({ path }) => path).slice(0, 3)).toEqual(
      ["events", "n", "proportion"].map((name) => `${figure.at}.${name}`),
    );
    for (const { path, text } of numbers)
      expect(Number(text)).toBeCloseTo(Number(valueAtPath(entry?.output, path)), text.includes(".") ? 2 : 6);
    const { events, n } = figure.outcome;
    expect(linesOfModel(model).join("\n")).toContain(` in ${events} of ${n}, `);
    expect(linesOfModel(model).join("\n")).toContain("it is not the chance of this tooth");
  });

  it("prints no chance where none was chosen, and says so of one that is no longer kept", () => {
    expect(linesOf().join("\n")).not.toContain("Published:");
    const lost = { entry: "f".repeat(64), way: "retreat", outcome: "gone" } as const;
    const words = linesOf({ ...source, parts: [...worked(), handback({ figure: lost })] }).join("\n");
    expect(words).toContain("The figure that was chosen for it is no longer kept.");
    expect(words).not.toContain("Published:");
  });

  it("offers no figure without its counts, and none before a way is chosen", () => {
    const figures = figuresForOutlook(source.parts, source.ledger);
    expect(figures.length).toBeGreaterThan(0);
    for (const { outcome, way } of figures) expect([way, outcome.events <= outcome.n]).toEqual(["retreat", true]);
    expect(figuresForOutlook(sampleParts(), source.ledger)).toEqual([]);
  });

  it("names whom to call only where the clinic's settings do", () => {
    expect(linesOf()).not.toContain("In an emergency");
    const called = linesOf({ ...source, firstCall: { who: "The practice", number: "000 111" } });
    expect(called).toContain("The practice: 000 111");
  });

  it("counts days and months from the hand-back: no calendar day and no year of the case", () => {
    const words = wordsOfModel(letter(source));
    expect(words).toContain("12 months after the hand-back.");
    expect(words).not.toMatch(/\d{4}-\d{2}-\d{2}|2024|2025|1967/);
    const at = (more: Partial<BodyOf<"handback">>) => linesOf({ ...source, parts: [...worked(), handback(more)] });
    expect(at({ restoreBy: "2024-03-27" })).toContain("At once.");
    expect(at({ restoreBy: "2024-03-28" })).toContain("Within 1 day of the hand-back.");
    expect(at({ recallOn: "2024-04-10" })).toContain("Within a month of the hand-back.");
  });

  it("says where a canal's total holds what all canals were given", () => {
    const [bleach] = sampleParts().flatMap((one) => (one.kind === "visit" ? one.body.irrigation : []));
    if (bleach === undefined) throw new Error("the sample irrigates");
    const { canal: _canal, ...inAll } = bleach;
    const wordsOf = (irrigation: BodyOf<"visit">["irrigation"]) =>
      linesOf(sampleSource([...worked({ irrigation }), handback()])).join("\n");
    const said = "; in each canal with what all canals were given.";
    expect(wordsOf([inAll, { ...inAll, canal: "MB1" }])).toContain(said);
    expect(wordsOf([inAll, inAll])).not.toContain(said);
    expect(wordsOf([{ ...inAll, canal: "MB1" }])).not.toContain(said);
  });

  it("holds no diagnosis that was made after the hand-back, and misses it", () => {
    const later = worked().map((one) =>
      one.kind === "diagnosis" ? part("diagnosis", one.id, { ...one.body, madeOn: "2024-06-01" }) : one,
    );
    const lines = linesOf({ ...source, parts: [...later, handback()] });
    expect(lines).toContain("The diagnosis.");
    expect(lines).not.toContain("Diagnosis");
    expect(linesOf()).toContain("Diagnosis");
  });

  it("leaves out what came after the hand-back, and is of the last hand-back", () => {
    const later = worked().map((one) =>
      one.id === "visit-2" ? { ...one, id: one.id, body: { ...one.body, on: "2024-05-01" } } : one,
    );
    const lines = linesOf({ ...source, parts: [...later, handback()] as Part[] });
    expect(lines.filter((line) => line.startsWith("Visit "))).toHaveLength(1);
    const second = part("handback", "handback-2", { ...said, on: "2024-06-01", restoreWith: "A crown" });
    expect(linesOf({ ...source, parts: [second, ...worked(), handback()] })).toContain("A crown");
  });

  it("of an empty case holds what is missing, and room for names by hand", () => {
    const [about] = sampleParts();
    const words = wordsOfModel(letter(sampleSource(about === undefined ? [] : [about])));
    expect(words).toContain("The hand-back itself: no such moment is recorded.");
    expect(words).toContain("What was done: no visit is recorded.");
    expect(words).toContain("Patient's name and date of birth");
    expect(words).toContain("support, and never replace, licensed judgement");
    expect(wordsOfModel(letter(sampleSource([])))).toContain("Why the patient was sent.");
  });

  it("carries the pseudonym, and says of a demo that it is invented", () => {
    const demo = source.parts.map((one) => (one.kind === "case" ? { ...one, body: { ...one.body, demo: true } } : one));
    expect(letter(source).mark).toContain("P-0001");
    expect(letter(source).mark).not.toContain("Demo");
    expect(letter({ ...source, parts: demo }).mark).toMatch(/Demo: invented$/);
  });
});
