import { part, sampleParts } from "../../../test/sample-case.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import { type BodyOf, type Part, partsOf } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { anaestheticBinding } from "../bindings/anaesthetic.ts";
import { irrigationBinding } from "../bindings/irrigation.ts";
import { solventBinding } from "../bindings/solvent.ts";
import { ultrasonicHeatBinding } from "../bindings/ultrasonic-heat.ts";
import { deriveLedger } from "../derive-ledger.ts";

type Visit = BodyOf<"visit">;
type History = BodyOf<"medicalHistory">;

/** What an upper first molar's visit of 4 March 2024 used; the person was born in 1967 and weighs 70 kg. */
export function visitParts(used: Partial<Visit>, ...more: readonly Part[]): Part[] {
  const [about, , , , , visit] = sampleParts();
  const [body] = visit === undefined ? [] : partsOf([visit], "visit");
  if (about === undefined || body === undefined) throw new Error("the sample has a case and a visit");
  const bare = { ...body.body, irrigation: [], vitalSigns: { bodyMassKg: 70 } };
  return [about, part("visit", "visit-1", { ...bare, ...used }), ...more];
}

/** A history as it was taken on a day. */
export const history = (id: string, takenOn: string, more: Partial<History>): Part =>
  part("medicalHistory", id, { takenOn, nothingToNote: false, flags: [], medicines: [], note: "", ...more });

/** The entries of a visit's materials alone. */
export const visitEntries = (parts: readonly Part[]): LedgerEntry[] =>
  deriveLedger(
    { caseId: "case-sample", parts, settings: firstSettings, at: "2024-10-01T10:00:00Z", known: () => undefined },
    [anaestheticBinding, solventBinding, irrigationBinding, ultrasonicHeatBinding],
  );

/** The one entry of a subject. */
export function entryOf(parts: readonly Part[], subject: string): LedgerEntry {
  const entries = visitEntries(parts);
  const found = entries.find((entry) => entry.subject === subject);
  if (found === undefined) throw new Error(`${subject} is none of ${entries.map((one) => one.subject).join(", ")}`);
  return found;
}

/** A cartridge of lidocaine 2 % with epinephrine 1:100000. */
export const lidocaine = {
  agent: "lidocaine",
  percent: 2,
  vasoconstrictor: { name: "epinephrine", ratio: 100_000 },
  cartridgeMl: 1.8,
} as const;

/** A surgery of 30 m3 with ten changes of air, and air of 0.06 m/s half a metre round the mouth. */
export const surgery = {
  volumeM3: 30,
  airChangesPerHour: 10,
  nearField: { radiusM: 0.5, airSpeedMPerMin: 3.6 },
  from: "measured",
} as const;
