import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { sampleSource } from "../../test/sample-case.ts";
import { jargonIn } from "../core/plain-words/jargon.ts";
import { readingGrade } from "../core/plain-words/reading-grade.ts";
import { bindings } from "../ledger/bindings.ts";
import { deriveLedger } from "../ledger/derive-ledger.ts";
import { lastPlan, planTold } from "../ledger/plan-told.ts";
import { caseFileSchema } from "../record/case-file.ts";
import { apply, patchesOf } from "../record/change.ts";
import type { Part } from "../record/parts.ts";
import { firstSettings } from "../record/settings.ts";
import type { CaseSource } from "./case-source.ts";
import { plainGrade } from "./consent/plain-reason.ts";
import { consentSheet } from "./consent-sheet.ts";

/** What the page asks of the ledger, and nothing that takes long. */
const asked = bindings.filter(({ topic }) => ["tooth", "plan"].includes(topic.name));
const settings = { ...sampleSource([]), notation: "twoDigit" } as const;

function demo(name: string): CaseSource {
  const file = caseFileSchema.parse(JSON.parse(readFileSync(`data/demo/cases/${name}.json`, "utf8")));
  const parts = file.gestures.reduce<readonly Part[]>((before, one) => apply(before, patchesOf(one, before)), []);
  const known = () => undefined;
  const ledger = deriveLedger({ caseId: `demo-${name}`, parts, settings: firstSettings, at: "", known }, asked);
  return { ...settings, caseId: `demo-${name}`, parts, ledger };
}

/** What is said to the patient, paragraph by paragraph, without what stands small beside it. */
const paragraphs = (source: CaseSource): string[] =>
  consentSheet(source)
    .pages.flatMap(({ blocks }) => blocks)
    .flatMap((block) => (block.kind === "text" ? block.lines : []))
    .map((line) => line.flatMap(({ text, quiet }) => (quiet === true ? [] : [text])).join(""))
    .filter((text) => text !== "");

describe.each(["a", "b", "c"])("the consent page of demo case %s", (name) => {
  const source = demo(name);

  it("is read at the age of twelve, paragraph by paragraph, without a word of the trade", () => {
    const told = paragraphs(source);
    expect(told.length).toBeGreaterThan(20);
    for (const text of told) {
      expect([text, jargonIn(text)]).toEqual([text, []]);
      if (text.split(" ").length > 3) expect(readingGrade(text), text).toBeLessThanOrEqual(plainGrade);
    }
    const whole = readingGrade(told.join("\n"));
    expect(whole).toBeLessThanOrEqual(6);
  });

  it("has a line for every risk that the facts call for in the way that was chosen", () => {
    const chosen = lastPlan(source.parts)?.body.chosen;
    const told = planTold(source.ledger.find(({ topic }) => topic === "plan"));
    const risks = told?.options.find(({ way }) => way === chosen)?.risks ?? [];
    expect(risks.length).toBeGreaterThan(3);
    for (const { plain } of risks) expect(paragraphs(source)).toContain(plain);
  });

  it("says that it is invented", () => {
    expect(consentSheet(source).mark).toMatch(/Demo: invented$/);
  });
});

it.each([
  ["a", "An instrument may break in a canal", "A thin tool can break in it."],
  ["c", "The thin root may break, now or in years", "It can break more easily than other teeth."],
])("the consent page of demo case %s tells the risk that %s once, in plain words", (name, named, plainly) => {
  const source = demo(name);
  expect(lastPlan(source.parts)?.body.risksNamed).toContain(named);
  const told = paragraphs(source);
  expect(told).not.toContain(named);
  expect(told.filter((text) => text.includes(plainly))).toHaveLength(1);
});
