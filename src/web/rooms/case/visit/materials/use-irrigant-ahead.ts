import { asksOfIrrigant, type IrrigantComes, irrigantComes } from "../../../../../ledger/irrigant-ahead.ts";
import type { VisitAsked } from "../../../../../ledger/what-if.ts";
import { useWhatIf } from "../../../../record/what-if.ts";
import { useCaseNow } from "../../case-now.ts";
import type { Irrigant } from "./read-irrigant.ts";

/** What the sum says of an irrigant before it is recorded. */
export interface IrrigantAhead extends IrrigantComes {
  /** The answer is on its way: nothing is recorded without it. */
  readonly waits: boolean;
}

/** See {@link IrrigantAhead}; nothing to say while no solution is chosen. */
export function useIrrigantAhead(stands: VisitAsked, row: Irrigant | undefined): IrrigantAhead | undefined {
  const { caseId, ledger } = useCaseNow();
  const asks = row === undefined ? [] : asksOfIrrigant(stands, row);
  const { answers, isOld, error } = useWhatIf(caseId, asks);
  if (row === undefined) return undefined;
  if (error) return { waits: false, why: error.message, clashes: [], cautions: [] };
  if (isOld || answers.length < asks.length) return { waits: true, clashes: [], cautions: [] };
  return { waits: false, ...irrigantComes(answers, ledger, stands.visitId) };
}
