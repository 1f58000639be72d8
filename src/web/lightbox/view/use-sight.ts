import { useCallback, useState } from "react";
import { type Sight, sightFrom } from "../kernels/sight.ts";

const place = "light box: sight";

/** What lies over the films, kept in this browser from one time to the next. */
export function useSight(): readonly [Sight, (change: Partial<Sight>) => void] {
  const [sight, setSight] = useState(() => sightFrom(localStorage.getItem(place)));
  const change = useCallback((by: Partial<Sight>) => {
    setSight((before) => {
      const next = { ...before, ...by };
      localStorage.setItem(place, JSON.stringify(next));
      return next;
    });
  }, []);
  return [sight, change];
}
