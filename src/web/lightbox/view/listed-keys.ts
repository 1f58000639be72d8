import { useShortcut } from "../../parts/shortcuts.ts";

const room = "On the film";

/** Lists the keys that the film itself takes while it has the focus; it acts on them by itself. */
export function useListedKeys(): void {
  useListed("ArrowLeft", "Arrows move the crosshair by a pixel, with Shift ten, with Alt a quarter; else the film");
  useListed(" ", "Space marks a place or takes hold of one; held, it moves the film with the mouse");
  useListed("Enter", "End at the crosshair or the pointer");
  useListed("Backspace", "Take back the last place");
  useListed("Delete", "Take off the chosen anchor or mark");
  useListed("n", "Go to the next place of the chosen mark, with Shift to the one before");
  useListed("x", "Put an anchor into the chosen course");
  useListed("+", "Larger; - makes it smaller, 0 shows the whole film");
  useListed("Shift", "Held while tracing: straight, without following the line");
}

/** A shortcut that leaves its key alone: the film has taken it already, or it was meant for something else. */
const useListed = (keys: string, does: string): void => useShortcut(keys, room, does, () => false);
