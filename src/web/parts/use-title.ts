import { useEffect } from "react";

/** Names the window by what it shows, so that tabs and readers can tell one from the other. */
export function useTitle(shows: string | undefined): void {
  useEffect(() => {
    if (shows !== undefined) document.title = `${shows} - Canalog`;
  }, [shows]);
}
