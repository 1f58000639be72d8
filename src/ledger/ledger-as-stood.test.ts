import { describe, expect, it } from "vitest";
import { sampleParts } from "../../test/sample-case.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { firstSettings } from "../record/settings.ts";
import { deriveLedger, outcomesOf, type SumsToDo } from "./derive-ledger.ts";
import { ledgerAsStood } from "./ledger-as-stood.ts";

const about = { caseId: "case-sample", settings: firstSettings, at: "2026-01-01T00:00:00Z" };
const [first = undefined] = sampleParts();
const parts = first === undefined ? [] : [first];
const [entry] = deriveLedger({ ...about, parts, known: () => undefined });
if (entry === undefined) throw new Error("the sample's tooth gives an entry");

/** The tooth's sum as another version of its topic kept it. */
const version = (number: number, at: string): LedgerEntry => ({
  ...entry,
  id: `version-${number}` as LedgerEntry["id"],
  topicVersion: number,
  at,
});
const early = version(-2, "2024-01-01T00:00:00Z");
const late = version(-1, "2025-01-01T00:00:00Z");
const here = async (sums: SumsToDo) => outcomesOf(sums);
const stood = async (kept: readonly LedgerEntry[], until?: string) => {
  const past = { ...about, parts, kept, ...(until === undefined ? {} : { until }) };
  const entries = await ledgerAsStood(past, here);
  return entries.filter(({ subject }) => subject === entry.subject).map(({ id }) => id);
};

describe("a ledger as it stood", () => {
  it("is worked out from the parts of then where nothing was kept", async () => {
    expect(await stood([])).toEqual([entry.id]);
    expect(await ledgerAsStood({ ...about, parts: sampleParts(), kept: [] }, here)).toEqual(
      deriveLedger({ ...about, parts: sampleParts(), known: () => undefined }),
    );
  });

  it("gives the version of a sum that held before the next change", async () => {
    expect(await stood([late, early], "2024-06-01T00:00:00Z")).toEqual([early.id]);
    expect(await stood([late, early], "2025-01-01T00:00:00Z")).toEqual([late.id]);
    expect(await stood([late, early])).toEqual([late.id]);
  });

  it("gives the first that was kept where all were kept later, as of a case that came as a file", async () => {
    expect(await stood([late, early], "2023-01-01T00:00:00Z")).toEqual([early.id]);
  });

  it("takes no sum of another input or subject", async () => {
    expect(await stood([{ ...late, input: { notation: "twoDigit", value: "11" } }])).toEqual([entry.id]);
    expect(await stood([{ ...late, subject: "tooth of another" }])).toEqual([entry.id]);
  });
});
