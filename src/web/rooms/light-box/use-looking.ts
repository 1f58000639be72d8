import { useState } from "react";
import { filmInHand, type PaneCount } from "../../lightbox/kernels/box-layout.ts";
import { type PaneGroupUse, usePaneGroup } from "../../lightbox/view/use-pane-group.ts";
import { useSight } from "../../lightbox/view/use-sight.ts";
import type { ViewBarOptions } from "../../lightbox/view/view-bar.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import type { BoxLayoutUse } from "./use-box-layout.ts";

/** How the films are looked at: what the bar under them shows, and the panes that move together. */
export interface Looking {
  readonly group: PaneGroupUse;
  readonly bar: Omit<ViewBarOptions, "isWholeScreen" | "wholeScreen">;
}

/** Holds how the films on the box are looked at. */
export function useLooking({ layout, lay, next }: BoxLayoutUse): Looking {
  const [sight, change] = useSight();
  const [isLookOpen, setLookOpen] = useState(false);
  const group = usePaneGroup(sight.linked);
  const link = () => {
    group.link(!sight.linked, `${layout.inHand} ${filmInHand(layout)}`);
    change({ linked: !sight.linked });
  };
  const layOut = (count: PaneCount) => {
    // Films that come side by side begin whole, whatever others were looked at there before.
    if (layout.count === 1) group.whole();
    lay(count);
  };
  useShortcut("Escape", "Looking", "Back to one film", () => layout.count > 1 && lay(1));
  return {
    group,
    bar: {
      ...{ count: layout.count, lay: layOut, next, sight, change, link, isLookOpen },
      openLook: () => setLookOpen((now) => !now),
    },
  };
}
