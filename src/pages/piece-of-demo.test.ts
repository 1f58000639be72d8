import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { sampleSource } from "../../test/sample-case.ts";
import { jargonIn } from "../core/plain-words/jargon.ts";
import { readingGrade } from "../core/plain-words/reading-grade.ts";
import { bindings } from "../ledger/bindings.ts";
import { deriveLedger } from "../ledger/derive-ledger.ts";
import { caseFileSchema } from "../record/case-file.ts";
import { apply, patchesOf } from "../record/change.ts";
import type { Part } from "../record/parts.ts";
import { firstSettings } from "../record/settings.ts";
import { plainGrade } from "./consent/plain-reason.ts";
import { pieceWords, resultPlainly, seenWords } from "./piece/piece-words.ts";
import { pieceSheet } from "./piece-sheet.ts";

/** What the page asks of the ledger, and nothing that takes long; without a course the path alone is not computed. */
const asked = bindings.filter(({ topic }) => ["tooth", "removal"].includes(topic.name));

it("the page about the piece of demo case A is read at the age of twelve with its real figures, and says that it is invented", () => {
  const file = caseFileSchema.parse(JSON.parse(readFileSync("data/demo/cases/a.json", "utf8")));
  const parts = file.gestures.reduce<readonly Part[]>((before, one) => apply(before, patchesOf(one, before)), []);
  const known = () => undefined;
  const ledger = deriveLedger({ caseId: "demo-a", parts, settings: firstSettings, at: "", known }, asked);
  const sheet = pieceSheet({ ...sampleSource([]), caseId: "demo-a", parts, ledger, notation: "twoDigit" });
  const told = sheet.pages
    .flatMap(({ blocks }) => blocks)
    .flatMap((block) => (block.kind === "text" ? block.lines : []))
    .map((line) => line.flatMap(({ text, quiet }) => (quiet === true ? [] : [text])).join(""))
    .filter((text) => text.split(" ").length > 3);
  expect(told.length).toBeGreaterThan(15);
  for (const text of told) {
    expect([text, jargonIn(text)]).toEqual([text, []]);
    expect(readingGrade(text), text).toBeLessThanOrEqual(plainGrade);
  }
  expect(told.join("\n")).toMatch(/about \d+ of 100 people/);
  expect(told.join("\n")).toContain(resultPlainly.bypassed);
  // Whether the tooth is kept comes from one series for three of the ways: it is drawn once.
  const figures = sheet.pages
    .flatMap(({ blocks }) => blocks)
    .flatMap((one) => (one.kind === "figure" ? one.figure : []));
  expect(
    figures
      .map(({ alternative }) => alternative)
      .join(" ")
      .split(pieceWords.asAbove),
  ).toHaveLength(3);
  expect(told.join("\n")).toContain(seenWords.hidden);
  expect(sheet.mark).toMatch(/Demo: invented$/);
});
