import { useState, useSyncExternalStore } from "react";
import { useLocation } from "wouter";
import type { CaseView, ChangeLine } from "../../../server/api.ts";
import { useAnnounce } from "../../parts/announcer.tsx";
import { today } from "../../parts/days-in-words.ts";
import { Opening } from "../../parts/opening.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { useTitle } from "../../parts/use-title.ts";
import { useCase, useDraftBook, useRedo, useSaveQueue, useUndo } from "../../record/case-access.tsx";
import { useLeaveNothing } from "../../record/leave-nothing.ts";
import { useCaseAt } from "../../record/readings.ts";
import { CaseHead } from "./case-head.tsx";
import { CasePages } from "./case-pages.tsx";
import "./case-room.css";
import { ConflictDialog } from "./conflict-dialog.tsx";
import { HistoryDrawer } from "./history-drawer.tsx";
import { SaveTrouble } from "./save-mark.tsx";
import { StoodBanner } from "./stood-banner.tsx";
import { useTakeBackKeys } from "./take-back-keys.ts";

interface CaseRoomOptions {
  readonly caseId: string;
  /** The moment that the address names; empty for the first look. */
  readonly moment: string;
}

/** One tooth of one patient over time: spine, page and ledger. */
export function CaseRoom({ caseId, moment }: CaseRoomOptions) {
  const { view, recorded, error, save } = useCase(caseId);
  const queue = useSaveQueue(caseId);
  const book = useDraftBook(caseId);
  useSyncExternalStore(book.watch, book.count);
  const [history, setHistory] = useState(false);
  const [then, setThen] = useState<ChangeLine>();
  const stood = useCaseAt(caseId, then?.sequence);
  const announce = useAnnounce();
  const [undoNow, redoNow] = [useUndo(caseId), useRedo(caseId)];
  const past = () => announce("The case is shown as it stood; go back to now to change it");
  const [undo, redo] = then === undefined ? [undoNow, redoNow] : [past, past];
  const [, go] = useLocation();
  useTitle(view && `${view.facts.tooth}, ${view.facts.pseudonym}`);
  useTakeBackKeys(book, undo, redo);
  useShortcut("h", "Case", "All changes", () => setHistory(true));
  useShortcut("d", "Case", "Documents", () => go(`/case/${caseId}/documents`));
  useLeaveNothing(book, queue);
  if (view === undefined && error) return <SayRefusal of={error} whole />;
  if (view === undefined) return <Opening says="Opening the case" />;
  const shown = then === undefined ? view : stood.data;
  const day = then === undefined ? today() : today(new Date(then.at));
  return (
    <div className="case-room">
      <CaseHead
        view={then === undefined ? view : withoutTakeBack(shown ?? view)}
        {...{ save, undo, redo }}
        pending={book.pending}
        history={() => setHistory(true)}
      />
      <SaveTrouble save={save} retry={() => queue.retry()} />
      {then && <StoodBanner change={then} reading={stood} back={() => setThen(undefined)} />}
      {shown && <CasePages {...{ caseId, moment }} view={shown} today={day} readOnly={then !== undefined} />}
      {history && (
        <HistoryDrawer
          caseId={caseId}
          shown={then?.sequence}
          show={(change) => {
            setThen(change.sequence === view.sequence ? undefined : change);
            setHistory(false);
          }}
          close={() => setHistory(false)}
        />
      )}
      {save.is === "conflict" && (
        <ConflictDialog
          words={save.words}
          conflicts={save.conflicts}
          seen={recorded?.parts ?? []}
          settle={(operations) => queue.settle(operations)}
        />
      )}
    </div>
  );
}

/** Nothing of now can be taken back while the past is shown. */
const withoutTakeBack = ({ undo: _undo, redo: _redo, ...view }: CaseView): CaseView => view;
