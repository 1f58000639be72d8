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
 * Places for labels, in the order of the wishes: beside their spot where there is room, inside the frame always, and
 * clear of each other as long as the frame has room left. A text that is wider than the frame is cut.
 */
export function placedLabels(wishes: readonly LabelWish[], frame: LabelFrame): readonly TextLabel[] {
  const placed: TextLabel[] = [];
  for (const wish of wishes) placed.push(placeOf(wish, placed.map(labelBox), frame));
  return placed;
}

function placeOf(wish: LabelWish, taken: readonly Box[], frame: LabelFrame): TextLabel {
  const { size, halo } = frame;
  const text = fitted(wish.text, frame.width - 2 * size, size);
  const width = textWidth(text, size, "medium");
  const gap = size * 0.8;
  const rows = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6, -6, 7, -7, 8, -8];
  const tries = rows.flatMap((row) =>
    [wish.near.x + gap, wish.near.x - gap - width].map((x): TextLabel => {
      const y = wish.near.y + size * 0.36 + row * size * 1.2;
      return { text, size, halo, fill: wish.fill, weight: "medium", ...inFrame(x, y, width, frame) };
    }),
  );
  const clear = tries.find((one) => !taken.some((box) => boxesMeet(box, labelBox(one))));
  return clear ?? tries[0] ?? { text, size, fill: wish.fill, x: 0, y: size };
}

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
