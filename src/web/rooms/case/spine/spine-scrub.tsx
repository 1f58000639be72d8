import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import { useShortcut } from "../../../parts/shortcuts.ts";

interface SpineScrubOptions {
  /** Ids of the moments in their order. */
  readonly ids: readonly string[];
  /** The moment that is looked at, else the one whose page is open. */
  readonly at: number;
  /** What is read out of it: its name, its day and its canals. */
  readonly says: string;
  /** Looks at a moment without leaving the page; undefined looks away again. */
  readonly look: (id: string | undefined) => void;
  readonly open: (id: string) => void;
}

/**
 * The line of the spine as a slider: dragging along it, or an arrow key, shows the canals as each moment left them. Letting
 * go or Enter opens the moment; Escape or going elsewhere stays on the page.
 */
export function SpineScrub({ ids, at, says, look, open }: SpineScrubOptions) {
  const strip = useRef<HTMLDivElement>(null);
  const dragging = useRef<string>(undefined);
  useShortcut("t", "Case", "The canals over time: arrows look, Enter opens, Escape stays", () =>
    strip.current?.focus(),
  );
  const step = (to: number) => look(ids[Math.min(ids.length - 1, Math.max(0, to))]);
  const drag = (event: PointerEvent) => {
    const id = nearestMoment(event, ids);
    dragging.current = id;
    look(id);
  };
  const stay = () => {
    dragging.current = undefined;
    look(undefined);
  };
  const press = (event: KeyboardEvent) => {
    const way = { ArrowUp: -1, ArrowLeft: -1, ArrowDown: 1, ArrowRight: 1 }[event.key];
    if (way !== undefined) step(at + way);
    else if (event.key === "Home") step(0);
    else if (event.key === "End") step(ids.length - 1);
    else if (event.key === "Escape") stay();
    else if (event.key === "Enter" || event.key === " ") finish(ids[at]);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const finish = (id: string | undefined) => {
    stay();
    if (id !== undefined) open(id);
  };
  return (
    <div
      ref={strip}
      className="spine-scrub"
      role="slider"
      tabIndex={0}
      aria-label="The canals over time"
      aria-orientation="vertical"
      aria-valuemin={1}
      aria-valuemax={ids.length}
      aria-valuenow={at + 1}
      aria-valuetext={says}
      aria-keyshortcuts="t"
      title="Drag along the moments to see the canals then"
      onKeyDown={press}
      onBlur={stay}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        drag(event);
      }}
      onPointerMove={(event) => dragging.current !== undefined && drag(event)}
      onPointerUp={() => dragging.current !== undefined && finish(dragging.current)}
      onPointerCancel={stay}
    />
  );
}

/** The moment whose mark lies nearest to the pointer, whichever way the spine runs. */
function nearestMoment({ currentTarget, clientX, clientY }: PointerEvent, ids: readonly string[]): string | undefined {
  const marks = [...(currentTarget.parentElement?.querySelectorAll(".spine-mark") ?? [])].map((mark) => {
    const { left, top, width, height } = mark.getBoundingClientRect();
    return Math.hypot(clientX - left - width / 2, clientY - top - height / 2);
  });
  return ids[marks.indexOf(Math.min(...marks))];
}
