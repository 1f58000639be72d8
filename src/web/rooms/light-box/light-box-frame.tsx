import { type ReactNode, useSyncExternalStore } from "react";
import type { CaseView } from "../../../server/api.ts";
import { Opening } from "../../parts/opening.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { useCase, useDraftBook, useSaveQueue } from "../../record/case-access.tsx";
import { useLeaveNothing } from "../../record/leave-nothing.ts";
import type { SaveState } from "../../record/save-queue.ts";
import { ConflictDialog } from "../case/conflict-dialog.tsx";
import { SaveTrouble } from "../case/save-mark.tsx";
import { LightBoxHead } from "./light-box-head.tsx";
import "./light-box-room.css";

interface LightBoxFrameOptions {
  readonly caseId: string;
  /** What the window is called before the tooth: `Two views`. */
  readonly title: string;
  /** A room inside the light box, as `two views`. */
  readonly at?: string;
  readonly isWholeScreen?: boolean;
  /** The room itself, once the case is open. */
  readonly children: (view: CaseView, save: SaveState) => ReactNode;
}

/** What every dark room of a case stands in: the head, the state of saving, trouble, and two windows' conflicts. */
export function LightBoxFrame({ caseId, title, at, isWholeScreen, children }: LightBoxFrameOptions) {
  const { view, recorded, error, save } = useCase(caseId);
  const queue = useSaveQueue(caseId);
  const book = useDraftBook(caseId);
  useSyncExternalStore(book.watch, book.count);
  useLeaveNothing(book, queue);
  useTitle(view && `${title} of ${view.facts.tooth}, ${view.facts.pseudonym}`);
  if (view === undefined)
    return (
      <div data-room="dark" className="light-box">
        {error === null ? <Opening says="Opening the films" /> : <SayRefusal of={error} whole />}
      </div>
    );
  return (
    <div data-room="dark" className="light-box" data-whole-screen={isWholeScreen}>
      <div className="light-box-head">
        <LightBoxHead view={view} save={save} pending={book.pending} {...(at === undefined ? {} : { at })} />
        <SaveTrouble save={save} retry={() => queue.retry()} />
      </div>
      {children(view, save)}
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
