import { expect, it } from "vitest";
import { part, sampleParts } from "../../test/sample-case.ts";
import { caseId, ledgerEntryId } from "../core/ids.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { entryNow } from "./entry-now.ts";

const entry = (subject: string): LedgerEntry => ({
  ...{ id: ledgerEntryId(subject), caseId: caseId("case-sample"), subject, topic: subject.split(" ")[0] ?? "" },
  ...{ topicVersion: 1, input: {}, inputPaths: [], output: {}, at: "2026-01-01T00:00:00Z" },
});
const plan = (id: string, madeOn: string) =>
  part("plan", id, { madeOn, options: [], chosen: "treat", because: "", risksNamed: [] });
const parts = [...sampleParts(), plan("late", "2024-05-01"), plan("early", "2024-03-04")];
const [ofEarly, ofLate, ofCase] = [entry("plan of early"), entry("plan of late"), entry("plan of about")];

it("is the case's own entry where there is one, else that of the plan that was made last", () => {
  expect(entryNow("plan", [ofEarly, ofLate, ofCase], parts)).toBe(ofCase);
  expect(entryNow("plan", [ofEarly, ofLate], parts)).toBe(ofLate);
  expect(entryNow("plan", [ofCase], sampleParts())).toBe(ofCase);
});

it("is none of an earlier plan, of another topic or of no plan", () => {
  expect(entryNow("plan", [ofEarly], parts)).toBeUndefined();
  expect(entryNow("difficulty", [ofLate, ofCase], parts)).toBeUndefined();
  expect(entryNow("plan", [], sampleParts())).toBeUndefined();
});
