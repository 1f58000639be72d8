import { useEffect, useState } from "react";

/** Keeps the keys that are pressed while the entry can't be drawn yet, so that a fast hand loses none; Escape and Tab act as ever. */
export function useKeysAhead(isWaiting: boolean): readonly string[] {
  const [keys] = useState<string[]>([]);
  useEffect(() => {
    if (!isWaiting) return undefined;
    const hold = (event: KeyboardEvent) => {
      if (event.key === "Escape" || event.key === "Tab" || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      event.stopPropagation();
      keys.push(event.key);
    };
    window.addEventListener("keydown", hold, true);
    return () => window.removeEventListener("keydown", hold, true);
  }, [isWaiting, keys]);
  return keys;
}
