import { type RefObject, useEffect, useRef, useState } from "react";
import type { PaneSize, ScreenPoint } from "../kernels/film-placement.ts";

/** The element that shows the film: its size, and where a pointer is in it. */
export interface Pane {
  readonly element: RefObject<HTMLDivElement | null>;
  /** Absent until it is laid out. */
  readonly size: PaneSize | undefined;
  readonly screenOf: (event: { readonly clientX: number; readonly clientY: number }) => ScreenPoint;
}

/** Watches the size of the pane. */
export function usePane(): Pane {
  const element = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<PaneSize>();
  useEffect(() => {
    const watched = element.current;
    if (watched === null) return;
    const watcher = new ResizeObserver(([entry]) => {
      if (entry === undefined) return;
      const { width, height } = entry.contentRect;
      if (width > 0 && height > 0) setSize({ width, height });
    });
    watcher.observe(watched);
    return () => watcher.disconnect();
  }, []);
  const screenOf = ({ clientX, clientY }: { clientX: number; clientY: number }) => {
    const box = element.current?.getBoundingClientRect();
    return { x: clientX - (box?.left ?? 0), y: clientY - (box?.top ?? 0) };
  };
  return { element, size, screenOf };
}
