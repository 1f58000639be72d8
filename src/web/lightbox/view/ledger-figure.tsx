import { useState } from "react";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { Dialog } from "../../parts/dialog.tsx";
import { intervalInWords, numberInWords, quantityInWords, withUnit } from "../../parts/figures-in-words.ts";
import { LedgerEntryView } from "../../rooms/case/ledger/ledger-entry-view.tsx";
import "../../rooms/case/ledger/ledger-panel.css";
import type { LedgerNumber } from "../kernels/ledger-reading.ts";
import { useCaseOnBox } from "./case-on-box.ts";

interface LedgerFigureOptions {
  readonly entry: LedgerEntry;
  readonly number: LedgerNumber;
  readonly unit: string;
  /** Decimals of a number that has no interval to say how many it deserves. */
  readonly digits?: number;
  /** What the number is, for who hears it and for the page that opens. */
  readonly says: string;
}

/** A number of the ledger; pressed, it opens to its formula, inputs, source and uncertainty. */
export function LedgerFigure({ entry, number, unit, digits, says }: LedgerFigureOptions) {
  const [open, setOpen] = useState(false);
  const { caseId, parts } = useCaseOnBox();
  const { value, interval } = number;
  const shown =
    digits === undefined ? quantityInWords(value, unit, interval) : withUnit(numberInWords(value, digits), unit);
  return (
    <>
      <button
        type="button"
        className="ledger-figure"
        onClick={() => setOpen(true)}
        aria-label={`${says}: ${shown}, how it came about`}
      >
        {shown}
      </button>
      {open && (
        <Dialog title={says} place="side" close={() => setOpen(false)}>
          <p className="ledger-figure-large">
            {shown}
            {interval && <span className="quiet"> {withUnit(intervalInWords(interval), unit)}, 95 %</span>}
          </p>
          <LedgerEntryView caseId={caseId} entry={entry} parts={parts} open />
        </Dialog>
      )}
    </>
  );
}
