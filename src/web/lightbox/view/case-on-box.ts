import { createContext, useContext } from "react";
import type { Part } from "../../../record/parts.ts";

/** The case whose films lie on the box, for the numbers that open to where they came from. */
export interface CaseOnBox {
  readonly caseId: string;
  readonly parts: readonly Part[];
}

/** See {@link CaseOnBox}. */
export const CaseOnBoxContext = createContext<CaseOnBox>({ caseId: "", parts: [] });

/** The case whose films lie on the box. */
export const useCaseOnBox = (): CaseOnBox => useContext(CaseOnBoxContext);
