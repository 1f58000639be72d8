import { useShortcut } from "../../../parts/shortcuts.ts";

/** Ctrl and the down arrow go to the next answer that is open, from the end to the first again. */
export function useNextOpen(): void {
  useShortcut("Control+ArrowDown", "Case", "Next that was not asked or done", () => {
    const open = [...document.querySelectorAll<HTMLElement>(".edit-part [data-unset=true]:enabled")];
    const next = open.find((one) => comesAfter(one, document.activeElement)) ?? open[0];
    next?.focus();
    next?.scrollIntoView({ block: "nearest" });
  });
}

const comesAfter = (one: HTMLElement, other: Element | null): boolean =>
  other !== null && (other.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
