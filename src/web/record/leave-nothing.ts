import { useEffect } from "react";
import type { DraftBook } from "./draft-book.ts";

/** Hands over what is typed when the window goes out of sight or the room is left, and warns while something has not reached the record. */
export function useLeaveNothing(book: DraftBook, queue: { readonly busy: boolean }): void {
  useEffect(() => {
    const hide = () => document.visibilityState === "hidden" && book.commitAll();
    const leave = (event: BeforeUnloadEvent) => {
      book.commitAll();
      if (queue.busy) event.preventDefault();
    };
    document.addEventListener("visibilitychange", hide);
    window.addEventListener("beforeunload", leave);
    return () => {
      book.commitAll();
      document.removeEventListener("visibilitychange", hide);
      window.removeEventListener("beforeunload", leave);
    };
  }, [book, queue]);
}
