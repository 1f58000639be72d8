import { describe, expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../../test/sample-case.ts";
import { linesOfModel, valueAtPath } from "../../../test/words-of-model.ts";
import type { BodyOf, Part } from "../../record/parts.ts";
import { deck } from "../deck.ts";
import { handout } from "../handout.ts";
import { numbersIn } from "../page-model.ts";

/** The sample with a first visit in which a person of 70 kg was given something. */
const worked = (more: Partial<BodyOf<"visit">>): Part[] =>
  sampleParts().map((one) =>
    one.kind === "visit" && one.id === "visit-1"
      ? part("visit", one.id, { ...one.body, vitalSigns: { bodyMassKg: 70 }, ...more })
      : one,
  );
const lidocaine: BodyOf<"visit">["anaesthetic"][number] = {
  ...{ agent: "lidocaine", percent: 2, cartridgeMl: 1.8, cartridges: 2, atMin: 0 },
  vasoconstrictor: { name: "epinephrine", ratio: 100_000 },
};
const room = { volumeM3: 40, airChangesPerHour: 3, from: "measured" };
const chloroform: Partial<BodyOf<"visit">> = {
  solvent: [{ solvent: "chloroform", volumeMl: 0.2, atMin: 20 }],
  clinic: { room },
};
const clash: Partial<BodyOf<"visit">> = {
  irrigation: [
    { solution: "sodium hypochlorite", percent: 3, volumeMl: 10, minutes: 5, activated: "no" },
    { solution: "chlorhexidine", percent: 2, volumeMl: 5, minutes: 1, activated: "no" },
  ],
};
const dosesOf = (parts: Part[]) => {
  const source = sampleSource(parts);
  const pages = deck(source).pages.filter(({ title }) => title.endsWith(", doses"));
  return { source, pages, said: linesOfModel({ pages }).join("\n") };
};

describe("what a visit's amounts come to, in a deck", () => {
  it("is one page behind its visit at most, with one drawing", () => {
    const { source, pages } = dosesOf(worked({ ...chloroform, ...clash, anaesthetic: [lidocaine] }));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.blocks.filter(({ kind }) => kind === "figure")).toHaveLength(1);
    const titles = deck(source).pages.map(({ title }) => title);
    expect(titles[titles.indexOf("Visit 1, doses") - 1]).toBe("Visit 1");
  });

  it("tells anaesthetic, solvent and clash, each number with its place in the ledger", () => {
    const { source, pages, said } = dosesOf(worked({ ...chloroform, ...clash, anaesthetic: [lidocaine] }));
    expect(said).toMatch(/Local anaesthetic: \d\.\d\d of the limit, by /);
    expect(said).toMatch(/Chloroform: [\d.]+ .*limit of /);
    expect(said).toMatch(/Sodium hypochlorite met chlorhexidine: /);
    expect(said).toMatch(/Irrigants: sodium hypochlorite 10\.0 ml in 5\.0 min; chlorhexidine 5\.0 ml in 1\.0 min/);
    const numbers = numbersIn({ pages });
    expect(numbers.length).toBeGreaterThan(5);
    for (const { ledgerEntry, path, text } of numbers) {
      const held = valueAtPath(source.ledger.find(({ id }) => id === ledgerEntry)?.output, path);
      expect(typeof held === "number" ? held.toFixed(text.split(".")[1]?.length ?? 0) : held).toBe(text);
    }
  });

  it("draws the air where a solvent was used, and the visit over its minutes otherwise", () => {
    const captions = (parts: Part[]) =>
      dosesOf(parts).pages.flatMap(({ blocks }) => blocks.flatMap((one) => (one.kind === "figure" ? one.caption : [])));
    expect(captions(worked(chloroform))).toEqual(["Solvent in the air over the visit"]);
    expect(captions(worked({ anaesthetic: [lidocaine] }))).toEqual(["The visit over its minutes"]);
  });

  it("is left out where nothing is to say: no sum, or irrigants that met nothing", () => {
    expect(dosesOf(sampleParts()).pages).toEqual([]);
    expect(dosesOf(worked({ anaesthetic: [lidocaine], vitalSigns: {} })).pages).toEqual([]);
  });

  it("tells what was given for all canals apart from what reached one of them", () => {
    const rinse = { solution: "saline", volumeMl: 2, minutes: 1, activated: "no" } as const;
    const irrigation = [rinse, { ...rinse, canal: "MB1" }];
    const found = { state: "located", patency: "notTried", reference: "" } as const;
    const canals = ["MB1", "DB"].map((canal) => ({ ...found, canal }));
    const { said } = dosesOf(worked({ canals, irrigation, anaesthetic: [lidocaine] }));
    expect(said).toContain("Irrigants for all canals: saline 2.0 ml in 1.0 min.");
    expect(said).toContain("Irrigants in MB1, those for all with it: saline 4.0 ml in 2.0 min.");
  });

  it("says shortly why a solvent was not summed, without what is to be entered", () => {
    const { said } = dosesOf(worked({ solvent: chloroform.solvent ?? [], anaesthetic: [lidocaine] }));
    expect(said).toContain("Chloroform, not summed: the room was not set.");
    expect(said).not.toContain("take the clinic's");
  });

  it("stands in the hand-out as lines that begin with the number of the visit", () => {
    const words = linesOfModel(handout(sampleSource(worked({ anaesthetic: [lidocaine] })))).join("\n");
    expect(words).toMatch(/Doses against limits\s+Visit 1: Local anaesthetic: /);
    expect(linesOfModel(handout(sampleSource())).join("\n")).not.toContain("Doses against limits");
  });
});
