import { useSyncExternalStore } from "react";
import { useLocation } from "wouter";
import { cabinetKindWords } from "../../../record/words/cabinet-words.ts";
import type { CabinetView } from "../../../server/api.ts";
import { Opening } from "../../parts/opening.tsx";
import { PageHead } from "../../parts/page-head.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { TakeBack } from "../../parts/take-back.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { useCabinet, useCabinetDesk, useCabinetTakeBack } from "../../record/cabinet.ts";
import { useLeaveNothing } from "../../record/leave-nothing.ts";
import type { SaveState } from "../../record/save-queue.ts";
import { ConflictDialog } from "../case/conflict-dialog.tsx";
import { SaveMark, SaveTrouble } from "../case/save-mark.tsx";
import { useTakeBackKeys } from "../case/take-back-keys.ts";
import { AskInstrument } from "./ask-instrument.tsx";
import { AskStock } from "./ask-stock.tsx";
import { CabinetItemPage } from "./cabinet-item-page.tsx";
import { CabinetList } from "./cabinet-list.tsx";
import { CabinetNow } from "./cabinet-now.ts";
import { CabinetOverview } from "./cabinet-overview.tsx";
import "./cabinet-room.css";
import { useCabinetGestures } from "./use-cabinet-gestures.ts";

/** The room of what the clinic keeps: instruments and counted files, sequences, materials, templates of visits. */
export function CabinetRoom({ item }: { readonly item: string }) {
  useTitle("Cabinet");
  const { view, recorded, error, again, save } = useCabinet();
  const { queue, book } = useCabinetDesk();
  useLeaveNothing(book, queue);
  if (view === undefined)
    return error ? <SayRefusal of={error} retry={again} whole /> : <Opening says="Opening the cabinet" />;
  return (
    <>
      <Desk {...{ item, view, save }} />
      {save.is === "conflict" && (
        <ConflictDialog
          words={save.words}
          conflicts={save.conflicts}
          seen={recorded?.items ?? []}
          titles={cabinetKindWords}
          settle={(operations) => queue.settle(operations)}
        />
      )}
    </>
  );
}

interface DeskOptions {
  readonly item: string;
  readonly view: CabinetView;
  readonly save: SaveState;
}

function Desk({ item, view, save }: DeskOptions) {
  const { queue, book } = useCabinetDesk();
  useSyncExternalStore(book.watch, book.count);
  const [undo, redo] = [useCabinetTakeBack("undo"), useCabinetTakeBack("redo")];
  const [, go] = useLocation();
  const now = useCabinetGestures(view, item);
  const shown = view.items.find(({ id }) => id === item);
  useTakeBackKeys(book, undo, redo, "Cabinet");
  useShortcut("i", "Cabinet", "New instrument", () => now.add("instrument"));
  useShortcut("s", "Cabinet", "New sequence", () => now.add("sequence"));
  useShortcut("f", "Cabinet", "New counted file", () => now.add("file"));
  useShortcut("m", "Cabinet", "New material", () => now.add("stock"));
  useShortcut("t", "Cabinet", "New template", () => now.add("template"));
  useShortcut("o", "Cabinet", "Overview: counted files, all drawn", () => go("/instruments"));
  return (
    <CabinetNow.Provider value={now}>
      <div className="cabinet">
        <PageHead
          end={
            <>
              <SaveMark save={save} pending={book.pending} />
              <TakeBack {...{ view, undo, redo }} />
            </>
          }
        >
          <h1 className="cabinet-title">Cabinet</h1>
          <span className="quiet">the clinic's own: by geometry and kind, not by maker</span>
        </PageHead>
        <SaveTrouble save={save} retry={() => queue.retry()} />
        <div className="cabinet-columns">
          <CabinetList shown={item} />
          <main className="cabinet-page" id="page">
            {shown ? (
              <CabinetItemPage key={shown.id} item={shown} draft={book.of(shown.id)} />
            ) : (
              <CabinetOverview missing={item !== ""} />
            )}
          </main>
        </div>
      </div>
      <AskInstrument />
      <AskStock />
    </CabinetNow.Provider>
  );
}
