import { useCallback, useEffect, useMemo, useRef, useSyncExternalStore } from "react";
import { LaidPanes } from "../../../lightbox/two-view/laid-panes.ts";
import { framedOn } from "../../../lightbox/two-view/stand-of-films.ts";
import { type PaneGroupUse, usePaneGroup } from "../../../lightbox/view/use-pane-group.ts";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { FilmWithLevels } from "./film-with-levels.tsx";
import { LandmarkAsking } from "./landmark-asking.tsx";
import { LevelLinks } from "./level-links.tsx";
import { OneFilmMore } from "./one-film-more.tsx";
import { useTwoView } from "./two-view-work.ts";

/** The films of a canal side by side, moved together, their levels linked across. */
export function FilmsBeside() {
  const { films, landmark, setLandmark } = useTwoView();
  const group = usePaneGroup();
  const laid = useMemo(() => new LaidPanes(), []);
  useFraming(group, laid);
  useShortcut("l", "Two views", "Mark a landmark on all films", () => films.length > 1 && setLandmark({ places: {} }));
  return (
    <div className="film-panes" data-count={Math.max(2, films.length)}>
      {films.map((one, index) => (
        <FilmWithLevels key={one.film.id} index={index} group={group} laid={laid} />
      ))}
      {films.length < 2 && <OneFilmMore />}
      <LevelLinks laid={laid} />
      {landmark !== undefined && <LandmarkAsking />}
    </div>
  );
}

/** Puts the canal in the middle of every pane, and ties the panes together from there; again when the films are others. */
function useFraming(group: PaneGroupUse, laid: LaidPanes): void {
  const { films } = useTwoView();
  const areLaid = useSyncExternalStore(
    laid.watch,
    useCallback(() => films.length > 0 && films.every(({ film }) => laid.now().has(film.id)), [films, laid]),
  );
  const ids = films.map(({ film }) => film.id).join(" ");
  const latest = useRef({ films, group });
  latest.current = { films, group };
  // biome-ignore lint/correctness/useExhaustiveDependencies: other films are framed anew
  useEffect(() => {
    if (!areLaid) return undefined;
    const frame = requestAnimationFrame(() => {
      const { films: now, group: panes } = latest.current;
      const [first] = now;
      if (first === undefined) return;
      panes.link(false, first.film.id);
      for (const { film, line } of now) {
        const lies = laid.now().get(film.id);
        if (lies !== undefined) panes.move(film.id, () => framedOn(line.points, lies.pane, lies.placement.orientation));
      }
      panes.link(true, first.film.id);
    });
    return () => cancelAnimationFrame(frame);
  }, [areLaid, ids, laid]);
}
