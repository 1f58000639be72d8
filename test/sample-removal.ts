import { ledgerEntryId } from "../src/core/ids.ts";
import { type RemovalOutput, removalOutput } from "../src/core/instrument/removal-output.ts";
import type { CaseSource } from "../src/pages/case-source.ts";
import type { LedgerEntry } from "../src/record/ledger-entry.ts";
import type { BodyOf, Part } from "../src/record/parts.ts";
import { part } from "./sample-case.ts";

const level = 0.95;
const estimate = (mean: number, low: number, high: number) => ({ mean, interval: { low, high, level } });
const from = { source: "known-2001", share: 0.8, inSum: true, mark: "memory" } as const;
const healedFrom = { ...from, says: "healed", column: "healed", events: 80, n: 100 } as const;
const keptFrom = { ...from, says: "still there", column: "kept", share: 0.95, events: 95, n: 100 } as const;
const besideFrom = { ...healedFrom, source: "other-2002", events: 7, n: 9, inSum: false } as const;

/** What the ledger might say of a piece beyond the bend: invented figures with the form of the real ones. */
export const sampleRemovalTold = (over: Partial<RemovalOutput> = {}): RemovalOutput =>
  removalOutput.parse({
    sightLine: {
      ...{ maxOffsetMm: 1.24, offsetAtMm: 6.1, dentineToCutMm: 0.9, wallLeftMm: 0.25, atMm: 6, side: "furcation" },
      sides: [
        { side: "furcation", dentineToCutMm: 0.9, wallMm: 1.15, wallLeftMm: 0.25, atMm: 6, grade: "critical" },
        { side: "distal", dentineToCutMm: 0.1, atMm: 2 },
      ],
      path: { verdict: "refused", says: "0.25 mm is left towards the furcation, 0.25 mm below your limit of 0.50 mm" },
      profile: [
        { atMm: 0, offsetMm: 0 },
        { atMm: 6.1, offsetMm: 1.24 },
      ],
    },
    platform: {
      ...{ widthMm: 0.9, wallLeftMm: 0.7, side: "furcation", grade: "thin" },
      sides: [{ side: "furcation", wallMm: 0.95, wallLeftMm: 0.7, grade: "thin" }],
      limits: [
        { source: "known-2001", limitMm: 0.3, mark: "memory", stands: "above" },
        { source: "own", limitMm: 0.5, mark: "own", stands: "above" },
      ],
      ring: { outerMm: 2.4, before: 1.6, after: 1.5, lostShare: 0.06 },
    },
    place: { third: "middle", bend: "beyond", readFromCourse: ["bend"] },
    removalChance: [
      {
        ...{ series: "known-2001", by: "bend", group: "beyond the bend", success: "removed", events: 12, n: 40 },
        ...{ share: 0.3, interval: { low: 0.18, high: 0.45, level }, implied: false, matches: "yes", inSum: true },
        mark: "memory",
      },
      {
        ...{ series: "other-2002", by: "time", group: "after 45 minutes", success: "notStated", implied: false },
        ...{ matches: "notKnown", inSum: false, note: "only a direction is printed", mark: "memory" },
      },
    ],
    visibility: { differencePoints: 0.25, chiSquare: 18, p: 2.1e-5, printedP: 0.001 },
    perforation: {
      ...{ chance: estimate(0.05, 0.04, 0.07), healed: estimate(0.7, 0.5, 0.85) },
      from: [{ ...healedFrom, source: "hole-2003", says: "perforated", events: 55, n: 1133 }],
    },
    ways: [
      {
        ...{ way: "remove", steps: "taken out, else passed", healed: estimate(0.8, 0.68, 0.88) },
        ...{ kept: estimate(0.9, 0.8, 0.96), from: [healedFrom, keptFrom, besideFrom] },
      },
      {
        ...{ way: "bypass", steps: "passed, else left", healed: estimate(0.79, 0.66, 0.88) },
        ...{ kept: estimate(0.91, 0.82, 0.96), from: [healedFrom] },
      },
      {
        ...{ way: "leave", steps: "filled to it", healed: estimate(0.75, 0.6, 0.86) },
        ...{ kept: estimate(0.92, 0.83, 0.97), from: [healedFrom] },
      },
      {
        ...{ way: "surgery", steps: "the tip cut off", healed: estimate(0.82, 0.7, 0.9) },
        ...{ kept: estimate(0.9, 0.8, 0.95), from: [healedFrom] },
      },
      { way: "extraction", steps: "taken out", kept: estimate(0, 0, 0), from: [] },
    ],
    ...{ figuresDecide: false, figuresSay: "The figures do not decide: the intervals of remove and leave overlap" },
    drivers: [
      {
        ...{ way: "remove", against: "leave", difference: estimate(0.05, -0.12, 0.21), overlap: true },
        inputs: [
          { name: "chance of removal", low: 0.18, high: 0.45, differenceAtLow: 0.01, differenceAtHigh: 0.09 },
          { name: "chance of a perforation", low: 0.04, high: 0.07, differenceAtLow: 0.06, differenceAtHigh: 0.04 },
        ],
      },
    ],
    reasons: { for: ["It came out in 12 of 40 like it"], against: ["0.25 mm of wall is left"] },
    tellPatient: ["It may come out."],
    basis: { formula: "made up", assumptions: [], sources: ["known-2001"] },
    ...{ cautions: ["The groups are not comparable"], notComputed: [] },
    ...over,
  });

/** The mishap and the removal that {@link sampleRemovalTold} is about. */
export function samplePiece(over: Partial<BodyOf<"removal">> = {}): readonly Part[] {
  return [
    part("mishap", "mishap-p", {
      ...{ on: "2024-03-06", what: "separatedInstrument", canal: "MB1", third: "middle", bend: "beyond" },
      ...{ handled: "open", toldPatient: "told", story: "", fragmentMm: 3 },
    }),
    part("removal", "removal-p", { mishap: "mishap-p", on: "2024-03-06", attempts: [], ...over }),
  ];
}

/** The entry of {@link sampleRemovalTold}. */
export const sampleRemovalEntry = (told: RemovalOutput | undefined = sampleRemovalTold()): LedgerEntry => ({
  ...{ id: ledgerEntryId("b2".repeat(32)), caseId: "sample" as LedgerEntry["caseId"] },
  ...{ subject: "removal of removal-p", topic: "removal", topicVersion: 1, input: {}, inputPaths: [] },
  ...{ output: told, at: "2024-03-06T10:00:00.000Z" },
});

/** A case's source with a piece in the tooth, its removal weighed. */
export function withPiece(source: CaseSource, over: Partial<BodyOf<"removal">> = {}, told?: RemovalOutput): CaseSource {
  const reference = (names: string) => ({
    reference: `${names}. On pieces. J 2001;1:1-2`,
    verification: "memory" as const,
  });
  const references = new Map([
    ...source.references,
    ...[["known-2001", reference("Known AB")] as const, ["hole-2003", reference("Hole CD")] as const],
  ]);
  const parts = [...source.parts.filter(({ kind }) => kind !== "mishap" && kind !== "removal"), ...samplePiece(over)];
  return { ...source, references, parts, ledger: [...source.ledger, sampleRemovalEntry(told)] };
}
