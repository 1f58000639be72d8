import {
  type IrrigationTold,
  irrigationIfTold,
  irrigationSubject,
  irrigationsTold,
} from "../../../../../ledger/irrigation-told.ts";
import type { WhatIfAsk } from "../../../../../ledger/what-if.ts";
import type { LedgerEntry } from "../../../../../record/ledger-entry.ts";
import { useWhatIf } from "../../../../record/what-if.ts";
import { useCaseNow } from "../../case-now.ts";
import type { VisitAsked } from "./dose-ahead.ts";
import type { Irrigant } from "./read-irrigant.ts";

/** Two solutions that met, or would. */
export type Clash = IrrigationTold["clashes"][number];

/** The questions what an irrigant would meet: one of the whole visit, or one of each canal that it reaches. */
export function asksOfIrrigant({ visitId, revision, visit }: VisitAsked, row: Irrigant): readonly WhatIfAsk[] {
  const irrigation = [...visit.irrigation, row];
  const named = [...new Set(irrigation.flatMap(({ canal }) => canal ?? []))];
  const reached = row.canal === undefined ? named : [row.canal];
  const subjects =
    reached.length === 0 ? [irrigationSubject(visitId)] : reached.map((canal) => irrigationSubject(visitId, canal));
  const put = {
    op: "put" as const,
    id: visitId,
    kind: "visit",
    baseRevision: revision,
    body: { ...visit, irrigation },
  };
  return subjects.slice(0, 12).map((subject) => ({ topic: "irrigation", subject, operations: [put] }));
}

/** The clashes that come with a row: those of the answers that do not stand in the ledger already, each once. */
export function clashesThatCome(
  answers: readonly IrrigationTold[],
  stand: readonly IrrigationTold[],
): readonly Clash[] {
  const before = stand.flatMap(({ clashes }) => clashes.map(nameOf));
  const found = new Map<string, Clash>();
  for (const { clashes } of answers) {
    const names = clashes.map(nameOf);
    for (const clash of clashes)
      if (countOf(nameOf(clash), names) > countOf(nameOf(clash), before)) found.set(nameOf(clash), clash);
  }
  return [...found.values()];
}

const nameOf = ({ first, second, what }: Clash): string => [first, second, what].join("\n");
const countOf = (name: string, names: readonly string[]): number => names.filter((one) => one === name).length;

/** What the sum says of an irrigant before it is recorded. */
export interface IrrigantAhead {
  /** The answer is on its way: nothing is recorded without it. */
  readonly waits: boolean;
  readonly why?: string | undefined;
  readonly clashes: readonly Clash[];
  /** Cautions about the needle and the order that come with it. */
  readonly cautions: readonly string[];
  /** What a rinse needs at least, to keep two solutions apart. */
  readonly rinse?: { readonly volumeMl: number; readonly minutes: number } | undefined;
}

/** See {@link IrrigantAhead}; nothing to say while no solution is chosen. */
export function useIrrigantAhead(stands: VisitAsked, row: Irrigant | undefined): IrrigantAhead | undefined {
  const { caseId, ledger } = useCaseNow();
  const asks = row === undefined ? [] : asksOfIrrigant(stands, row);
  const { answers, isOld, error } = useWhatIf(caseId, asks);
  if (row === undefined) return undefined;
  if (error) return { waits: false, why: error.message, clashes: [], cautions: [] };
  if (isOld || answers.length < asks.length) return { waits: true, clashes: [], cautions: [] };
  const told = answers.map(irrigationIfTold);
  const outputs = told.flatMap((one) => one?.output ?? []);
  const before = toldBefore(ledger, stands.visitId);
  const [first] = outputs;
  return {
    ...{ waits: false, why: told.find((one) => one?.why !== undefined)?.why },
    clashes: clashesThatCome(outputs, before),
    cautions: cautionsThatCome(outputs, before),
    rinse: first && { volumeMl: first.settings.rinseVolumeMl.value, minutes: first.settings.rinseMinutes.value },
  };
}

const toldBefore = (ledger: readonly LedgerEntry[], visitId: string): readonly IrrigationTold[] =>
  irrigationsTold(ledger, visitId).flatMap(({ output }) => output ?? []);

/** Cautions that stand already are not said again, nor those that only tell that two solutions met. */
function cautionsThatCome(answers: readonly IrrigationTold[], stand: readonly IrrigationTold[]): readonly string[] {
  const known = stand.flatMap(({ cautions }) => cautions);
  const standing = answers.flatMap(({ cautions }) => cautions.at(-1) ?? []);
  return [...new Set(answers.flatMap(({ cautions }) => cautions))].filter(
    (caution) => !known.includes(caution) && !standing.includes(caution) && !/^Steps \d+ and \d+: /.test(caution),
  );
}
