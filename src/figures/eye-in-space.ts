import { less, type Pose, seenFrom, type ToothPlace } from "./seen-from.ts";
import type { Spot } from "./svg-tree.ts";

/** What turns places into spots of the drawing. */
export interface Eye {
  readonly spot: (place: ToothPlace) => Spot;
  readonly toward: (place: ToothPlace) => number;
  /** The size of the drawing, and where it begins below what is written over it. */
  readonly view: View;
  /** One mm of the tooth in the units of the drawing. */
  readonly perMm: number;
}

interface View {
  readonly width: number;
  readonly height: number;
  readonly top: number;
}

/** How a tooth is turned before an eye, and how it stands there. */
export interface EyeWish {
  readonly pose: Pose;
  readonly rightIs: "distal" | "mesial";
  readonly apexIs: "down" | "up";
}

/** Air between what is drawn and the edge of the view. */
const edge = 22;

/** An eye before some places: it looks at their middle, at the scale at which they fit whichever side is turned to it. */
export function eyeOf({ pose, rightIs, apexIs }: EyeWish, view: View, places: readonly ToothPlace[]): Eye {
  const [x = 0, y = 0, z = 0] = [0, 1, 2].map((axis) => {
    const along = places.map((place) => place[axis] ?? 0);
    return (Math.min(...along) + Math.max(...along)) / 2;
  });
  const centre: ToothPlace = [x, y, z];
  const perMm = scaleOf(
    pose,
    { width: view.width, height: view.height - view.top },
    places.map((place) => less(place, centre)),
  );
  const [right, below] = [rightIs === "distal" ? 1 : -1, apexIs === "down" ? 1 : -1];
  return {
    view,
    perMm,
    toward: (place) => seenFrom(pose, less(place, centre)).toward,
    spot: (place) => {
      const { across, down } = seenFrom(pose, less(place, centre));
      return { x: view.width / 2 + right * across * perMm, y: (view.top + view.height) / 2 + below * down * perMm };
    },
  };
}

/** The scale hangs on the tip alone: a turn round the long axis changes no size. */
function scaleOf(
  { pitchDeg }: Pose,
  view: { readonly width: number; readonly height: number },
  fromMiddle: readonly ToothPlace[],
): number {
  const tip = (Math.abs(pitchDeg) * Math.PI) / 180;
  const round = Math.max(1, ...fromMiddle.map(([x, y]) => Math.hypot(x, y)));
  const high = Math.max(1, ...fromMiddle.map(([, , z]) => Math.abs(z)));
  const upright = high * Math.cos(tip) + round * Math.sin(tip);
  return Math.min((view.width / 2 - edge) / round, (view.height / 2 - edge) / upright);
}
