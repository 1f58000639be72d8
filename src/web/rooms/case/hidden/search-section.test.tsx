import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Router } from "wouter";
import { caseId, ledgerEntryId, partId } from "../../../../core/ids.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { BodyOf, PartOf } from "../../../../record/parts.ts";
import type { FeatureView } from "../../../../server/api.ts";
import { DraftBook } from "../../../record/draft-book.ts";
import { BeginSearch } from "./begin-search.tsx";
import { SearchSection } from "./search-section.tsx";

const level = 0.95;
const prior = { mean: 0.75, interval: { low: 0.4, high: 0.94, level } };
const feature: FeatureView = {
  ...{ feature: "secondMesiobuccal", is: "a second canal in the mesiobuccal root", prior },
  series: [
    { ...prior, region: "world", n: 3875, N: 5250, reference: "A 2018", verification: "seen", within: false },
    { ...prior, region: "Belgium", n: 244, N: 250, reference: "A 2018", verification: "memory", within: true },
  ],
};
const looks: BodyOf<"search">["looks"] = [
  { on: "2026-01-02", kind: "straightFilm", result: "notSeen", note: "" },
  { on: "2026-01-02", kind: "microscope", result: "notSeen", note: "" },
];
const search = (over: Partial<BodyOf<"search">> = {}): PartOf<"search"> => ({
  ...{ id: partId("search-a"), kind: "search", revision: 1 },
  body: { feature: "secondMesiobuccal", looks, ...over },
});
const entry: LedgerEntry = {
  ...{
    id: ledgerEntryId("e1"),
    caseId: caseId("c"),
    subject: "missedCanal of search-a",
    topic: "missedCanal",
    topicVersion: 1,
  },
  ...{ input: { evidence: looks }, inputPaths: [], at: "2026-01-02T10:00:00Z" },
  output: {
    ...{ prior: { ...prior, n: 4183, N: 5650 }, posterior: { mean: 0.62, interval: { low: 0.31, high: 0.88, level } } },
    steps: [
      {
        ...{ evidence: 0, kind: "straightFilm", result: "notSeen", sensitivity: 0.28, specificity: 0.96 },
        ...{ likelihoodRatio: 0.75, posterior: 0.62 },
      },
    ],
    nextBestLook: [
      { kind: "dye", harm: 1, says: "Stain it.", missing: ["sensitivity", "specificity"] },
      { kind: "cbct", harm: 3, says: "Take a CBCT.", expectedFallBits: 0.41, needs: "a written reason why" },
      { kind: "troughing", harm: 4, says: "Trough.", missing: ["sensitivity"], needs: "only with the wall known" },
    ],
    cautions: ["One series is no spread."],
    notComputed: [
      { name: "evidence[1]", why: "no sensitivity of microscope is published; give evidence[1].sensitivity" },
    ],
  },
};
const { output: _output, ...withoutOutput } = entry;

const drawn = (over: Partial<Parameters<typeof SearchSection>[0]> = {}): string =>
  renderToStaticMarkup(
    <Router ssrPath="/case/c/hidden">
      <SearchSection
        {...{ caseId: "c", search: search(), entry, feature, day: "2026-01-03", keys: true, films: true }}
        book={new DraftBook({ put: () => Promise.reject(new Error("not asked")) })}
        enter={() => undefined}
        takeOut={() => undefined}
        {...over}
      />
    </Router>,
  );
const text = (html: string): string => html.replaceAll(/<[^>]+>/g, " ").replaceAll(/\s+/g, " ");

describe("a search for a hidden canal", () => {
  it("says the chance with its interval, after how many looks, and how many do not count yet", () => {
    expect(text(drawn())).toContain(
      "62 % , how it came about (31 to 88 %) that it is there after 1 look; 1 look not reckoned in yet",
    );
    const none = { ...entry, output: { ...(entry.output as object), steps: [], notComputed: [] } };
    expect(text(drawn({ search: search({ looks: [] }), entry: none }))).toContain("that it is there before any look");
  });

  it("says first that it was found, with the chance that it had, and offers no further look", () => {
    const html = text(drawn({ search: search({ foundAs: "MB2" }) }));
    expect(html).toContain("Found: MB2. By the series and the looks alone it stood at 62 %");
    expect(html).not.toContain("that it is there");
    expect(html).not.toContain("Next, by what it costs");
  });

  it("names the look that waits for an accuracy by its place in the table, in plain words", () => {
    expect(text(drawn())).toContain("Look 2: no sensitivity of microscope is published; give sensitivity");
    expect(drawn()).not.toContain("evidence[");
  });

  it("ranks what is left by what it costs, with what each would bring and what must be there first", () => {
    const html = text(drawn());
    const places = ["No harm", "First: Stain it.", "A limited-field CBCT", "Dentine"].map((word) => html.indexOf(word));
    expect(places.every((place, at) => place > (places[at - 1] ?? 0))).toBe(true);
    expect(html).toContain("Takes away 0.41 bit of doubt on average");
    expect(html).toContain("Only with the wall known");
    expect(drawn()).toMatch(/Why less than a CBCT was not enough/);
    expect(drawn()).toMatch(/Wall where a trough cuts/);
  });

  it("keeps the reason for a CBCT and the wall of a trough in sight once they are done", () => {
    const done: BodyOf<"search">["looks"] = [
      { on: "2026-01-02", kind: "cbct", result: "notSeen", note: "" },
      { on: "2026-01-02", kind: "troughing", result: "notSeen", depthMm: 1.5, note: "" },
    ];
    const nothingLeft = { ...entry, output: { ...(entry.output as object), nextBestLook: [] } };
    const html = drawn({ search: search({ looks: done }), entry: nothingLeft });
    expect(html).toMatch(/Why less than a CBCT was not enough/);
    expect(html).toMatch(/Wall where a trough cuts/);
    expect(html).toContain("Depth of look 2, troughing");
  });

  it("shows the keys of its looks only where they are for this search", () => {
    expect(drawn().match(/aria-keyshortcuts="\d"/g)).toHaveLength(10);
    expect(drawn({ keys: false })).not.toMatch(/aria-keyshortcuts="\d"/);
  });

  it("offers nothing to press where the case is only looked at", () => {
    expect(drawn({ book: undefined })).not.toContain("<button");
  });

  it("says why where nothing could be worked out, by the look's place", () => {
    const refused = { ...withoutOutput, refused: ["evidence[1].result: notSeen contradicts a look before it"] };
    expect(text(drawn({ entry: refused }))).toContain(
      "Look 2: notSeen contradicts a look before it".replace("notSeen", "not seen"),
    );
  });

  it("never says that a tooth is without it", () => {
    expect(text(drawn())).not.toMatch(/\bsafe|rule[sd]? out|absent|no canal\b/i);
  });
});

describe("what a tooth may hide", () => {
  it("stands with how often it was counted, n of N by region", () => {
    const html = text(renderToStaticMarkup(<BeginSearch features={[feature]} isFirst begin={() => undefined} />));
    expect(html).toContain("75 % (40 to 94 %) by 2 published counts: 3875/5250 world, 244/250 Belgium");
  });

  it("can't be begun where the case is only looked at", () => {
    expect(renderToStaticMarkup(<BeginSearch features={[feature]} isFirst />)).not.toContain("<button");
  });
});
