import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { Line, Run } from "./page-model.ts";

/** Reads the ledger's outputs for print: a number as text, with the place it came from. */
export interface LedgerReader {
  readonly entry: (subject: string) => LedgerEntry | undefined;
  /** A value of an entry's output as a run, or undefined where it is not there. */
  readonly number: (subject: string, path: string, digits: number) => Run | undefined;
  /** A text value of an entry's output. */
  readonly text: (subject: string, path: string) => Run | undefined;
  /** A value with its interval and unit, as `19.2 mm (18.6 to 19.8)`; a dash where it is not there. */
  readonly withInterval: (subject: string, name: string, form: { digits: number; unit: string }) => Line;
}

const dash: Run = { text: "–", quiet: true };

/** A reader over the entries that hold for a case. */
export function ledgerReader(ledger: readonly LedgerEntry[]): LedgerReader {
  const bySubject = new Map(ledger.map((entry) => [entry.subject, entry]));
  const entry = (subject: string) => bySubject.get(subject);
  const valueAt = (subject: string, path: string): { value: unknown; id: string } | undefined => {
    const found = entry(subject);
    return found?.output === undefined ? undefined : { value: at(found.output, path), id: found.id };
  };
  const number: LedgerReader["number"] = (subject, path, digits) => {
    const found = valueAt(subject, path);
    if (typeof found?.value !== "number") return undefined;
    return { text: numberText(found.value, digits), number: { ledgerEntry: found.id, path } };
  };
  const text: LedgerReader["text"] = (subject, path) => {
    const found = valueAt(subject, path);
    return typeof found?.value === "string"
      ? { text: found.value, number: { ledgerEntry: found.id, path } }
      : undefined;
  };
  const withInterval: LedgerReader["withInterval"] = (subject, name, { digits, unit }) => {
    const value = number(subject, name, digits);
    if (value === undefined) return [dash];
    const places = name === "mmPerPx" ? ["interval"] : [`intervals.${name}`, "interval"];
    const [place] = places.filter((candidate) => typeof valueAt(subject, `${candidate}.low`)?.value === "number");
    const low = place === undefined ? undefined : number(subject, `${place}.low`, digits);
    const high = place === undefined ? undefined : number(subject, `${place}.high`, digits);
    const unitRun: Run[] = unit === "" ? [] : [{ text: unit === "°" ? unit : ` ${unit}` }];
    if (low === undefined || high === undefined) return [value, ...unitRun];
    const quiet = (run: Run): Run => ({ ...run, quiet: true });
    return [
      value,
      ...unitRun,
      quiet({ text: " (" }),
      quiet(low),
      quiet({ text: low.text.startsWith("−") ? " to " : "–" }),
      quiet(high),
      quiet({ text: ")" }),
    ];
  };
  return { entry, number, text, withInterval };
}

/** A number in print: fixed digits, a true minus sign, and no minus before a zero. */
export function numberText(value: number, digits: number): string {
  const fixed = value.toFixed(digits);
  const bare = Number(fixed) === 0 ? fixed.replace("-", "") : fixed;
  return bare.replace("-", "−");
}

function at(value: unknown, path: string): unknown {
  return path
    .split(/[.[\]]+/)
    .filter((step) => step !== "")
    .reduce<unknown>(
      (held, step) => (typeof held === "object" && held !== null ? Reflect.get(held, step) : undefined),
      value,
    );
}
