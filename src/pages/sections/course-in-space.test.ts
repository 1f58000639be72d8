import { describe, expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../../test/sample-case.ts";
import type { BodyOf, Part } from "../../record/parts.ts";
import { type Line, numbersIn } from "../page-model.ts";
import { spaceOnPaper, spacePages } from "./course-in-space.ts";

const given = sampleParts().find((one) => one.kind === "film");
if (given?.kind !== "film") throw new Error("the sample has a film");

const film = (id: string, angleDeg: number): Part =>
  part("film", id, {
    ...(given.body as BodyOf<"film">),
    horizontalAngleDeg: angleDeg,
    uRunsTo: "distal",
    receptor: "turnsWithBeam",
  });

/** A canal that turns to buccal alone by `turnDeg` on 5 mm after 8 mm, 0.05 mm a pixel: a straight film shows no bend. */
function trace(canal: string, on: string, angleDeg: number, turnDeg: number): Part {
  const a = (angleDeg * Math.PI) / 180;
  const most = (turnDeg * Math.PI) / 180;
  const points = Array.from({ length: 30 }, (_, index): [number, number] => {
    const turn = Math.min(most, Math.max(0, 0.5 * index - 8) / 5);
    const rest = Math.max(0, 0.5 * index - 8 - 5 * most);
    const y = 5 * (1 - Math.cos(turn)) + rest * Math.sin(turn);
    const z = Math.min(0.5 * index, 8) + 5 * Math.sin(turn) + rest * Math.cos(turn);
    return [300 + (y * Math.sin(a)) / 0.05, 100 + z / 0.05];
  });
  const anchors = [points[0] ?? [0, 0], points.at(-1) ?? [0, 0]] satisfies [number, number][];
  return part("mark", `${on}-${canal.toLowerCase()}`, {
    shape: "trace",
    film: on,
    canal,
    polarity: "dark",
    sigmaPx: 0.3,
    anchors,
    points,
  });
}

const bent = (canal: string, turnDeg: number): Part[] => [
  trace(canal, "film-a", 0, turnDeg),
  trace(canal, "film-b", 25, turnDeg),
];
const parts: readonly Part[] = [
  ...sampleParts().filter(({ kind }) => kind === "case"),
  ...[film("film-a", 0), film("film-b", 25), ...bent("DL", 40), ...bent("DB", 20)],
];
const source = sampleSource([...parts]);
const lineWords = (line: Line): string => line.map(({ text }) => text).join("");
const wordsOf = (pages: ReturnType<typeof spacePages>): string =>
  pages
    .flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === "text" ? block.lines.map(lineWords) : [])))
    .join("\n");

describe("the page of a canal in space", () => {
  const pages = spacePages(source);

  it("is of the canal of which the straight film hides most", () => {
    expect(pages.map(({ title, subtitle }) => [title, subtitle])).toEqual([
      ["Canal DL in space", "from films straight and 25° from mesial"],
    ]);
  });

  it("says what was hidden and where the bend turns, and draws two poses and the graph", () => {
    const words = wordsOf(pages);
    // 40 degrees to buccal alone: 0 on a straight film, atan(tan 40 sin 25) = 19.5 at 25 degrees.
    expect(words).toMatch(/^(39|40|41)° \(\d+–\d+\) hidden by the straight film$/m);
    expect(words).toContain("The bend turns to buccal");
    expect(words).toMatch(/seen on the films: 0° \(straight\), (19|20)° \(25° from mesial\)/);
    expect(pages[0]?.blocks.flatMap((block) => (block.kind === "figure" ? [block.caption] : []))).toEqual([
      "Aslant, the films behind it",
      "From mesial, across what a straight film shows",
      "True and apparent bend along the canal",
    ]);
  });

  it("names for each number the ledger entry and the place in its output", () => {
    const numbers = numbersIn({ pages });
    const entry = source.ledger.find(({ subject }) => subject.startsWith("twoView of DL"));
    expect(numbers.length).toBeGreaterThan(8);
    for (const { ledgerEntry } of numbers) expect(ledgerEntry).toBe(entry?.id);
    expect(numbers.map(({ path }) => path)).toEqual(
      expect.arrayContaining(["hiddenDeg", "intervals.hiddenDeg.low", "apparent[1]"]),
    );
  });

  it("is there for every canal whose films a person chose", () => {
    const pairing = part("pairing", "pairing-1", { canal: "DB", films: ["film-a", "film-b"] });
    expect(spacePages(sampleSource([...parts, pairing])).map(({ title }) => title)).toEqual(["Canal DB in space"]);
    expect(spaceOnPaper(sampleSource([...parts, pairing])).map(({ title }) => title)).toEqual(["Canal DL in space"]);
  });

  it("calls the inner side of an upper tooth palatal", () => {
    // The sample's tooth is an upper first molar.
    const under =
      pages[0]?.blocks.flatMap((block) => (block.kind === "figure" ? [JSON.stringify(block.figure.tree)] : [])) ?? [];
    expect(under[0]).toContain('"palatal"');
    expect(under[0]).not.toContain('"lingual"');
  });

  it("is not there where films give no course", () => {
    expect(spacePages(sampleSource())).toEqual([]);
  });
});
