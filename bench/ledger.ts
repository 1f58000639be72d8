import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { bindings } from "../src/ledger/bindings.ts";
import { deriveLedger, type LedgerSource } from "../src/ledger/derive-ledger.ts";
import { caseFileSchema } from "../src/record/case-file.ts";
import type { LedgerEntry } from "../src/record/ledger-entry.ts";
import type { Part } from "../src/record/parts.ts";
import { firstSettings } from "../src/record/settings.ts";
import { chainOf } from "../src/store/load-case-file.ts";
import { machine } from "./timing.ts";

/** Prints how long the sums of the demo's cases take, each topic's by itself: of a whole case, and after one anchor moved. */
export async function bench(): Promise<void> {
  const root = fileURLToPath(new URL("..", import.meta.url));
  for (const name of ["a", "b", "c"]) {
    const read: unknown = JSON.parse(readFileSync(join(root, `data/demo/cases/${name}.json`), "utf8"));
    const file = caseFileSchema.parse(Array.isArray(read) ? read[0] : read);
    const { parts } = chainOf(file).after;
    derived(file.caseId, parts, new Map(), () => undefined);
    const known = derived(file.caseId, parts, new Map(), (says) => console.log(`${name}, all of it: ${says}`));
    derived(file.caseId, parts, known, (says) => console.log(`${name}, nothing new: ${says}`));
    for (const part of parts)
      if (part.kind === "mark" && part.body.shape === "trace")
        derived(file.caseId, moved(parts, part.id), known, (says) => console.log(`${name}, ${part.id}: ${says}`));
  }
  console.log(`\nMilliseconds of processor time. On ${machine()}.`);
}

const moved = (parts: readonly Part[], id: string): Part[] =>
  parts.map((part) => {
    if (part.id !== id || part.kind !== "mark" || part.body.shape !== "trace") return part;
    const points = part.body.points.map(([u, v], at): [number, number] => (at === 1 ? [u + 0.7, v + 0.4] : [u, v]));
    return { ...part, body: { ...part.body, points } };
  });

/** Derives, tells how long that took by topic, and gives what is known then. */
function derived(
  caseId: string,
  parts: readonly Part[],
  before: ReadonlyMap<string, LedgerEntry>,
  tell: (says: string) => void,
): Map<string, LedgerEntry> {
  const spent = new Map<string, { sums: number; ms: number }>();
  const timed = bindings.map((binding) => ({
    ...binding,
    topic: {
      ...binding.topic,
      compute: (input: unknown) => {
        const start = processorMs();
        try {
          return binding.topic.compute(input);
        } finally {
          const { sums, ms } = spent.get(binding.topic.name) ?? { sums: 0, ms: 0 };
          spent.set(binding.topic.name, { sums: sums + 1, ms: ms + processorMs() - start });
        }
      },
    },
  }));
  const at = new Date().toISOString();
  const source: LedgerSource = { caseId, parts, settings: firstSettings, at, known: (id) => before.get(id) };
  const start = processorMs();
  const entries = deriveLedger(source, timed);
  const by = [...spent].map(([name, { sums, ms }]) => `${name} ${sums} x ${(ms / sums).toFixed(0)}`);
  tell([`${(processorMs() - start).toFixed(0)} ms`, ...by].join(", "));
  return new Map([...before, ...entries.map((entry) => [entry.id as string, entry] as const)]);
}

function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
