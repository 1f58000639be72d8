import { useMemo } from "react";
import { useSearchParams } from "wouter";
import { type BendOnFilm, bendsOnFilm } from "../../../ledger/strain-on-film.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { useCaseOnBox } from "./case-on-box.ts";

/** The instruments whose strain can be shown on a film, the one that is shown, and what shows another or none. */
export interface StrainShown {
  readonly bends: readonly BendOnFilm[];
  readonly shown: BendOnFilm | undefined;
  readonly show: (entry: string | undefined) => void;
}

/** See {@link StrainShown}. Which one is shown stands in the address, so that a link can ask for it. */
export function useStrainShown(film: string, ledger: readonly LedgerEntry[]): StrainShown {
  const { parts } = useCaseOnBox();
  const [asked, ask] = useSearchParams();
  const bends = useMemo(() => bendsOnFilm(film, { parts, ledger }), [film, parts, ledger]);
  return {
    bends,
    shown: bends.find(({ entry }) => entry.id === asked.get("strain")),
    show: (entry) => ask(entry === undefined ? {} : { strain: entry }, { replace: true }),
  };
}
