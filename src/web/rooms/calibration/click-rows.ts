import { countOf, type Ends, numberInWords, withUnit } from "../../parts/figures-in-words.ts";
import type { ClickAnswer } from "./click-answer.ts";

/** A line of a table: what it is, its number, and the quieter words beside it. */
export interface ClickRow {
  readonly name: string;
  readonly value: string;
  readonly interval: string;
  readonly beside: string;
}

/** What each kind of place is called. */
export const kindWords: Readonly<Record<string, string>> = {
  apex: "Apex",
  cusp: "Tip of a cusp",
  crest: "Crest of the bone",
  entrance: "Entrance of a canal",
};

const toolWords: Readonly<Record<string, string>> = { pointer: "Pointer both times", keyboard: "Keyboard both times" };

/** All lengths of this room have two decimals, so that they can be compared down a column. */
const decimals = 2;

/** A length in pixels as this room writes it. */
export const pxInWords = (px: number): string => withUnit(numberInWords(px, decimals), "px");

/** The interval of a length, as it stands in quieter ink beside it. */
export const endsInWords = ({ low, high }: Ends): string =>
  [low, high].map((end) => numberInWords(end, decimals)).join(low < 0 || high < 0 ? " to " : "\u2013");

const row = (name: string, px: number, ends: Ends | undefined, beside = ""): ClickRow => ({
  ...{ name, beside, value: pxInWords(px) },
  interval: ends === undefined ? "" : endsInWords(ends),
});

/** The click's error by kind of place. */
export const rowsByKind = ({ byName }: ClickAnswer): readonly ClickRow[] =>
  byName.map(({ name, n, sigmaPx, interval }) => row(kindWords[name] ?? name, sigmaPx, interval, countOf(n, "place")));

/** The click's error by direction. */
export const rowsByDirection = ({ sigmaColumnPx, sigmaRowPx, intervals }: ClickAnswer): readonly ClickRow[] => [
  row("Across", sigmaColumnPx, intervals.sigmaColumnPx),
  row("Down", sigmaRowPx, intervals.sigmaRowPx),
];

/** The click's error by tool. */
export const rowsByTool = ({ byTool }: ClickAnswer): readonly ClickRow[] =>
  byTool.map(({ tool, n, sigmaPx, interval }) => row(toolWords[tool] ?? tool, sigmaPx, interval, countOf(n, "place")));

/** What the second marks did against the first, and all marks against the true places. */
export function rowsAside(answer: ClickAnswer): readonly ClickRow[] {
  const { driftColumnPx, driftRowPx, biasColumnPx, biasRowPx, missPx, truths, intervals } = answer;
  return [
    row("Second marks farther right", driftColumnPx, intervals.driftColumnPx),
    row("Second marks farther down", driftRowPx, intervals.driftRowPx),
    ...(biasColumnPx === undefined ? [] : [row("Right of the true place", biasColumnPx, intervals.biasColumnPx)]),
    ...(biasRowPx === undefined ? [] : [row("Below the true place", biasRowPx, intervals.biasRowPx)]),
    ...(missPx === undefined ? [] : [row("Off the true place", missPx, undefined, countOf(truths, "place"))]),
  ];
}

/** Each pair that is out of line, in words. */
export const outliersInWords = ({ outliers }: ClickAnswer): readonly string[] =>
  outliers.map(
    ({ film, name, apartPx, expectedPx }) =>
      `${(kindWords[name] ?? name).toLowerCase()} on ${film.replace("-", " ")}: ${pxInWords(apartPx)} apart, ${pxInWords(expectedPx)} at most expected`,
  );
