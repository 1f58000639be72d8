import { sourceInWords } from "../../../../words/value-words.ts";

/** Where a statement is from: `Khatib 2020, Orhan 2016`; recalled ones say so. */
export function sourcesInWords(source: string, mark: string): string {
  const names = source.split(", ").map(nameOf).join(", ");
  if (mark === "memory") return `${names}, from memory`;
  return mark === "own" ? `${names}, given by the person` : names;
}

/** What has no people and no year is called by what it is. */
const withoutYear: Readonly<Record<string, string>> = { "epinephrine-limits": "teaching documents" };

/** Of a source by its id, without a year in it, the words. */
const nameOf = (id: string): string =>
  withoutYear[id] ?? (/^[a-z]+(-[a-z]+)+$/.test(id) ? id.replaceAll("-", " ") : sourceInWords(id));
