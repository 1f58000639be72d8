import { describe, expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../test/sample-case.ts";
import { valueAtPath as at, wordsOfModel as wordsOf } from "../../test/words-of-model.ts";
import { deck } from "./deck.ts";
import { handout } from "./handout.ts";
import { numbersIn } from "./page-model.ts";

describe.each([
  ["deck", deck],
  ["handout", handout],
] as const)("a %s", (as, make) => {
  it("names for every computed number the ledger entry and the place in its output", () => {
    const source = sampleSource();
    const numbers = numbersIn(make(source));
    expect(numbers.length).toBeGreaterThan(10);
    for (const { ledgerEntry, path, text } of numbers) {
      const held = at(source.ledger.find((entry) => entry.id === ledgerEntry)?.output, path);
      const digits = text.split(".")[1]?.length ?? 0;
      expect(typeof held === "number" ? held.toFixed(digits).replace("-", "−") : held).toBe(text);
    }
  });

  it("changes exactly the numbers that depend on a changed input", () => {
    const moved = sampleParts().map((one) =>
      one.kind === "mark" && one.body.shape === "trace"
        ? { ...one, body: { ...one.body, points: one.body.points.map(([u, v]): [number, number] => [u, v * 1.1]) } }
        : one,
    );
    const [before, after] = [numbersIn(make(sampleSource())), numbersIn(make(sampleSource(moved)))];
    const subjectOf = (entry: string): string | undefined =>
      sampleSource(moved).ledger.find((one) => one.id === entry)?.subject;
    const fresh = after.filter((number) => !before.some((old) => old.ledgerEntry === number.ledgerEntry));
    expect(new Set(fresh.map((number) => subjectOf(number.ledgerEntry)))).toEqual(
      new Set(["curvature of trace-1", "workingLength of trace-1"]),
    );
  });

  it("prints no calendar day and no year of the case", () => {
    const words = wordsOf(make(sampleSource()));
    expect(words).not.toMatch(/\d{4}-\d{2}-\d{2}/);
    expect(words).not.toContain("1967");
    expect(words).not.toContain("2024");
  });

  it("says that a demo is invented on the mark of every page", () => {
    const parts = sampleParts().map((one) =>
      one.kind === "case" ? { ...one, body: { ...one.body, demo: true } } : one,
    );
    const model = make(sampleSource(parts));
    expect([model.as, model.demo]).toEqual([as, true]);
    expect(model.mark).toContain("Demo: invented");
    expect(make(sampleSource()).mark).not.toContain("Demo");
  });

  it("of a case that was only opened holds what there is and its cautions", () => {
    const [about] = sampleParts();
    const model = make(sampleSource(about === undefined ? [] : [about]));
    expect(wordsOf(model)).toContain("support, and never replace, licensed judgement");
    expect(model.emblem).toBeUndefined();
  });
});

describe("a deck's order", () => {
  it("is that of the days, presenting first and sources last", () => {
    const mishap = part("mishap", "mishap-1", {
      on: "2024-03-27",
      what: "separatedInstrument",
      canal: "MB1",
      third: "apical",
      bend: "beyond",
      handled: "bypassed",
      toldPatient: "told",
      story: "",
    });
    const titles = deck(sampleSource([mishap, ...sampleParts().reverse()])).pages.map((page) => page.title);
    expect(titles).toEqual([
      "Presenting",
      "Working length film",
      "Diagnosis",
      "Roots and canals",
      "Visit 1",
      "Visit 2",
      "Separated instrument",
      "Recalls",
      "Sources",
    ]);
  });

  it("gives a film without a scale its reason in place of lengths", () => {
    const parts = sampleParts().map((one) => {
      if (one.kind !== "film") return one;
      const { pixelSpacingMm: _spacing, ...technical } = one.body.technical;
      return { ...one, body: { ...one.body, technical } };
    });
    const model = deck(sampleSource(parts));
    const film = model.pages.filter(({ title }) => title === "Working length film");
    expect(wordsOf({ ...model, pages: film })).toContain("No scale; no lengths are given");
    expect(wordsOf({ ...model, pages: film })).not.toMatch(/\d mm/);
  });
});

describe("a deck of a full record", () => {
  const full = (): ReturnType<typeof sampleParts> => {
    const [first, ...others] = sampleParts().filter(({ kind }) => kind === "visit");
    if (first?.kind !== "visit") throw new Error("the sample has visits");
    const visit = part("visit", first.id, {
      ...first.body,
      isolation: { rubberDam: "notUsed", whyNot: "no wall to hold it" },
      vitalSigns: { systolicMmHg: 130, diastolicMmHg: 80, pulsePerMin: 70 },
      anaesthetic: [
        {
          ...{ agent: "articaine", percent: 4, vasoconstrictor: { name: "epinephrine", ratio: 100_000 } },
          ...{ cartridgeMl: 1.7, cartridges: 1.5, technique: "buccal infiltration", atMin: 0 },
        },
      ],
      solvent: [{ solvent: "chloroform", volumeMl: 0.2, atMin: 20, recoveredFraction: 0.5 }],
      irrigation: [
        { solution: "EDTA", percent: 17, volumeMl: 4, minutes: 2, atMin: 30, activated: "no" },
        { solution: "saline", volumeMl: 4, minutes: 1, atMin: 10, activated: "manual" },
      ],
      instruments: [
        { canal: "MB1", size: 10, taper: 0.02, alloy: "stainlessSteel", movement: "hand" },
        { canal: "MB1", size: 15, taper: 0.02, alloy: "stainlessSteel", movement: "hand" },
        { canal: "MB1", size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous", rpm: 300 },
      ],
      holdPoints: [{ at: "coneFit", seenBy: "supervisor", says: "Cone to length" }],
      lots: [{ material: "sealer", lot: "S1" }],
      painAfter24h: 2,
    });
    return [
      ...sampleParts().filter(({ kind }) => kind !== "visit"),
      ...[visit, ...others],
      part("consent", "consent-1", {
        ...{ on: "2024-03-04", to: "Retreatment under rubber dam", explainedBy: "resident", answeredBy: "patient" },
        ...{ answer: "agreed", capacity: "has", imagesFor: ["treatment", "teaching"], note: "" },
      }),
      part("review", "review-1", {
        ...{ on: "2024-03-28", by: "supervisor", says: "Why stop there?", signed: true, answer: "The film said so." },
      }),
      part("reference", "reference-1", {
        ...{ title: "On canals", authors: ["Known AB", "Other C"], journal: "J", year: 2001, volume: "", pages: "" },
        ...{ doi: "", design: "cohort", takeaway: "" },
      }),
      part("claim", "claim-1", {
        ...{ about: "diagnosis-1", says: "A second canal is likely.", speaks: "for", references: ["reference-1"] },
        ...{ state: "contested", verdict: "" },
      }),
    ];
  };
  const model = deck(sampleSource(full()));
  const rowsUnder = (caption: string): string[] =>
    model.pages
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === "table" && block.caption === caption ? block.rows : []))
      .map((row) => row.map((line) => line.map(({ text }) => text).join("")).join(" | "));

  it("tells injections, what was used by the minute, instruments by canal, and hold points in tables", () => {
    expect(rowsUnder("Local anaesthetic")).toEqual([
      "Articaine 4 %, epinephrine 1:100\u00a0000 | 1.5 × 1.7 ml | buccal infiltration | 0",
    ]);
    expect(rowsUnder("Used, in order")).toEqual([
      "10 | Saline | 4 ml | 1 min | by hand",
      "20 | Chloroform | 0.2 ml | – | 50 % taken up again",
      "30 | EDTA 17 % | 4 ml | 2 min | ",
    ]);
    expect(rowsUnder("Instruments, by size and taper")).toEqual([
      "MB1 | 10 .02, 15 .02 stainless steel, by hand; 25 .06 nickel-titanium, continuous 300 a minute",
    ]);
    expect(rowsUnder("Hold points")).toEqual(["Fit of the cone | seen by the supervisor | Cone to length"]);
  });

  it("keeps the order of writing where a minute is not known", () => {
    expect(rowsUnder("Used")).toEqual(["– | Sodium hypochlorite 3 % | 10 ml | 12 min | ultrasonic"]);
  });

  it("says what was checked, why the dam was left off, how it hurt after, and keeps set and lots beside the page", () => {
    const visit = model.pages.find(({ title }) => title === "Visit 1");
    expect(wordsOf(model)).toContain(
      "Tooth and side checked; medical history confirmed; without rubber dam (no wall to hold it); microscope; blood pressure 130/80 mmHg, pulse 70 a minute",
    );
    expect(wordsOf(model)).toContain("Pain, 0 to 10: after a day 2");
    expect(visit?.notes).toEqual(["Lots: sealer S1"]);
  });

  it("holds consent and review on their days, and the claims with what they stand on before the sources", () => {
    expect(model.pages.map(({ title }) => title).slice(-3)).toEqual(["Recalls", "Claims", "Sources"]);
    expect(model.pages.find(({ title }) => title === "Consent")?.subtitle).toBe("day 0");
    expect(wordsOf(model)).toContain("Explained by the resident; answered by the patient, has capacity");
    expect(wordsOf(model)).toContain("Images may be used for treatment, teaching");
    expect(model.pages.find(({ title }) => title === "Review")?.subtitle).toBe("day 24, by the supervisor, signed");
    expect(rowsUnder("What speaks for and against each decision")).toEqual([
      "Diagnosis | A second canal is likely. | for, contested | Known 2001 | –",
    ]);
  });
});
