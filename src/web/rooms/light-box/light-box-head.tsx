import { Link } from "wouter";
import type { CaseView } from "../../../server/api.ts";
import { PageHead } from "../../parts/page-head.tsx";
import { inTextField, useShortcut } from "../../parts/shortcuts.ts";
import { TakeBack } from "../../parts/take-back.tsx";
import { useRedo, useUndo } from "../../record/case-access.tsx";
import type { SaveState } from "../../record/save-queue.ts";
import { AboutCase } from "../case/case-head.tsx";
import { SaveMark } from "../case/save-mark.tsx";

interface LightBoxHeadOptions {
  readonly view: CaseView;
  readonly save: SaveState;
  readonly pending: boolean;
  /** A room inside the light box, as `two views`; the way back to the films then stands before it. */
  readonly at?: string;
}

/** Whose tooth it is, whether all is recorded, what can be taken back, and the way to the case. */
export function LightBoxHead({ view, save, pending, at }: LightBoxHeadOptions) {
  const { facts, caseId } = view;
  const undo = useUndo(caseId);
  const redo = useRedo(caseId);
  // Inside a text field the keys belong to what is being typed there.
  const unlessTyping = (act: () => void) => (event: KeyboardEvent) => !inTextField(event.target) && act();
  useShortcut("Control+z", "Case", "Undo", unlessTyping(undo));
  useShortcut("Control+Shift+z", "Case", "Redo", unlessTyping(redo));
  return (
    <PageHead
      end={
        <>
          <SaveMark save={save} pending={pending} />
          <TakeBack {...{ view, undo, redo }} />
          <Link href={`/case/${caseId}`} className="button">
            Case
          </Link>
        </>
      }
    >
      <AboutCase facts={facts} />
      {at === undefined ? (
        <>
          <span className="head-room">Light box</span>
          {facts.films > 0 && <Link href={`/case/${caseId}/light-box/two-view`}>two views</Link>}
          {facts.films > 1 && <Link href={`/case/${caseId}/light-box/compare`}>two dates</Link>}
        </>
      ) : (
        <>
          <Link href={`/case/${caseId}/light-box`}>Light box</Link>
          <span className="head-room">{at}</span>
        </>
      )}
    </PageHead>
  );
}
