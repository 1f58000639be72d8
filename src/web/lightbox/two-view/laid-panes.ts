import type { FilmPlacement, PaneSize, ScreenPoint } from "../kernels/film-placement.ts";

/** Where a film lies on the screen: in its pane, and the pane among the others. */
export interface LaidPane {
  readonly placement: FilmPlacement;
  readonly pane: PaneSize;
  /** The upper left corner of the pane in the room for all panes. */
  readonly corner: ScreenPoint;
  /** The film is shown; before that nothing is drawn over it. */
  readonly isOpen: boolean;
}

/** Where the films of several panes lie, for what is drawn across all of them. */
export class LaidPanes {
  #laid: ReadonlyMap<string, LaidPane> = new Map();
  readonly #watchers = new Set<() => void>();

  /** What lies where now; the same object until something moves. */
  readonly now = (): ReadonlyMap<string, LaidPane> => this.#laid;

  readonly watch = (watcher: () => void): (() => void) => {
    this.#watchers.add(watcher);
    return () => this.#watchers.delete(watcher);
  };

  /** A film that lies elsewhere now, or lies nowhere any more. */
  put(film: string, laid: LaidPane | undefined): void {
    const next = new Map(this.#laid);
    if (laid === undefined) next.delete(film);
    else next.set(film, laid);
    this.#laid = next;
    for (const watcher of this.#watchers) watcher();
  }
}
