import type { DocumentView } from "../../../server/api.ts";
import { withUnit } from "../../parts/figures-in-words.ts";
import { valueName, valueUnit } from "../case/ledger/ledger-lines.ts";

const endOfInterval = /, (low|high) end$/;

/** The numbers that a document took from one entry: `Largest bend 35 (29 to 46)`; each named once. */
export function numbersInWords(numbers: DocumentView["numbers"], topic: string | undefined): readonly string[] {
  const named = new Map(
    numbers.map(({ path, text }) => [valueName(topic, path), withUnit(text, valueUnit(topic, path))]),
  );
  const names = new Set([...named.keys()].map((name) => name.replace(endOfInterval, "")));
  return [...names].map((name) => {
    const [value, low, high] = [named.get(name), named.get(`${name}, low end`), named.get(`${name}, high end`)];
    const interval = low === undefined || high === undefined ? "" : ` (${low} to ${high})`;
    const colon = /\d$/.test(name) ? ":" : "";
    return `${name}${colon} ${value ?? ""}${interval}`.replace(/ {2,}/g, " ").trim();
  });
}
