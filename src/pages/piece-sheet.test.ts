import { describe, expect, it } from "vitest";
import { sampleParts, sampleSource } from "../../test/sample-case.ts";
import { samplePiece, sampleRemovalTold, withPiece } from "../../test/sample-removal.ts";
import { linesOfModel, valueAtPath, wordsOfModel } from "../../test/words-of-model.ts";
import { partId } from "../core/ids.ts";
import { jargonIn } from "../core/plain-words/jargon.ts";
import { readingGrade } from "../core/plain-words/reading-grade.ts";
import type { BodyOf } from "../record/parts.ts";
import { consentWords } from "./consent/consent-words.ts";
import { plainGrade } from "./consent/plain-reason.ts";
import { numbersIn } from "./page-model.ts";
import { ofHundred } from "./piece/of-hundred.ts";
import { cleanWords, pieceWords, plainWays, resultPlainly, seenWords, whereWords } from "./piece/piece-words.ts";
import { pieceSheet } from "./piece-sheet.ts";

const known = sampleSource();
const sheet = (over: Partial<BodyOf<"removal">> = {}, told = sampleRemovalTold()) =>
  pieceSheet(withPiece(known, over, told));
/** The sentences of all lines, each with the series that stands behind it. */
const sentencesOf = (model: ReturnType<typeof sheet>): string => linesOfModel(model).join("\n");
const attempt: BodyOf<"removal">["attempts"][number] = {
  ...{ at: "2024-03-06T09:00:00Z", minutes: 12, tool: "ultrasonicTip", tip: "", moved: "nothing", note: "" },
};

describe("every sentence that the page about a piece brings itself", () => {
  const ways = Object.values(plainWays).flatMap(({ name, is }) => [name, is]);
  const maps = [pieceWords, whereWords, seenWords, cleanWords, resultPlainly].flatMap((one) => Object.values(one));
  it.each([...maps, ...ways])("is read at the age of twelve, without a word of the trade: %s", (words) => {
    expect(jargonIn(words)).toEqual([]);
    if (words.split(" ").length > 3) expect(readingGrade(words)).toBeLessThanOrEqual(plainGrade);
  });
});

describe("the page about a piece", () => {
  it("tells every way once, with how it went for others, as so many of 100 people and the series behind it", () => {
    const lines = linesOfModel(sheet());
    const said = sentencesOf(sheet());
    for (const { name } of Object.values(plainWays)) expect(lines.filter((line) => line === name)).toHaveLength(1);
    expect(said).toContain("The bone healed in about 80 of 100 people. (80 of 100, Known 2001*)");
    expect(said).toContain("The tooth was still there in about 90 of 100 people. (95 of 100, Known 2001*)");
    expect(said).toContain("In a study, the try worked in about 30 of 100 people. (12 of 40, Known 2001*)");
    expect(lines.join("\n")).not.toContain("7 of 9");
  });

  it("tells the least and the most where studies of such pieces differ, and one where they say the same", () => {
    const [row, ...rest] = sampleRemovalTold().removalChance;
    if (row === undefined) throw new Error("no series");
    const more = (events: number, n = 40) => ({ ...row, series: "hole-2003", events, n, share: events / n });
    const lines = (events: number) =>
      sentencesOf(sheet({}, sampleRemovalTold({ removalChance: [more(events), row, more(20), ...rest] })));
    expect(lines(36)).toContain(
      "Studies differ. In one, the try worked in about 30 of 100 people. (12 of 40, Known 2001*)",
    );
    expect(lines(36)).toContain("In another, it worked in about 90 of 100 people. (36 of 40, Hole 2003*)");
    expect(lines(36)).not.toContain("20 of 40");
    const alike = sentencesOf(sheet({}, sampleRemovalTold({ removalChance: [more(24, 79), row] })));
    expect(alike).toContain("In a study, the try worked in about 30 of 100 people. (12 of 40, Known 2001*)");
    expect(alike).not.toContain("Studies differ");
    expect(sentencesOf(sheet({}, sampleRemovalTold({ removalChance: [] })))).not.toContain(pieceWords.toWork);
  });

  it("tells of a hole in the root with the series that counted it", () => {
    expect(linesOfModel(sheet()).join("\n")).toMatch(/It did in about 5 of 100 people\. \(55 of 1133, Hole 2003\*\)/);
  });

  it("names the place of every chance in the weighing, which holds it", () => {
    const told = sampleRemovalTold();
    const numbers = numbersIn(sheet()).filter(({ ledgerEntry }) => ledgerEntry === "b2".repeat(32));
    // Four ways with both columns, the chance that it comes out, and the hole.
    expect(numbers).toHaveLength(10);
    for (const { path, text } of numbers) expect(text).toBe(ofHundred(Number(valueAtPath(told, path))));
  });

  it("says that the figures do not settle it only where they do not, and calls no way best", () => {
    const open = wordsOfModel(sheet());
    expect(open).toContain(pieceWords.close);
    expect(open).not.toMatch(/\bbest way\b|we advise|our advice|\bsafe\b/i);
    expect(wordsOfModel(sheet({}, sampleRemovalTold({ figuresDecide: true })))).not.toContain(pieceWords.close);
  });

  it("is read at the age of twelve, paragraph by paragraph, as it stands", () => {
    const texts = sheet({ attempts: [attempt], stopRules: { setAt: "2024-03-06T08:00:00Z", minutes: 60 } })
      .pages.flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === "text" ? block.lines : []))
      .map((line) => line.flatMap(({ text, quiet }) => (quiet === true ? [] : [text])).join(""));
    expect(texts.length).toBeGreaterThan(20);
    for (const text of texts.filter((one) => one.split(" ").length > 3)) {
      expect([text, jargonIn(text)]).toEqual([text, []]);
      expect(readingGrade(text), text).toBeLessThanOrEqual(plainGrade);
    }
  });

  it("tells the stop rule and the attempts, and after the result what follows from it instead", () => {
    const rules = { setAt: "2024-03-06T08:00:00Z", minutes: 60 };
    const before = linesOfModel(sheet({ attempts: [attempt], stopRules: rules }));
    expect(before).toContain("We stop when we have tried for this long in all: 60 minutes.");
    expect(before).toContain("So far we have tried this many times: 1.");
    const result = { is: "bypassed", on: "2024-03-06", because: "" } as const;
    const over = sheet({ attempts: [attempt], stopRules: rules, result });
    const after = linesOfModel(over);
    expect(after).toContain(resultPlainly.bypassed);
    expect(after).toContain("We tried this many times: 1.");
    // What was done comes first; the ways are told as what was weighed.
    const titles = over.pages.map(({ title }) => title);
    expect(titles.indexOf(pieceWords.done)).toBe(titles.indexOf(pieceWords.waysWeighed) - 1);
    expect(after).toContain(pieceWords.asKnown);
    expect(titles).not.toContain(pieceWords.ways);
    expect(before).not.toContain(pieceWords.asKnown);
    expect(sheet({ attempts: [attempt] }).pages.map(({ title }) => title)).not.toContain(pieceWords.done);
    expect(after).not.toContain(pieceWords.choose);
    expect(after).not.toContain(pieceWords.outOrNot);
    expect(after).toContain(pieceWords.germs);
  });

  it("says of each result what it means, and of a tooth that comes out nothing that no longer matters", () => {
    const of = (is: keyof typeof resultPlainly) =>
      linesOfModel(sheet({ result: { is, on: "2024-03-06", because: "" } }));
    for (const is of Object.keys(resultPlainly) as (keyof typeof resultPlainly)[])
      expect(of(is)).toContain(resultPlainly[is]);
    expect(of("extraction")).not.toContain(pieceWords.again);
    expect(of("extraction")).not.toContain(pieceWords.longRun);
    expect(of("removed")).not.toContain(pieceWords.germs);
  });

  it("tells where the piece sits, whether it is seen and how clean the root was, as far as it is known", () => {
    const lines = sentencesOf(sheet());
    expect(lines).toContain(whereWords.middle);
    for (const words of [...Object.values(seenWords), ...Object.values(cleanWords)]) expect(lines).not.toContain(words);
    const source = withPiece(known);
    const separated = { signs: [], headSeen: "hidden", stage: "partlyCleaned" };
    const parts = source.parts.map((one) =>
      one.id === "mishap-p" ? { ...one, body: { ...one.body, separated } } : one,
    ) as typeof source.parts;
    const more = sentencesOf(pieceSheet({ ...source, parts }));
    expect(more).toContain(`${seenWords.hidden} ${cleanWords.partlyCleaned}`);
  });

  it("names every way without a figure where nothing could be computed", () => {
    const source = withPiece(known);
    const ledger = source.ledger.filter(({ topic }) => topic !== "removal");
    const lines = linesOfModel(pieceSheet({ ...source, ledger }));
    expect(lines.filter((line) => line === pieceWords.noFigure)).toHaveLength(5);
    expect(lines).toContain(pieceWords.pieceAlone);
  });

  it("puts the studies behind it in small print, the recalled ones with a star, and those that stand beside not", () => {
    const last = linesOfModel(sheet()).at(-1);
    expect(last).toContain(consentWords.studies);
    expect(last).toContain("Hole CD. On pieces. J 2001;1:1-2*; Known AB. On pieces. J 2001;1:1-2* (* from memory)");
    expect(last).not.toMatch(/other/i);
  });

  it("carries the pseudonym, and for a demo that it is invented; no day and no year", () => {
    expect(sheet().mark).toBe("P-0001");
    const source = withPiece(known);
    const demo = source.parts.map((one) => (one.kind === "case" ? { ...one, body: { ...one.body, demo: true } } : one));
    expect(pieceSheet({ ...source, parts: demo }).mark).toBe("P-0001 · Demo: invented");
    const words = sheet().pages.slice(0, -1);
    expect(linesOfModel({ pages: words }).join("\n")).not.toMatch(/\d{4}-\d{2}-\d{2}|2024/);
  });

  it("is of the piece that was weighed last, and is refused where none is", () => {
    const source = withPiece(known);
    const later = samplePiece({ on: "2024-06-01" }).map((one) => ({
      ...one,
      id: partId(`${one.id}-2`),
    }));
    const parts = [...source.parts, ...later];
    expect(linesOfModel(pieceSheet({ ...source, parts }))).toContain(pieceWords.pieceAlone);
    expect(() => pieceSheet({ ...known, parts: sampleParts() })).toThrow(
      "Cannot make the page about the piece: no removal is weighed; open the mishap and weigh it first",
    );
  });
});
