/** A text of a row by its field's name, to call the row by; the fallback where there is none. */
export function rowName(row: unknown, field: string, fallback: string): string {
  const value: unknown = typeof row === "object" && row !== null ? Reflect.get(row, field) : undefined;
  return typeof value === "string" && value !== "" ? value : fallback;
}
