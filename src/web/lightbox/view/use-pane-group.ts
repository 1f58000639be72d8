import { useCallback, useMemo, useRef, useState } from "react";
import type { FilmPlacement } from "../kernels/film-placement.ts";
import {
  type FramedFilm,
  type FramedFilms,
  linkedTo,
  movedIn,
  type PaneGroup,
  placementIn,
  unlinked,
  wholeGroup,
  wholeIn,
} from "../kernels/pane-group.ts";

/** Several panes on one screen, whose films can be moved together. */
export interface PaneGroupUse {
  /** Whether the films move together. */
  readonly linked: boolean;
  /** Links all panes at the size of one of them, or lets each go by itself. */
  readonly link: (linked: boolean, id: string) => void;
  /** Puts a pane on the screen, or changes it; gives what takes it away again. */
  readonly join: (id: string, framed: FramedFilm) => () => void;
  readonly placementOf: (id: string, framed: FramedFilm) => FilmPlacement | undefined;
  readonly move: (id: string, next: (now: FilmPlacement) => FilmPlacement) => void;
  readonly fit: (id: string) => void;
  /** Shows all films whole again. */
  readonly whole: () => void;
}

/** Holds how the films of several panes lie, linked or not; one pane alone is a group as well. */
export function usePaneGroup(linked = false): PaneGroupUse {
  const [group, setGroup] = useState(() => wholeGroup(linked));
  const [panes, setPanes] = useState<FramedFilms>({});
  // Several steps can come before the next drawing; each begins where the one before ended.
  const latest = useRef({ group, panes });
  latest.current = { group, panes };
  const become = useCallback((next: PaneGroup) => {
    latest.current = { ...latest.current, group: next };
    setGroup(next);
  }, []);
  const join = useCallback((id: string, framed: FramedFilm) => {
    setPanes((before) => ({ ...before, [id]: framed }));
    return () =>
      setPanes((before) => {
        const { [id]: _, ...others } = before;
        return others;
      });
  }, []);
  return useMemo(
    () => ({
      linked: group.linked,
      link: (wanted, id) => {
        const now = latest.current;
        become(wanted ? linkedTo(now.group, id, now.panes) : unlinked(now.group, now.panes));
      },
      join,
      placementOf: (id, framed) => placementIn(group, id, { ...panes, [id]: framed }),
      move: (id, next) => become(movedIn(latest.current.group, id, latest.current.panes, next)),
      fit: (id) => become(wholeIn(latest.current.group, id)),
      whole: () => become(wholeGroup(latest.current.group.linked)),
    }),
    [group, panes, become, join],
  );
}
