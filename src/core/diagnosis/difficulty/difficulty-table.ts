import table from "../../../../data/difficulty/facts.json" with { type: "json" };

/** What a fact makes harder, in the order in which a tooth is treated. */
export const difficultyGroups = ["reach", "shape", "seal", "keep"] as const;
/** See {@link difficultyGroups}. */
export type DifficultyGroup = (typeof difficultyGroups)[number];

/** How a fact is read: against a value, or as there or not. */
export const thresholdKinds = ["above", "below", "atLeast", "present"] as const;

/** Where a threshold comes from, and whether it was read, recalled, or is common practice. */
export const thresholdMarks = ["seen", "memory", "common practice"] as const;

type Mark = (typeof thresholdMarks)[number];

interface Threshold<MarkText extends string> {
  readonly value: number;
  readonly source: string;
  readonly mark: MarkText;
  readonly says: string;
}

interface Row<Group extends string, Kind extends string, MarkText extends string> {
  readonly id: string;
  readonly group: Group;
  readonly is: Kind;
  readonly value?: number | undefined;
  readonly unit?: string | undefined;
  readonly source: string;
  readonly mark: MarkText;
  readonly perCanal: boolean;
  /** With {value} and {canal} in their places. */
  readonly says: string;
  /** The sentence where the fact was looked for and is not there. */
  readonly saysNone?: string | undefined;
  readonly because: string;
  /** What is asked where nobody recorded it; absent where another row asks already. */
  readonly ask?: string | undefined;
  readonly others?: readonly Threshold<MarkText>[] | undefined;
}

/** One row of the table: a fact, its threshold and where that comes from. */
export type DifficultyRow = Row<DifficultyGroup, (typeof thresholdKinds)[number], Mark>;

const rows: readonly Row<string, string, string>[] = table.rows;

const oneOf = <Text extends string>(texts: readonly Text[], found: string): Text => {
  const known = texts.find((text) => text === found);
  if (known === undefined) throw new Error(`data/difficulty/facts.json holds ${found}`);
  return known;
};

/**
 * The facts in the order in which they are shown: by group, and in a group from the patient to the canal.
 * @source data/difficulty/facts.json names the source of each threshold, or says common practice
 */
export const difficultyTable: readonly DifficultyRow[] = rows.map((row) => ({
  ...row,
  group: oneOf(difficultyGroups, row.group),
  is: oneOf(thresholdKinds, row.is),
  mark: oneOf(thresholdMarks, row.mark),
  others: row.others?.map((other) => ({ ...other, mark: oneOf(thresholdMarks, other.mark) })),
}));
