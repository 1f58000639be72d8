import type { DataSet } from "dicom-parser";

/** The number at a place of an attribute written as text; absent where there is none, or where it is not finite. */
export function numberAt(dataSet: DataSet, tag: string, index = 0): number | undefined {
  // The parser's own reading of numbers breaks on fewer values than asked for, which real files have.
  const text = dataSet.string(tag)?.split("\\")[index]?.trim() ?? "";
  const value = Number(text);
  return text !== "" && Number.isFinite(value) ? value : undefined;
}

/** The text of an attribute, without the blanks that fill it up. */
export const textAt = (dataSet: DataSet, tag: string): string | undefined => dataSet.string(tag)?.trim();

/** Whether an attribute says anything at all, be it possible or not. */
export const isSaid = (dataSet: DataSet, tag: string): boolean => (textAt(dataSet, tag) ?? "") !== "";
