/** How two films are looked at, one laid on the other. */
export type ComparedAs = "landmarks" | "checkerboard" | "swipe" | "blink" | "difference";

/** Every way to look, with its key and its name. */
export const waysToLook: readonly {
  readonly as: ComparedAs;
  readonly keys: string;
  readonly name: string;
  readonly says: string;
}[] = [
  { as: "landmarks", keys: "1", name: "Landmarks", says: "both films side by side, to mark places on both" },
  { as: "checkerboard", keys: "2", name: "Checkerboard", says: "squares of both films in turn" },
  { as: "swipe", keys: "3", name: "Swipe", says: "the first film left of a line, the second right of it" },
  { as: "blink", keys: "4", name: "Blink", says: "one film after the other in the same place" },
  { as: "difference", keys: "5", name: "Difference", says: "the second film less the first" },
];

/** What a person has set for looking. */
export interface ComparedLook {
  readonly as: ComparedAs;
  /** Side of a square of the checkerboard, px of the screen. */
  readonly squarePx: number;
  /** Where the line of the swipe stands, as a share of the pane's width. */
  readonly swipeShare: number;
  /** Which film shows while they blink. */
  readonly blinksTo: "before" | "after";
  readonly outlines: boolean;
}

/** The look to begin with. */
export const firstLook = (as: ComparedAs): ComparedLook => ({
  ...{ as, squarePx: 96, swipeShare: 0.5, blinksTo: "before", outlines: true },
});

const squares: readonly number[] = [24, 32, 48, 64, 96, 128, 192, 256];

/** The squares one size larger or smaller, within what a screen can show. */
export function squaresBy(look: ComparedLook, step: 1 | -1): ComparedLook {
  const at = squares.findIndex((size) => size >= look.squarePx);
  const next = squares[Math.min(squares.length - 1, Math.max(0, (at < 0 ? squares.length - 1 : at) + step))];
  return { ...look, squarePx: next ?? look.squarePx };
}

/** The line of the swipe moved to a share of the width, or by one; it never leaves the pane. */
export const swipedTo = (look: ComparedLook, share: number): ComparedLook => ({
  ...look,
  swipeShare: Math.round(1000 * Math.min(1, Math.max(0, share))) / 1000,
});

/** A press of an arrow moves the line by a fiftieth of the width, with Shift by a tenth. */
export const swipedBy = (look: ComparedLook, way: 1 | -1, far: boolean): ComparedLook =>
  swipedTo(look, look.swipeShare + way * (far ? 0.1 : 0.02));

/** The other film, while they blink. */
export const blinked = (look: ComparedLook): ComparedLook => ({
  ...look,
  blinksTo: look.blinksTo === "before" ? "after" : "before",
});

/** How the layer of the second film is cut so that the first one shows through, as properties of its style. */
export function layerStyle({ as, squarePx, swipeShare, blinksTo }: ComparedLook): Readonly<Record<string, string>> {
  switch (as) {
    case "checkerboard": {
      const mask = "repeating-conic-gradient(#000 0 25%, transparent 0 50%)";
      return { maskImage: mask, maskSize: `${2 * squarePx}px ${2 * squarePx}px` };
    }
    case "swipe":
      return { clipPath: `inset(0 0 0 ${100 * swipeShare}%)` };
    case "blink":
      return { visibility: blinksTo === "after" ? "visible" : "hidden" };
    default:
      return {};
  }
}
