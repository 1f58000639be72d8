import { useSyncExternalStore } from "react";
import { toScreen } from "../../../lightbox/kernels/film-placement.ts";
import type { LaidPanes } from "../../../lightbox/two-view/laid-panes.ts";
import { type LevelTick, placeOnLine } from "../../../lightbox/two-view/level-ticks.ts";
import { useTwoView } from "./two-view-work.ts";

/** Fine lines from film to film between the places that are one level. */
export function LevelLinks({ laid }: { readonly laid: LaidPanes }) {
  const { films, ticks, level } = useTwoView();
  const now = useSyncExternalStore(laid.watch, laid.now);
  const spotsOf = ({ shares }: LevelTick) =>
    films.flatMap(({ film, line }, index) => {
      const pane = now.get(film.id);
      if (pane?.isOpen !== true) return [];
      const { x, y } = toScreen(pane.placement, pane.pane, placeOnLine(line, shares[index] ?? 0));
      const inside = x >= 0 && y >= 0 && x <= pane.pane.width && y <= pane.pane.height;
      return inside ? [{ x: pane.corner.x + x, y: pane.corner.y + y }] : [];
    });
  return (
    <svg className="level-links" aria-hidden="true">
      {ticks.map((tick) => {
        const spots = spotsOf(tick);
        const d = spots.map(({ x, y }, at) => `${at === 0 ? "M" : "L"}${x} ${y}`).join("");
        return spots.length < 2 ? null : (
          <path key={tick.number} d={d} data-fixed={tick.fixed} data-look={tick.number === level} />
        );
      })}
    </svg>
  );
}
