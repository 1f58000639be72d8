import { Dialog } from "../../../parts/dialog.tsx";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import { useCase } from "../../../record/case-access.tsx";
import { useLedgerEntry } from "../../../record/readings.ts";
import { LedgerEntryView } from "./ledger-entry-view.tsx";

interface EntryDialogOptions {
  readonly caseId: string;
  readonly entryId: string;
  readonly close: () => void;
}

/** An entry of the ledger over the page that it was asked for from, whether it still holds or not. */
export function EntryDialog({ caseId, entryId, close }: EntryDialogOptions) {
  const entry = useLedgerEntry(entryId);
  const { view } = useCase(caseId);
  const holds = view?.ledger.some(({ id }) => id === entryId) ?? true;
  return (
    <Dialog title="From the ledger" close={close}>
      {entry.error && <SayRefusal of={entry.error} />}
      {!holds && <p className="look">This entry no longer holds: its input or its method has changed since.</p>}
      {entry.data && <LedgerEntryView caseId={caseId} entry={entry.data} parts={view?.parts ?? []} open />}
    </Dialog>
  );
}
