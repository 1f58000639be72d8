import { useMemo } from "react";
import type { FractureTold } from "../../../../ledger/fracture-told.ts";
import { brokenInstrumentSubject } from "../../../../ledger/instrument-told.ts";
import { breakInCanalFigure, breakPlacesFigure } from "../../../../pages/fracture-figures.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import { useCaseNow } from "../case-now.ts";

interface BreakDrawnOptions {
  readonly told: FractureTold;
  readonly entry: LedgerEntry;
  readonly mishapId: string;
}

/** Where each explanation expects the break, on the file and in the canal. */
export function BreakDrawn({ told, entry, mishapId }: BreakDrawnOptions) {
  const { ledger } = useCaseNow();
  const shape = ledger.find(({ subject }) => subject === brokenInstrumentSubject(mishapId));
  const onFile = useMemo(
    () => breakPlacesFigure(told, { entry, shape }, { theme: "paper", widthPx: 640 }),
    [told, entry, shape],
  );
  const inCanal = useMemo(() => breakInCanalFigure(told, entry, { theme: "paper", widthPx: 440 }), [told, entry]);
  return (
    <div className="mishap-drawn">
      {onFile && <FigureView figure={onFile} />}
      {inCanal ? (
        <FigureView figure={inCanal} />
      ) : (
        <p className="quiet">
          Not drawn in the canal: that asks for its traced course on a film with a scale, and the depth of the tip.
        </p>
      )}
    </div>
  );
}
