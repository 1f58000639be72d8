import widths from "../../data/fonts/inter-widths.json" with { type: "json" };
import { element, type SvgNode } from "./svg-tree.ts";

/** The weights that are shipped. */
export type TextWeight = "regular" | "medium" | "semibold";

/** A line of text in a drawing: where its baseline starts, ends or has its middle. */
export interface TextLabel {
  readonly text: string;
  readonly x: number;
  /** The baseline. */
  readonly y: number;
  readonly size: number;
  readonly fill: string;
  readonly anchor?: "start" | "middle" | "end";
  readonly weight?: TextWeight;
  /** Colour of a rim round the letters, where they stand on a picture. */
  readonly halo?: string;
}

/** A box of a drawing. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const byWeight: Readonly<Record<TextWeight, Readonly<Record<string, number>>>> = widths;
const cssWeight: Readonly<Record<TextWeight, number>> = { regular: 400, medium: 500, semibold: 600 };
/** An unknown sign is given the width of a wide one, so that a box is never too small. */
const unknownEm = 0.9;

/** The width of a text in the shipped font, without kerning, in the unit of the size. */
export const textWidth = (text: string, size: number, weight: TextWeight = "regular"): number =>
  size * [...text].reduce((sum, sign) => sum + (byWeight[weight][sign] ?? unknownEm), 0);

/** The box that a label takes: from the tops of its capitals to the foot of its descenders. */
export function labelBox({ text, x, y, size, anchor, weight }: TextLabel): Box {
  const width = textWidth(text, size, weight);
  const left = anchor === "middle" ? x - width / 2 : anchor === "end" ? x - width : x;
  return { left, right: left + width, top: y - 0.76 * size, bottom: y + 0.22 * size };
}

/** Whether two boxes share more than an edge. */
export const boxesMeet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** The element of a label. */
export function labelNode(label: TextLabel): SvgNode {
  const { text, x, y, size, fill, anchor = "start", weight = "regular", halo } = label;
  const rim =
    halo === undefined
      ? {}
      : { stroke: halo, "stroke-width": size * 0.25, "stroke-linejoin": "round", "paint-order": "stroke" };
  return element(
    "text",
    { x, y, fill, "font-size": size, "font-weight": cssWeight[weight], "text-anchor": anchor, ...rim },
    [text],
  );
}

/** A label with its rim as a letter of its own behind it, for programs that paint a rim over the letter. */
export const rimmedLabel = ({ halo, ...label }: TextLabel): readonly SvgNode[] =>
  halo === undefined ? [labelNode(label)] : [labelNode({ ...label, fill: halo, halo }), labelNode(label)];
