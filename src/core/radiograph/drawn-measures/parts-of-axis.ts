import { faultAt } from "../../refusal.ts";
import type { CrownRootInput } from "./crown-root-input.ts";

/** A tooth's axis parted at a level, in the unit of the places. */
export interface PartsOfAxis {
  readonly crown: number;
  readonly root: number;
  /** The foot of the level on the axis. */
  readonly foot: [number, number];
  /** Standard deviations where each click errs by 1 in each direction. */
  readonly clickShare: { readonly crown: number; readonly root: number; readonly ratio: number };
}

/**
 * Crown and root along the line from cusp to apex, parted at the foot of the level on it.
 * Takes the three places in one unit. Gives both lengths, and what the clicks do to them and to their ratio.
 * @throws Refusal `input.impossible` where cusp and apex are one place, or the level does not lie between them.
 * @source plane geometry, first-order propagation of error; docs/methods/crown-root C1 and C3
 */
export function partsOfAxis({ crown: cusp, level, apex }: CrownRootInput): PartsOfAxis {
  const length = Math.hypot(apex[0] - cusp[0], apex[1] - cusp[1]);
  if (length === 0) throw faultAt("apex", "is the same place as crown; an axis has two ends");
  const axis = { x: (apex[0] - cusp[0]) / length, y: (apex[1] - cusp[1]) / length };
  const away = { x: level[0] - cusp[0], y: level[1] - cusp[1] };
  const crown = away.x * axis.x + away.y * axis.y;
  const aside = away.y * axis.x - away.x * axis.y;
  const root = length - crown;
  if (crown <= 0 || root <= 0) throw faultAt("level", "does not lie between crown and apex along the axis");
  // Along the axis a click moves its own place by 1; across it, cusp and apex turn the axis and with it the foot of the
  // level, which lies aside by so much: by aside / length.
  const turned = aside / length;
  return {
    crown,
    root,
    foot: [cusp[0] + crown * axis.x, cusp[1] + crown * axis.y],
    clickShare: {
      crown: Math.hypot(1, 1, Math.SQRT2 * turned),
      root: Math.hypot(1, 1, Math.SQRT2 * turned),
      ratio: ratioShare({ crown, root, turned }),
    },
  };
}

/** d (c / r) = (dc - (c / r) dr) / r, with dc = level - cusp - turn and dr = apex - level + turn. */
function ratioShare({ crown, root, turned }: { crown: number; root: number; turned: number }): number {
  const ratio = crown / root;
  const both = 1 + ratio;
  return Math.hypot(both, 1, ratio, Math.SQRT2 * turned * both) / root;
}
