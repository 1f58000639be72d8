import type { BodyOf } from "../parts.ts";
import { replyWords, touchWords } from "./finding-words.ts";

type Tested = BodyOf<"findings">["teeth"][number];

/** The tests of a sheet in the order in which they are done at the chair. */
export const sheetTests = [
  "cold",
  "heat",
  "electric",
  "percussion",
  "palpation",
  "bite",
  "mobility",
  "probingMm",
] as const;
/** See {@link sheetTests}. */
export type SheetTest = (typeof sheetTests)[number];

/** What each test is called. */
export const testNames: Readonly<Record<SheetTest, string>> = {
  cold: "Cold",
  heat: "Heat",
  electric: "Electric",
  percussion: "Percussion",
  palpation: "Palpation",
  bite: "Bite",
  mobility: "Mobility",
  probingMm: "Probing",
};

/** The six places of a probing in the order in which they are written: buccal from mesial to distal, then the inner side. */
export const probingSites = [
  ...(["mesiobuccal", "buccal", "distobuccal"] as const),
  ...(["mesiolingual", "lingual", "distolingual"] as const),
] as const;

/**
 * One test of one tooth in words, as `heightened, 12 s` or `3 2 3 / 3 2 3`.
 * Takes the tooth's column of a sheet and the test. Gives an empty text where the test was not done.
 */
export function testInWords(tested: Tested, test: SheetTest): string {
  switch (test) {
    case "cold":
    case "heat":
      return thermalInWords(tested[test]);
    case "electric":
    case "mobility":
      return tested[test] === "notDone" ? "" : String(tested[test]);
    case "probingMm":
      return probingInWords(tested.probingMm);
    default:
      return tested[test] === "notDone" ? "" : touchWords[tested[test]];
  }
}

/** How many tests of a sheet were not done. Takes its columns. */
export const testsNotDone = (teeth: readonly Tested[]): number =>
  teeth.flatMap((tested) => sheetTests.filter((test) => testInWords(tested, test) === "")).length;

function thermalInWords({ reply, lingersSeconds }: Tested["cold"]): string {
  const seconds = lingersSeconds === undefined ? [] : [`${lingersSeconds} s`];
  return [...(reply === "notDone" ? [] : [replyWords[reply]]), ...seconds].join(", ");
}

/**
 * Six depths as they are written, a dash where one was not taken; empty where none was.
 * Takes depths in mm.
 */
export function probingInWords(depths: Tested["probingMm"]): string {
  const taken = probingSites.map((site) => depths[site]);
  if (taken.every((depth) => depth === undefined)) return "";
  const written = taken.map((depth) => (depth === undefined ? "–" : String(depth)));
  return `${written.slice(0, 3).join(" ")} / ${written.slice(3).join(" ")}`;
}
