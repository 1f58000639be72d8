import { type ReactNode, useState } from "react";
import { filmDragged } from "../../lightbox/view/dragged-film.ts";

interface PaneForDropOptions {
  readonly pane: number;
  readonly isInHand: boolean;
  readonly isOneOfMany: boolean;
  readonly isEmpty: boolean;
  readonly take: () => void;
  /** A film of the strip was let go over this pane. */
  readonly put: (film: string) => void;
  readonly children: ReactNode;
}

/** A pane that takes films of the strip, and is taken in hand by whatever touches it. */
export function PaneForDrop({ pane, isInHand, isOneOfMany, isEmpty, take, put, children }: PaneForDropOptions) {
  const [isOver, setOver] = useState(false);
  return (
    <section
      className="film-place"
      aria-label={isOneOfMany ? `Pane ${pane + 1}${isInHand ? ", in hand" : ""}` : "Film"}
      data-in-hand={isOneOfMany && isInHand}
      data-over={isOver}
      onPointerDownCapture={take}
      onFocusCapture={take}
      onDragOver={(event) => {
        if (!filmDragged.isIn(event.dataTransfer)) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        setOver(false);
        const film = filmDragged.from(event.dataTransfer);
        if (film === undefined) return;
        event.preventDefault();
        put(film);
      }}
    >
      {children}
      {isEmpty && (
        <button type="button" className="film-empty" onClick={take}>
          {isInHand ? "Choose a film below; it comes here" : "No film; press to fill this pane"}
        </button>
      )}
    </section>
  );
}
