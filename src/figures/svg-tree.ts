/** One element of a drawing. Attributes carry their SVG names; a number is written in the fewest digits that matter. */
export interface SvgNode {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly (SvgNode | string)[];
}

/** A drawing with the text that stands for it, and the size that it is meant for. */
export interface Figure {
  /** The root `svg` with its viewBox. */
  readonly tree: SvgNode;
  /** What the drawing says, in words; its first sentence is the title. */
  readonly alternative: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The family of every text in a drawing; its files are in data/fonts. */
const fontFamily = "Inter";

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element; attributes that are undefined are left out. */
export function element(tag: string, attributes: Attributes, children: readonly (SvgNode | string)[] = []): SvgNode {
  const kept = Object.entries(attributes).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]]));
  return { tag, attributes: Object.fromEntries(kept), children };
}

/** A group. */
export const group = (attributes: Attributes, children: readonly (SvgNode | string)[]): SvgNode =>
  element("g", attributes, children);

/** A drawing from its contents: the view is the box that they were drawn in, the size the one that it is shown at. */
export function figureOf(
  view: { readonly width: number; readonly height: number },
  widthPx: number,
  alternative: string,
  children: readonly SvgNode[],
): Figure {
  const heightPx = Math.round((widthPx * view.height) / view.width);
  const viewBox = `0 0 ${numberText(view.width)} ${numberText(view.height)}`;
  const tree = element(
    "svg",
    { xmlns: "http://www.w3.org/2000/svg", viewBox, width: widthPx, height: heightPx, "font-family": fontFamily },
    children,
  );
  return { tree, alternative, widthPx, heightPx };
}

/** A point of a drawing, in the units of its view. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Path data through points, straight from one to the next; closed if asked. */
export const pathThrough = (spots: readonly Spot[], closed = false): string =>
  spots.map(({ x, y }, at) => `${at === 0 ? "M" : "L"}${numberText(x)} ${numberText(y)}`).join("") +
  (closed ? "Z" : "");

/** A smooth closed path through points: a cubic between each two, its slope that of the chord over the neighbours. */
export function smoothClosedPath(spots: readonly Spot[]): string {
  const at = (index: number): Spot => spots[(index + spots.length) % spots.length] ?? { x: 0, y: 0 };
  const pieces = spots.map((from, index) => {
    const to = at(index + 1);
    const before = at(index - 1);
    const after = at(index + 2);
    const first = { x: from.x + (to.x - before.x) / 6, y: from.y + (to.y - before.y) / 6 };
    const second = { x: to.x - (after.x - from.x) / 6, y: to.y - (after.y - from.y) / 6 };
    return `C${[first, second, to].map(({ x, y }) => `${numberText(x)} ${numberText(y)}`).join(" ")}`;
  });
  return `M${numberText(at(0).x)} ${numberText(at(0).y)}${pieces.join("")}Z`;
}

/** A number in at most two decimals, without a trailing zero. */
export const numberText = (value: number): string => String(Math.round(value * 100) / 100 || 0);
