import { useEffect, useMemo, useState } from "react";
import {
  type BoxLayout,
  filmInHand,
  laidOut,
  nextInHand,
  oneFilm,
  type PaneCount,
  putIn,
  takenInHand,
  withoutMissing,
} from "../../lightbox/kernels/box-layout.ts";

/** Which films lie on the box, and what changes it. The address names the film in hand. */
export interface BoxLayoutUse {
  readonly layout: BoxLayout;
  readonly lay: (count: PaneCount) => void;
  readonly put: (film: string, pane?: number) => void;
  readonly takeInHand: (pane: number) => void;
  readonly next: () => void;
}

/** Lays films on the box. Takes the films of the strip, the one that the address names, and the way to another. */
export function useBoxLayout(
  strip: readonly string[],
  named: string | undefined,
  go: (film: string) => void,
): BoxLayoutUse {
  const [laid, setLaid] = useState(() => oneFilm(named));
  const layout = useMemo(() => withoutMissing(laid, strip), [laid, strip]);
  // The address can change by itself: back, a link, a film just taken in.
  useEffect(() => {
    if (named !== undefined) setLaid((now) => (filmInHand(now) === named ? now : putIn(now, named)));
  }, [named]);
  const become = (next: BoxLayout) => {
    setLaid(next);
    const film = filmInHand(next);
    if (film !== undefined && film !== named) go(film);
  };
  return {
    layout,
    lay: (count) => become(laidOut(layout, count, strip)),
    put: (film, pane) => become(putIn(layout, film, pane)),
    takeInHand: (pane) => become(takenInHand(layout, pane)),
    next: () => become(nextInHand(layout)),
  };
}
