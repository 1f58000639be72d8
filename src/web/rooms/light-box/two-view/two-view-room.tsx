import { useMemo, useSyncExternalStore } from "react";
import { CaseOnBoxContext } from "../../../lightbox/view/case-on-box.ts";
import { Opening } from "../../../parts/opening.tsx";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import { useTitle } from "../../../parts/use-title.ts";
import { useCase, useDraftBook, useSaveQueue } from "../../../record/case-access.tsx";
import { useLeaveNothing } from "../../../record/leave-nothing.ts";
import { ConflictDialog } from "../../case/conflict-dialog.tsx";
import { SaveTrouble } from "../../case/save-mark.tsx";
import { LightBoxHead } from "../light-box-head.tsx";
import { CanalInSpace } from "./canal-in-space.tsx";
import "../light-box-room.css";
import "./two-view-room.css";

interface TwoViewRoomOptions {
  readonly caseId: string;
  readonly canal?: string;
}

/** The room in the light box where films of one tooth under different angles give a canal's course in space. */
export function TwoViewRoom({ caseId, canal }: TwoViewRoomOptions) {
  const { view, recorded, error, save } = useCase(caseId);
  const queue = useSaveQueue(caseId);
  const book = useDraftBook(caseId);
  useSyncExternalStore(book.watch, book.count);
  useLeaveNothing(book, queue);
  useTitle(view && `Two views of ${view.facts.tooth}, ${view.facts.pseudonym}`);
  const parts = view?.parts;
  const onBox = useMemo(() => ({ caseId, parts: parts ?? [] }), [caseId, parts]);
  if (view === undefined)
    return (
      <div data-room="dark" className="light-box">
        {error === null ? <Opening says="Opening the films" /> : <SayRefusal of={error} whole />}
      </div>
    );
  return (
    <div data-room="dark" className="light-box">
      <div>
        <LightBoxHead view={view} save={save} pending={book.pending} at="two views" />
        <SaveTrouble save={save} retry={() => queue.retry()} />
      </div>
      <CaseOnBoxContext value={onBox}>
        <CanalInSpace view={view} measuring={save.is === "saving"} canal={canal} />
      </CaseOnBoxContext>
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
