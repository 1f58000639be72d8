import { useEffect, useRef } from "react";

/** One key that does something in the room that is open. */
export interface Shortcut {
  readonly keys: string;
  readonly room: string;
  readonly does: string;
}

const known = new Map<string, Shortcut>();

/** The shortcuts that work now, for the sheet that lists them. */
export const shortcutsNow = (): readonly Shortcut[] => [...known.values()];

/** A function key types nothing, so it may act in a text field and above an open dialog too. */
const isFunctionKey = (keys: string): boolean => /^F\d+$/.test(keys);

/** Whether a key press belongs to a field that takes text. */
export function inTextField(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement) return !["checkbox", "radio", "button", "range"].includes(target.type);
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement || target.isContentEditable;
}

/** How a key press is written in this program: `?`, `n`, `Control+z`, `Control+Shift+z`. */
export function keysOf(event: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "shiftKey" | "altKey">): string {
  const held = [event.ctrlKey || event.metaKey ? "Control" : "", event.altKey ? "Alt" : ""].filter(
    (name) => name !== "",
  );
  const letter = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  const shift = event.shiftKey && (held.length > 0 || event.key.length > 1) ? ["Shift"] : [];
  return [...held, ...shift, letter].join("+");
}

/** Whether a key may act now: never bare letters inside a text field, and never behind an open dialog; a function key always. */
function mayAct(event: KeyboardEvent, keys: string): boolean {
  if (isFunctionKey(keys)) return true;
  if (event.defaultPrevented || document.querySelector("dialog[open], [role=dialog], [role=menu]")) return false;
  return keys.includes("Control+") || !inTextField(event.target);
}

/** Lets a key do something while the component is shown, and lists it. An action that gives false leaves the key alone. */
export function useShortcut(keys: string, room: string, does: string, act: (event: KeyboardEvent) => unknown): void {
  const latest = useRef(act);
  latest.current = act;
  useEffect(() => {
    known.set(keys + room, { keys, room, does });
    const press = (event: KeyboardEvent) => {
      if (keysOf(event) !== keys || !mayAct(event, keys)) return;
      if (latest.current(event) !== false) event.preventDefault();
    };
    const first = { capture: isFunctionKey(keys) };
    window.addEventListener("keydown", press, first);
    return () => {
      known.delete(keys + room);
      window.removeEventListener("keydown", press, first);
    };
  }, [keys, room, does]);
}
