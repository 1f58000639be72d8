import { useEffect, useState } from "react";

/** Whether the program has the whole screen, and the way there and back; Escape leads back as well. */
export function useWholeScreen(): readonly [boolean, () => void] {
  const [isWhole, setWhole] = useState(document.fullscreenElement !== null);
  useEffect(() => {
    const changed = () => setWhole(document.fullscreenElement !== null);
    document.addEventListener("fullscreenchange", changed);
    return () => document.removeEventListener("fullscreenchange", changed);
  }, []);
  const toggle = () => {
    // A browser that does not allow it leaves everything as it is.
    const done = isWhole ? document.exitFullscreen() : document.documentElement.requestFullscreen();
    done.catch(() => undefined);
  };
  return [isWhole, toggle];
}
