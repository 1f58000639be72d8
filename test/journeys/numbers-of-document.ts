import { join } from "node:path";
import type { DocumentView } from "../../src/server/api.ts";
import { filmPath } from "../../src/store/kept-files.ts";
import type { BenchInBrowser } from "./bench-in-browser.ts";
import { canalog } from "./canalog.ts";

/** A number that a document prints, with what the command line computes for it. */
export interface CheckedNumber {
  readonly subject: string;
  readonly path: string;
  readonly printed: string;
  readonly computed: string;
}

/** Every number of a document beside what `canalog compute` answers on its entry's input, in the printed rounding. */
export async function numbersOfDocument(bench: BenchInBrowser, made: DocumentView): Promise<CheckedNumber[]> {
  const outputs = new Map<string, { subject: string; output: unknown }>();
  for (const id of new Set(made.numbers.map(({ ledgerEntry }) => ledgerEntry))) {
    const { topic, input, subject } = await bench.ledgerEntry(id);
    const ran = await canalog(bench.server.home, ["compute", topic], JSON.stringify(ofFiles(input, bench.server.home)));
    if (ran.code !== 0) throw new Error(`compute ${topic} ended with ${ran.code}: ${ran.errors}`);
    outputs.set(id, { subject, output: JSON.parse(ran.out) });
  }
  return made.numbers.map(({ ledgerEntry, path, text }) => {
    const { subject = "", output } = outputs.get(ledgerEntry) ?? {};
    return { subject, path, printed: text, computed: asPrinted(valueAt(output, path), text) };
  });
}

/** An input as the shell takes it: kept films by their files, where the ledger names them by their hash. */
function ofFiles(input: unknown, home: string): unknown {
  if (typeof input !== "object" || input === null) return input;
  const films = Object.entries(input).map(([name, value]): [string, unknown] => {
    const hash: unknown = typeof value === "object" && value !== null ? Reflect.get(value, "hash") : undefined;
    return [name, typeof hash === "string" ? { film: join(home, filmPath(hash)) } : value];
  });
  return Object.fromEntries(films);
}

/** A value in the number of decimals that a printed text has; a true minus sign, none before a zero. */
function asPrinted(value: unknown, like: string): string {
  if (typeof value !== "number") return String(value);
  // A share is never rounded to certainty.
  if (like === "<0.01" || like === ">0.99")
    return value > 0 && value < 0.005 ? "<0.01" : value >= 0.995 && value < 1 ? ">0.99" : String(value);
  const fixed = value.toFixed(like.split(".")[1]?.length ?? 0);
  return Number(fixed) === 0 ? fixed.replace("-", "") : fixed.replace("-", "−");
}

function valueAt(value: unknown, path: string): unknown {
  const steps = path.split(/[.[\]]+/).filter((step) => step !== "");
  return steps.reduce<unknown>(
    (held, step) => (typeof held === "object" && held !== null ? Reflect.get(held, step) : undefined),
    value,
  );
}
