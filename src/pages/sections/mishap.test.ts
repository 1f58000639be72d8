import { describe, expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../../test/sample-case.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { BodyOf } from "../../record/parts.ts";
import { toldOfBreak } from "../break-for-tests.ts";
import type { CaseSource } from "../case-source.ts";
import { deck } from "../deck.ts";
import { handout } from "../handout.ts";
import type { Page, says } from "../page-model.ts";
import { mishapFacts, mishapPages } from "./mishap.ts";

const body: BodyOf<"mishap"> = {
  ...{ on: "2024-03-27", what: "separatedInstrument", canal: "MB1", third: "apical", bend: "beyond" },
  ...{ handled: "bypassed", toldPatient: "told", story: "It parted.", fragmentMm: 3 },
  instrument: { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" },
};
const entry = (subject: string, output: object): LedgerEntry =>
  ({
    id: `entry-${subject.split(" ")[0]}`,
    caseId: "case",
    subject,
    topic: "t",
    input: {},
    output,
  }) as unknown as LedgerEntry;
const shape = {
  profile: [0, 8, 16].map((atMm) => ({ atMm, diameterMm: 0.25 + 0.06 * atMm, low: 0.2, high: 1.3 })),
  ...{
    custom: false,
    toleranceMm: 0.02,
    basis: { formula: "f", assumptions: [], sources: [] },
    cautions: [],
    notComputed: [],
  },
};
function sourceOf(more: Partial<BodyOf<"mishap">>, ledger: readonly LedgerEntry[] = []): CaseSource {
  const source = sampleSource([...sampleParts(), part("mishap", "mishap-1", { ...body, ...more })]);
  return { ...source, ledger: [...source.ledger.filter(({ subject }) => !subject.endsWith("of mishap-1")), ...ledger] };
}
const explained = [entry("fracture of mishap-1", toldOfBreak), entry("instrument of mishap-1", shape)];
const mishapIn = ({ parts }: CaseSource) => {
  const [found] = parts.filter((one) => one.kind === "mishap");
  if (found?.kind !== "mishap") throw new Error("the case has a mishap");
  return found;
};
const textOf = (pages: readonly Page[]): string =>
  pages
    .flatMap(({ blocks }) => blocks)
    .flatMap((block) => (block.kind === "text" ? [block.heading ?? "", ...block.lines.map(lineText)] : []))
    .join("\n");
const lineText = (line: ReturnType<typeof says>): string => line.map(({ text }) => text).join("");

describe("a mishap in the deck", () => {
  it("tells how it may have broken in two sentences, each number with its entry", () => {
    const [, page] = mishapPages(sourceOf({}, explained));
    expect(page?.title).toBe("How it may have broken, MB1");
    const why = page?.blocks.find((block) => block.kind === "text" && block.heading?.startsWith("Consistent with"));
    const lines = why?.kind === "text" ? why.lines : [];
    expect(lines.map(lineText)).toEqual([
      "Consistent most with bending fatigue, 0.55 (0.30 to 0.80); then with torsional overload, 0.40 (0.20 to 0.60); then with a flaw or joint, 0.05 (0.01 to 0.12)",
      "The intervals overlap: the facts do not decide",
    ]);
    const numbers = lines.flat().filter(({ number }) => number !== undefined);
    expect(numbers).toHaveLength(9);
    expect(new Set(numbers.map(({ number }) => number?.ledgerEntry))).toEqual(new Set(["entry-fracture"]));
    expect(page?.blocks.some(({ kind }) => kind === "figure")).toBe(true);
  });

  it("says what the prior counted where series did", () => {
    const priors = toldOfBreak.explanations.map((one) => ({
      ...one,
      prior: { mean: 0.5, n: 80, N: 137, source: "s" },
    }));
    const pages = mishapPages(sourceOf({}, [entry("fracture of mishap-1", { ...toldOfBreak, explanations: priors })]));
    expect(textOf(pages)).toContain("from 80/137 torsional in published series, a flaw by assumption");
    expect(pages.some(({ blocks }) => blocks.some(({ kind }) => kind === "figure"))).toBe(false);
  });

  it.each([
    [{}, "Instrument: not described"],
    [{ size: 8, movement: "hand" }, "Instrument: size 8, by hand"],
    [{ taper: 0.06, alloy: "nickelTitanium" }, "Instrument: taper .06, nickel-titanium"],
  ] as const)("says of the instrument what was told of it: %j", (instrument, line) => {
    expect(textOf(mishapPages(sourceOf({ instrument }))).split("\n")).toContain(line);
  });

  it("lists the steps that were done, in their order, and what was said and agreed", () => {
    const at = (minute: number) => `2024-03-27T10:0${minute}:00.000Z`;
    const pages = mishapPages(
      sourceOf({
        steps: [
          { step: "separated-film", at: at(5) },
          { step: "separated-stop", at: at(1) },
          { step: "gone-since", at: at(2) },
        ],
        told: { on: "2024-03-28", by: "both", said: "A tool broke.", agreed: "To pass it." },
        ...{ defence: "It bent.", objection: "Was it?" },
      }),
    );
    const text = textOf(pages);
    expect(pages[0]?.notes.map((note) => note.slice(0, 24))).toEqual([
      "Done: Stop in this canal",
      "Done: Take a film: is th",
    ]);
    for (const words of [
      "Noted of the usual immediate steps: 2 of 8",
      "told by both, ",
      "A tool broke.",
      "To pass it.",
      "It bent.",
      "Was it?",
    ])
      expect(text).toContain(words);
    expect(text).not.toMatch(/2024|10:0/);
  });

  it("lists among the sources what stands behind the steps that were noted, and nothing of the others", () => {
    const at = "2024-03-27T10:01:00.000Z";
    const noted = (...names: string[]) =>
      sourceOf({ steps: names.map((name) => ({ step: `separated-${name}`, at })) } as Partial<BodyOf<"mishap">>);
    const heading = "Behind the usual steps";
    for (const [make, council] of [
      [deck, "General Dental Council"],
      [handout, "Dental Council 2016"],
    ] as const) {
      const sourcesOf = (source: CaseSource): string => {
        const page = make(source).pages.filter(({ title }) => title === "Sources");
        const steps = page.flatMap(({ blocks }) => blocks).filter((one) => "heading" in one && one.heading === heading);
        return textOf([{ title: "", on: "", blocks: steps, notes: [] }]);
      };
      expect(sourcesOf(noted("stop", "tell"))).toMatch(
        new RegExp(`^${heading}\n${council}.*\\sThe others: common practice`),
      );
      expect(sourcesOf(noted("stop", "tell"))).not.toContain("Madarati");
      expect(sourcesOf(noted("stop"))).toBe(`${heading}\nCommon practice.`);
      expect(sourcesOf(sourceOf({}))).toBe("");
    }
  });

  it("says nothing of what was not recorded", () => {
    const text = textOf(mishapPages(sourceOf({ toldPatient: "notYet", story: "" })));
    expect(text).toContain("The patient has not been told yet");
    expect(text).not.toMatch(/usual immediate steps|broken|agreed|undefined/);
  });
});

describe("a mishap on the hand-out", () => {
  it("is one paragraph with the explanation in it, and traceable", () => {
    const source = sourceOf({}, explained);
    const line = mishapFacts(mishapIn(source), source);
    expect(lineText(line)).toMatch(/^Separated instrument, day \d+\. Where: MB1, apical third, beyond the bend\. /);
    expect(lineText(line)).toContain("Consistent most with bending fatigue, 0.55");
    expect(lineText(line)).toMatch(/do not decide\.$/);
    expect(line.filter(({ number }) => number !== undefined)).toHaveLength(9);
    expect(textOf(handout(source).pages)).toContain("Consistent most with bending fatigue");
  });

  it("ends where nothing is explained", () => {
    const source = sourceOf({});
    expect(lineText(mishapFacts(mishapIn(source), source))).toMatch(/Handled: bypassed\. The patient was told\.$/);
  });
});
