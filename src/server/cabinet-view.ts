import { lifeUsedTopic } from "../core/instrument/life-used-topic.ts";
import { fileTallies, shownInstruments } from "../ledger/cabinet-read.ts";
import { undoStack } from "../record/undo-stack.ts";
import type { CabinetState, Store } from "../store/store.ts";
import type { CabinetView } from "./api.ts";
import { changeLine } from "./case-view.ts";

/** The cabinet as the windows see it: its items, what is computed of them, and what can be undone. */
export async function cabinetView(store: Store, { sequence, items }: CabinetState): Promise<CabinetView> {
  const [uses, lives] = await Promise.all([store.fileUses(), store.entriesOfFileUsers(lifeUsedTopic.name)]);
  return {
    ...{ sequence, items, shown: shownInstruments(items), files: fileTallies({ items, uses, lives }) },
    ...(await topsOf(store)),
  };
}

async function topsOf(store: Store): Promise<Pick<CabinetView, "undo" | "redo">> {
  const changes = await store.cabinetChanges();
  const tops = undoStack(changes, "goes");
  const [undo, redo] = [tops.undo, tops.redo].map((top) => changes.find(({ sequence }) => sequence === top));
  return {
    ...(undo === undefined ? {} : { undo: changeLine(undo) }),
    ...(redo === undefined ? {} : { redo: changeLine(redo) }),
  };
}
