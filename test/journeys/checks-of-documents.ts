import { expect } from "vitest";
import { type DeckSlide, readDeck, wordsOf } from "../documents/read-deck.ts";
import { deckAsPdf, misplacedWords, picturesInPdf, readPdf, textOfPdf } from "../documents/read-handout.ts";
import type { BenchInBrowser } from "./bench-in-browser.ts";
import type { SavedDocument } from "./first-case-story.ts";
import { type CheckedNumber, numbersOfDocument } from "./numbers-of-document.ts";

/** Where the rule over a slide's footer and the footer itself stand, in points. */
export const footer = { lowest: 6.95 * 72, from: 6.98 * 72 } as const;

/** A deck opened again: its pages in order, its pictures, nothing empty, nothing over an edge; gives its slides. */
export function checkDeck(deck: SavedDocument, titles: readonly string[]): readonly DeckSlide[] {
  const slides = readDeck(deck.bytes);
  expect(slides.map(({ texts }) => texts[0]?.replace(/, continued$/, "")).filter(isNew)).toEqual(titles);
  for (const { pictures, emptyPlaceholders } of slides) {
    expect(emptyPlaceholders).toBe(0);
    for (const { alternative, bytes } of pictures) {
      expect(alternative).not.toBe("");
      // The first bytes of every PNG file.
      expect([...bytes.subarray(0, 4)]).toEqual([0x89, 0x50, 0x4e, 0x47]);
    }
  }
  const printed = readPdf(deckAsPdf(deck.bytes));
  expect(printed).toHaveLength(slides.length);
  expect(misplacedWords(printed, footer)).toEqual([]);
  const words = slides.map(wordsOf).join("\n");
  for (const { text } of deck.view.numbers) expect(words).toContain(text);
  return slides;
}

/** A title that goes on over several slides counts once. */
const isNew = (title: string | undefined, index: number, all: readonly (string | undefined)[]): boolean =>
  title !== all[index - 1];

/** A hand-out opened again: a tagged PDF with its pictures and nothing over an edge; gives its text. */
export function checkHandout(handout: SavedDocument, pictures: number): string {
  expect(Buffer.from(handout.bytes).includes("/StructTreeRoot")).toBe(true);
  const pages = readPdf(handout.bytes);
  expect(misplacedWords(pages)).toEqual([]);
  expect(picturesInPdf(handout.bytes)).toBeGreaterThanOrEqual(pictures);
  const text = textOfPdf(pages);
  for (const { text: number } of handout.view.numbers) expect(text).toContain(number);
  return text;
}

/** Every number of a document is what the command line computes from its entry's input. */
export async function checkNumbers(bench: BenchInBrowser, made: SavedDocument): Promise<readonly CheckedNumber[]> {
  const numbers = await numbersOfDocument(bench, made.view);
  expect(numbers.length).toBeGreaterThan(0);
  expect(numbers.map(({ printed }) => printed)).toEqual(numbers.map(({ computed }) => computed));
  return numbers;
}

/**
 * Two documents of one case between which one course was moved: the numbers that rest on it come from new entries and
 * their texts changed, every other number and every other word is the same.
 */
export function checkOnlyThatChanged(
  before: SavedDocument,
  after: SavedDocument,
  subjects: {
    before: readonly CheckedNumber[];
    after: readonly CheckedNumber[];
    mark: string;
  },
): void {
  const rests = ({ subject }: CheckedNumber): boolean => subject.endsWith(` of ${subjects.mark}`);
  const placed = (numbers: readonly CheckedNumber[]) => numbers.map(({ subject, path }) => `${subject}: ${path}`);
  expect(placed(subjects.after)).toEqual(placed(subjects.before));
  subjects.before.forEach((number, index) => {
    const [one, other] = [before.view.numbers[index], after.view.numbers[index]];
    if (rests(number)) expect(other?.ledgerEntry).not.toBe(one?.ledgerEntry);
    else expect(other).toEqual(one);
  });
  const changed = (numbers: readonly CheckedNumber[]) => numbers.filter(rests).map(({ printed }) => printed);
  expect(changed(subjects.after)).not.toEqual(changed(subjects.before));
  if (before.view.as === "handout") return;
  const [old, now] = [before, after].map(({ bytes }) => readDeck(bytes).map(wordsOf));
  const bare = (words: readonly string[] | undefined) => words?.map((text) => text.replace(/\d+(\.\d+)?/g, "#"));
  expect(bare(now)).toEqual(bare(old));
  const dependent = new Set([...changed(subjects.before), ...changed(subjects.after)]);
  old?.forEach((text, index) => {
    const figures = (words: string | undefined): string[] => words?.match(/\d+(\.\d+)?/g) ?? [];
    const [olds, news] = [figures(text), figures(now?.[index])];
    olds.forEach((figure, at) => {
      if (figure !== news[at]) expect([...dependent]).toEqual(expect.arrayContaining([figure, news[at]]));
    });
  });
}
