import { describe, expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../../test/sample-case.ts";
import { caseId, ledgerEntryId } from "../../core/ids.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import { partsOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { type Block, comparedName, comparedPicture, numbersIn } from "../page-model.ts";
import { comparisonOnPaper, comparisonPages } from "./two-dates.ts";

const outline: [number, number][] = [
  [280, 400],
  [330, 400],
  [305, 450],
];
const film = partsOf(sampleParts(), "film")[0];
if (film === undefined) throw new Error("the sample has no film");
const lesion = part("mark", "lesion-1", { shape: "outline", film: film.id, what: "Lesion at MB1", points: outline });
const later = (id: string, takenOn: string) => part("film", id, { ...film.body, takenOn });
const pair = (id: string, after: string) => part("comparison", id, { before: film.id, after, landmarks: [] });

const output = {
  ...{ comparable: true, statement: "The films can be compared.", areaRatio: 0.5197, residualMm: 0.049 },
  ...{ residualPx: 1.3, differenceSigma: 0.02, cautions: ["Look whether each is the same place."] },
  intervals: { areaRatio: { low: 0.495, high: 0.545, level: 0.95 } },
  carried: { afterOnBefore: outline },
  others: [{ name: "lesion at P", areaRatio: 0.9, afterOnBefore: outline }],
};
const entry = (of: string, told: object | undefined): LedgerEntry => ({
  ...{ id: ledgerEntryId(of.padEnd(64, "0")), caseId: caseId("case-sample"), subject: `compareFilms of ${of}` },
  ...{ topic: "compareFilms", topicVersion: 2, input: {}, at: "2025-01-01T00:00:00Z" },
  inputPaths: [{ input: "lesions.before", record: "lesion-1/points" }],
  ...(told === undefined ? { refused: ["not compared yet: press Compare"] } : { output: told }),
});

function source(entries: readonly LedgerEntry[]): CaseSource {
  const parts = [
    ...sampleParts(),
    ...[lesion, later("film-6", "2024-09-04"), later("film-12", "2025-03-04")],
    ...[pair("pair-12", "film-12"), pair("pair-6", "film-6")],
  ];
  return { ...sampleSource(parts), parts, ledger: entries };
}
const pictures = (blocks: readonly Block[]) => blocks.flatMap((block) => (block.kind === "film" ? [block] : []));
const text = (blocks: readonly Block[]): string[] =>
  blocks.flatMap((block) =>
    block.kind === "text" ? block.lines.map((line) => line.map((run) => run.text).join("")) : [],
  );

describe("two dates in a document", () => {
  const [page] = comparisonPages(source([entry("pair-6", output)]));

  it("show the film before, the one after laid on it, and what changed, each with the lesion then and now", () => {
    const shown = pictures(page?.blocks ?? []);
    expect(shown.map(({ compared }) => compared?.picture)).toEqual([undefined, "aligned", "difference"]);
    for (const { hash, columns, rows } of shown)
      expect({ hash, columns, rows }).toEqual({ hash: film.body.hash, columns: 600, rows: 800 });
    expect(shown[0]?.overlay.alternative).toBe("Outlines on the film: one lesion as outlined before.");
    expect(shown[1]?.overlay.alternative).toContain("one lesion as outlined before; 2 lesions as outlined after");
    // The difference is drawn as its file has it: 128 is no change.
    expect(shown[2]?.window).toEqual({ centre: 128, width: 256, invert: false });
    expect(shown[2]?.caption.map((run) => run.text).join("")).toBe(
      "After less before: brighter is more mineral in the beam, darker less. Middle grey: within 2 standard deviations of the noise, each 0.020 of the full range; white and black: from 8 on",
    );
  });

  it("say the change in one line whose numbers name their entry, and the cautions beside it", () => {
    expect(text(page?.blocks ?? [])).toEqual([
      expect.stringMatching(/^0\.52 \(0\.\d\d–0\.5\d\) of the area that the lesion at MB1 had before$/),
      "0.90 of its area before: lesion at P",
      "The films can be compared.",
      "Pieces of the films lie off by 0.05 mm",
      "Look whether each is the same place.",
    ]);
    const model = { as: "deck", title: "", mark: "", demo: false, pages: page === undefined ? [] : [page] } as const;
    const named = numbersIn(model).map(({ ledgerEntry, path }) => [ledgerEntry.slice(0, 6), path]);
    expect(named).toContainEqual(["pair-6", "areaRatio"]);
    expect(named).toContainEqual(["pair-6", "differenceSigma"]);
    expect(named).toContainEqual(["pair-6", "others[0].areaRatio"]);
    expect(page?.notes[0]).toContain("Ledger pair-6");
  });

  it("stand in the order of their days, and not before they were computed", () => {
    const both = source([entry("pair-12", output), entry("pair-6", output)]);
    expect(comparisonPages(both).map(({ on }) => on)).toEqual(["2024-09-04", "2025-03-04"]);
    expect(comparisonPages(source([entry("pair-6", undefined)]))).toEqual([]);
    expect(comparisonPages(sampleSource())).toEqual([]);
  });

  it("that can't be compared say so, and show no difference", () => {
    const { areaRatio: _ratio, differenceSigma: _sigma, ...rest } = output;
    const told = {
      ...rest,
      comparable: false,
      statement: "The films can't be compared. Pieces lie off.",
      intervals: {},
    };
    const [refused] = comparisonPages(source([entry("pair-6", told)]));
    expect(pictures(refused?.blocks ?? [])).toHaveLength(2);
    expect(refused?.blocks.find((block) => block.kind === "text")).toMatchObject({
      heading: "These films can't be compared",
    });
    expect(comparisonOnPaper(source([entry("pair-6", told)]))).toEqual([]);
  });

  it("on paper are the two whose lesion was measured last", () => {
    const { areaRatio: _ratio, ...bare } = output;
    const some = source([entry("pair-12", bare), entry("pair-6", output)]);
    expect(comparisonOnPaper(some).map(({ on }) => on)).toEqual(["2024-09-04"]);
    expect(comparisonOnPaper(source([entry("pair-12", bare)])).map(({ on }) => on)).toEqual(["2025-03-04"]);
    expect(comparisonOnPaper(source([]))).toEqual([]);
  });
});

it("a picture of a comparison is asked for by a name that no film has", () => {
  const picture = { ledgerEntry: "ab".repeat(32), picture: "aligned" } as const;
  expect(comparedPicture(comparedName(picture))).toEqual(picture);
  expect(comparedPicture("ab".repeat(32))).toBeUndefined();
});
