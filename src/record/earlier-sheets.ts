import { type Part, type PartOf, partsOf } from "./parts.ts";
import { type SheetTest, testInWords } from "./words/test-words.ts";

type Findings = PartOf<"findings">;

/**
 * The sheets of tests that were taken before another, the latest first.
 * Takes the parts of a case and the sheet; of two sheets of one day the one that stands first in the record is the earlier.
 */
export function earlierSheets(parts: readonly Part[], sheet: Findings): readonly Findings[] {
  const sheets = partsOf(parts, "findings");
  const at = sheets.findIndex(({ id }) => id === sheet.id);
  const isEarlier = (other: Findings, index: number): boolean =>
    other.body.takenOn === sheet.body.takenOn ? index < at : other.body.takenOn < sheet.body.takenOn;
  return latestFirst(sheets.filter((other, index) => other.id !== sheet.id && isEarlier(other, index)));
}

/**
 * The sheets that a judgement of a day can rest on: those of that day and before, the latest first.
 * Takes the parts of a case and the day.
 */
export const sheetsUpTo = (parts: readonly Part[], day: string): readonly Findings[] =>
  latestFirst(partsOf(parts, "findings").filter(({ body }) => body.takenOn <= day));

/** Of two sheets of one day the one that stands later in the record is the later. */
const latestFirst = (sheets: readonly Findings[]): Findings[] =>
  [...sheets].reverse().sort((a, b) => b.body.takenOn.localeCompare(a.body.takenOn));

/** What a tooth said to a test on an earlier day, and whether it says something else now. */
export interface EarlierValue {
  /** Empty where it was not done. */
  readonly says: string;
  /** Done on both days, with another answer. */
  readonly changed: boolean;
}

/** See {@link EarlierValue}. Takes both sheets' bodies, the tooth and the test. */
export function earlierValue(
  then: Findings["body"],
  now: Findings["body"],
  tooth: string,
  test: SheetTest,
): EarlierValue {
  const [before, after] = [then, now].map(({ teeth }) => {
    const tested = teeth.find((one) => one.tooth === tooth);
    return tested === undefined ? "" : testInWords(tested, test);
  });
  const says = before ?? "";
  return { says, changed: says !== "" && after !== "" && says !== after };
}
