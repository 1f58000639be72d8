import type { Spot } from "./svg-tree.ts";
import { type Box, boxesMeet, labelBox, type TextLabel, textWidth } from "./text-label.ts";

/** A label that still looks for its place: the spot that it belongs to, and its looks. */
export interface LabelWish {
  readonly text: string;
  readonly near: Spot;
  readonly fill: string;
}

/** The film that labels must stay inside of, and the size of their letters. */
export interface LabelFrame {
  readonly width: number;
  readonly height: number;
  readonly size: number;
  readonly halo: string;
}

/**
 * Places for labels, in the order of the wishes: beside their spot, inside the frame always, clear of each other as long
 * as the frame has room left, and off what is drawn where they can be. A text that is wider than the frame is cut.
 */
export function placedLabels(
  wishes: readonly LabelWish[],
  drawn: readonly Spot[],
  frame: LabelFrame,
): readonly TextLabel[] {
  const placed: TextLabel[] = [];
  for (const wish of wishes) placed.push(placeOf(wish, placed.map(labelBox), drawn, frame));
  return placed;
}

/** Every line of the frame, counted from a label's own and nearest first. */
function rowsOf({ height, size }: LabelFrame): readonly number[] {
  const count = Math.ceil(height / (size * 1.2));
  return [0, ...Array.from({ length: count }, (_, at) => [at + 1, -at - 1]).flat()];
}

function placeOf(wish: LabelWish, taken: readonly Box[], drawn: readonly Spot[], frame: LabelFrame): TextLabel {
  const { size, halo } = frame;
  const text = fitted(wish.text, frame.width - 2 * size, size);
  const width = textWidth(text, size, "medium");
  const gap = size * 0.8;
  const nearY = Math.max(0, Math.min(frame.height, wish.near.y));
  const tries = rowsOf(frame).flatMap((row) =>
    [wish.near.x + gap, wish.near.x - gap - width].map((x) => {
      const y = nearY + size * 0.36 + row * size * 1.2;
      const label: TextLabel = { text, size, halo, fill: wish.fill, weight: "medium", ...inFrame(x, y, width, frame) };
      const box = labelBox(label);
      const covers = drawn.filter((spot) => isInside(spot, box)).length;
      const meets = taken.filter((other) => boxesMeet(other, box)).length;
      return { label, cost: meets * 1e6 + covers * 10 + Math.abs(row) };
    }),
  );
  const [first, ...others] = tries;
  const best = others.reduce((least, one) => (least === undefined || one.cost < least.cost ? one : least), first);
  return best?.label ?? { text, size, fill: wish.fill, x: 0, y: size };
}

const isInside = ({ x, y }: Spot, { left, right, top, bottom }: Box): boolean =>
  x >= left && x <= right && y >= top && y <= bottom;

/** The nearest place inside the frame, half a letter from its edge. */
function inFrame(x: number, y: number, width: number, { width: frameWidth, height, size }: LabelFrame): Spot {
  const edge = size * 0.5;
  return {
    x: Math.max(edge, Math.min(frameWidth - edge - width, x)),
    y: Math.max(edge + size * 0.76, Math.min(height - edge - size * 0.22, y)),
  };
}

function fitted(text: string, width: number, size: number): string {
  if (textWidth(text, size, "medium") <= width) return text;
  let kept = [...text];
  while (kept.length > 1 && textWidth(`${kept.join("")}…`, size, "medium") > width) kept = kept.slice(0, -1);
  return `${kept.join("")}…`;
}
