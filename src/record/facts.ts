import { type CaseId, caseId } from "../core/ids.ts";
import { canalsAt } from "../core/tooth/canal-root.ts";
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

/** The day that a part stands for, or undefined where it has none. */
export function dayOf(part: Part): string | undefined {
  const body: object = part.body;
  for (const field of ["on", "takenOn", "madeOn", "presentedOn"]) {
    const value: unknown = Reflect.get(body, field);
    if (typeof value === "string") return value;
  }
  return undefined;
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
    nextOn: last?.body.nextOn ?? latest(partsOf(parts, "visit"))?.body.nextOn ?? null,
  };
}

function latest<P extends Part>(parts: readonly P[]): P | undefined {
  return inOrder(parts).at(-1);
}

/** Parts by their day; those of one day stay in the order in which they came. */
export function inOrder<P extends Part>(parts: readonly P[]): P[] {
  return [...parts].sort((a, b) => {
    const [earlier, later] = [dayOf(a) ?? "", dayOf(b) ?? ""];
    if (earlier === later) return 0;
    return earlier < later ? -1 : 1;
  });
}
