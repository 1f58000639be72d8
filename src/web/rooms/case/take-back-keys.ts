import { inTextField, useShortcut } from "../../parts/shortcuts.ts";
import type { DraftBook } from "../../record/draft-book.ts";

/** Lets the keys undo and redo, unless a text field holds words of its own that are not recorded yet. */
export function useTakeBackKeys(book: DraftBook, undo: () => void, redo: () => void, room = "Case"): void {
  const unless = (act: () => void) => (event: KeyboardEvent) => {
    if (book.pending && inTextField(event.target)) return false;
    act();
    return true;
  };
  useShortcut("Control+z", room, "Undo", unless(undo));
  useShortcut("Control+Shift+z", room, "Redo", unless(redo));
}
