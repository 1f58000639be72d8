import { keepPreviousData, useQuery, useQueryClient } from "@tanstack/react-query";
import type { WhatIfAnswer, WhatIfAsk } from "../../ledger/what-if.ts";
import type { CaseView, WhatIfView } from "../../server/api.ts";
import { ask, type Refused } from "./api.ts";
import { caseKey } from "./case-access.tsx";

/** The answers in the order of the questions; empty until the first ones have come. */
export interface WhatIf {
  readonly answers: readonly WhatIfAnswer[];
  /** Whether these are still the answers to the questions before. */
  readonly isOld: boolean;
  readonly error: Refused | null;
}

/** What sums of a case would say with operations laid over it; nothing is recorded. No question, no request. */
export function useWhatIf(caseId: string, asks: readonly WhatIfAsk[]): WhatIf {
  const stands = useQueryClient().getQueryData<CaseView>(caseKey(caseId))?.stateHash;
  const { data, error, isPlaceholderData } = useQuery<WhatIfView, Refused>({
    queryKey: ["what-if", caseId, stands, asks],
    queryFn: ({ signal }) => ask<WhatIfView>(`/cases/${caseId}/what-if`, { method: "POST", body: { asks }, signal }),
    enabled: asks.length > 0,
    placeholderData: keepPreviousData,
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: 60_000,
    retry: false,
  });
  if (asks.length === 0) return { answers: [], isOld: false, error: null };
  return { answers: data?.answers ?? [], isOld: isPlaceholderData, error };
}
