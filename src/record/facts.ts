import { type CaseId, caseId } from "../core/ids.ts";
import { canalsAt } from "../core/tooth/canal-root.ts";
import { dayOf } from "./day-of.ts";
import { nextDueOf } from "./due.ts";
import { inOrder, latest } from "./in-order.ts";
import { type Part, type PartOf, partsOf, thePart } from "./parts.ts";

/** Rises whenever the same parts may give other facts, uses of files or days that are due; a store then works all of them out anew. */
export const factsVersion = 3;

/** What lists and filters read about a case: one flat row, derived from the parts and rebuildable. */
export interface CaseFacts {
  readonly caseId: CaseId;
  readonly pseudonym: string;
  readonly birthYear: number;
  readonly sex: string;
  readonly tooth: string;
  readonly treatment: string;
  readonly demo: boolean;
  readonly presentedOn: string;
  readonly lastOn: string;
  readonly visits: number;
  readonly films: number;
  readonly mishaps: number;
  readonly canals: number;
  readonly pulpal: string | null;
  readonly apical: string | null;
  /** Filling's end nearest to a fault: mm short of the apex, the canal with the largest distance from 1 mm short. */
  readonly fillingEndMm: number | null;
  readonly filledOn: string | null;
  readonly lastRecallOn: string | null;
  readonly lastScore: number | null;
  readonly retained: boolean | null;
  readonly symptoms: string | null;
  /** When the patient is expected next, for a visit or a recall. */
  readonly nextOn: string | null;
  readonly help: string | null;
}

/** The facts of a case, from its parts; undefined while no part says which tooth of whom it is. */
export function factsOf(id: string, parts: readonly Part[]): CaseFacts | undefined {
  const about = thePart(parts, "case")?.body;
  if (about === undefined) return undefined;
  const { pseudonym, birthYear, sex, tooth, treatment, demo, presentedOn } = about;
  return {
    ...{ caseId: caseId(id), pseudonym, birthYear, sex, tooth, treatment, demo, presentedOn },
    lastOn: daysOf(parts).at(-1) ?? presentedOn,
    ...countsOf(parts),
    ...diagnosisFacts(parts),
    ...fillingFacts(parts),
    ...recallFacts(parts),
  };
}

function daysOf(parts: readonly Part[]): string[] {
  return parts.flatMap((part) => dayOf(part) ?? []).sort();
}

function countsOf(parts: readonly Part[]) {
  const roots = thePart(parts, "anatomy")?.body.roots ?? [];
  return {
    visits: partsOf(parts, "visit").length,
    films: partsOf(parts, "film").length,
    mishaps: partsOf(parts, "mishap").length,
    canals: roots.reduce((sum, root) => sum + canalsAt(root.levels[0] ?? 0), 0),
  };
}

function diagnosisFacts(parts: readonly Part[]) {
  const last = latest(partsOf(parts, "diagnosis"));
  return { pulpal: last?.body.pulpal ?? null, apical: last?.body.apical ?? null };
}

function fillingFacts(parts: readonly Part[]) {
  const visits = partsOf(parts, "visit");
  const filled = latest(visits.filter((visit) => visit.body.canals.some((canal) => canal.state === "filled")));
  const ends = [...fillingEnds(visits).values()];
  const [worst] = ends.sort((a, b) => Math.abs(b - 1) - Math.abs(a - 1));
  const help = latest(visits)?.body.help ?? null;
  return { fillingEndMm: worst ?? null, filledOn: filled?.body.on ?? null, help };
}

/** The end of each canal's filling as the last visit that filled it left it; canals may be filled at different visits. */
function fillingEnds(visits: readonly PartOf<"visit">[]): Map<string, number> {
  const rows = inOrder(visits).flatMap((visit) => visit.body.canals);
  const ends = rows.flatMap(({ canal, state, fillingEndMm }): [string, number][] =>
    state === "filled" && fillingEndMm !== undefined ? [[canal, fillingEndMm]] : [],
  );
  return new Map(ends);
}

function recallFacts(parts: readonly Part[]) {
  const last = latest(partsOf(parts, "recall"));
  const scores = last?.body.readings.map((reading) => reading.score) ?? [];
  return {
    lastRecallOn: last?.body.on ?? null,
    lastScore: scores.length > 0 ? Math.max(...scores) : null,
    retained: last === undefined ? null : last.body.retained === "retained",
    symptoms: last?.body.symptoms ?? null,
    nextOn: nextDueOf(parts)?.on ?? null,
  };
}
