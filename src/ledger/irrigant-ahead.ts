import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { BodyOf } from "../record/parts.ts";
import { type IrrigationTold, irrigationIfTold, irrigationSubject, irrigationTold } from "./irrigation-told.ts";
import { irrigationCourses } from "./visit-sums/irrigation-courses.ts";
import type { VisitAsked, WhatIfAnswer, WhatIfAsk } from "./what-if.ts";

/** Two solutions that met, or would. */
export type Clash = IrrigationTold["clashes"][number];
type Irrigant = BodyOf<"visit">["irrigation"][number];

/** The questions what an irrigant would meet: one of each canal that it reaches, and one of those that no row names. */
export function asksOfIrrigant({ visitId, revision, visit }: VisitAsked, row: Irrigant): readonly WhatIfAsk[] {
  const body = { ...visit, irrigation: [...visit.irrigation, row] };
  const reached = irrigationCourses(body).filter(({ canal }) => row.canal === undefined || canal === row.canal);
  const put = { op: "put" as const, id: visitId, kind: "visit", baseRevision: revision, body };
  return reached.slice(0, 12).map(({ canal }) => ({
    ...{ topic: "irrigation", subject: irrigationSubject(visitId, canal), operations: [put] },
  }));
}

/** What comes with an irrigant that is not recorded yet. */
export interface IrrigantComes {
  readonly why?: string | undefined;
  readonly clashes: readonly Clash[];
  /** Cautions about the needle and the order that come with it. */
  readonly cautions: readonly string[];
  /** What a rinse needs at least, to keep two solutions apart. */
  readonly rinse?: { readonly volumeMl: number; readonly minutes: number } | undefined;
}

/** The answers of {@link asksOfIrrigant} beside what stands in the ledger of the same canal: what stood in another one is new here. */
export function irrigantComes(
  answers: readonly WhatIfAnswer[],
  entries: readonly LedgerEntry[],
  visitId: string,
): IrrigantComes {
  const told = answers.map((answer) => ({ of: irrigationIfTold(answer), stands: standing(entries, visitId, answer) }));
  const outputs = told.flatMap(({ of, stands }) => (of?.output === undefined ? [] : [{ output: of.output, stands }]));
  const settings = outputs[0]?.output.settings;
  return {
    why: told.find(({ of }) => of?.why !== undefined)?.of?.why,
    clashes: eachOnce(outputs.flatMap(({ output, stands }) => clashesThatCome(output, stands))),
    cautions: [...new Set(outputs.flatMap(({ output, stands }) => cautionsThatCome(output, stands)))],
    rinse: settings && { volumeMl: settings.rinseVolumeMl.value, minutes: settings.rinseMinutes.value },
  };
}

/** What the ledger says of the canal of an answer: of one that no row has named so far, what it says of those. */
function standing(
  entries: readonly LedgerEntry[],
  visitId: string,
  { subject }: WhatIfAnswer,
): IrrigationTold | undefined {
  const canal = subject.slice(irrigationSubject(visitId).length + 1);
  const ofCanal = canal === "" ? undefined : irrigationTold(entries, visitId, canal);
  return (ofCanal ?? irrigationTold(entries, visitId))?.output;
}

/** Those of an answer that stand more often than before. */
function clashesThatCome({ clashes }: IrrigationTold, stands: IrrigationTold | undefined): readonly Clash[] {
  const before = (stands?.clashes ?? []).map(nameOf);
  return clashes.filter((clash) => countOf(nameOf(clash), clashes.map(nameOf)) > countOf(nameOf(clash), before));
}

const eachOnce = (clashes: readonly Clash[]): readonly Clash[] => [
  ...new Map(clashes.map((clash) => [nameOf(clash), clash])).values(),
];
const nameOf = ({ first, second, what }: Clash): string => [first, second, what].join("\n");
const countOf = (name: string, names: readonly string[]): number => names.filter((one) => one === name).length;

/** Cautions that stand already are not said again, nor the general one at their end, nor those that only tell that two solutions met. */
const cautionsThatCome = ({ cautions }: IrrigationTold, stands: IrrigationTold | undefined): readonly string[] =>
  cautions.filter(
    (caution, at) =>
      at < cautions.length - 1 && stands?.cautions.includes(caution) !== true && !/^Steps \d+ and \d+: /.test(caution),
  );
