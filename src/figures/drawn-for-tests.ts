import { expect } from "vitest";
import { type ToothFacts, teeth } from "../core/tooth/teeth.ts";
import { svgText } from "./svg-text.ts";
import type { Figure, SvgNode } from "./svg-tree.ts";
import { type Box, boxesMeet, labelBox, type TextWeight } from "./text-label.ts";

/** A tooth by its two digits. */
export function toothNamed(twoDigit: string): ToothFacts {
  const found = teeth.find((tooth) => tooth.twoDigit === twoDigit);
  if (found === undefined) throw new Error(twoDigit);
  return found;
}

/** An element with where it is drawn. */
interface Found {
  readonly node: SvgNode;
  readonly scale: number;
  readonly shift: { readonly x: number; readonly y: number };
}

/** Every element with the translation and scale of the groups round it. */
export function allNodes(node: SvgNode, scale = 1, shift = { x: 0, y: 0 }): Found[] {
  const [x = 0, y = 0, by = 1] = (String(node.attributes.transform ?? "").match(/-?[\d.]+/g) ?? []).map(Number);
  const own = { scale: scale * by, shift: { x: shift.x + x * scale, y: shift.y + y * scale } };
  const inner = node.children.flatMap((child) =>
    typeof child === "string" ? [] : allNodes(child, own.scale, own.shift),
  );
  return [{ node, ...own }, ...inner];
}

const weights: Record<number, TextWeight> = { 400: "regular", 500: "medium", 600: "semibold" };
/** Every label with the box that it takes in the view. */
export function labelsIn(figure: Figure): (Box & { readonly text: string })[] {
  return allNodes(figure.tree).flatMap(({ node, shift, scale }) => {
    if (node.tag !== "text") return [];
    const { x, y, "font-size": size, "text-anchor": anchor, "font-weight": weight } = node.attributes;
    const box = labelBox({
      text: String(node.children[0]),
      x: shift.x + Number(x) * scale,
      y: shift.y + Number(y) * scale,
      size: Number(size) * scale,
      fill: "",
      anchor: anchor as "start" | "middle" | "end",
      weight: weights[Number(weight)] ?? "regular",
    });
    return [{ ...box, text: String(node.children[0]) }];
  });
}

/** Boxes of the outline, the roots and the orifices: everything that a word must keep off. */
export function shapesIn(figure: Figure): Box[] {
  return allNodes(figure.tree).flatMap(({ node, shift, scale }) => {
    const part = node.attributes["data-part"];
    if (part !== "outline" && part !== "root") return [];
    const numbers = (String(node.attributes.d).match(/-?[\d.]+/g) ?? []).map(Number);
    const xs = numbers.filter((_, at) => at % 2 === 0).map((x) => shift.x + x * scale);
    const ys = numbers.filter((_, at) => at % 2 === 1).map((y) => shift.y + y * scale);
    return [{ left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) }];
  });
}

/** Holds a drawing to it that no word lies on another one or outside, and that every place in it is a number. */
export function expectClear(figure: Figure): void {
  const labels = labelsIn(figure);
  const [, , width = 0, height = 0] = String(figure.tree.attributes.viewBox).split(" ").map(Number);
  labels.forEach((label, at) => {
    for (const other of labels.slice(at + 1))
      expect(boxesMeet(label, other), `${label.text} on ${other.text}`).toBe(false);
    expect(label.left, label.text).toBeGreaterThanOrEqual(0);
    expect(label.right, label.text).toBeLessThanOrEqual(width);
    expect(label.top, label.text).toBeGreaterThanOrEqual(0);
    expect(label.bottom, label.text).toBeLessThanOrEqual(height);
  });
  expect(svgText(figure)).not.toMatch(/NaN|Infinity|undefined/);
}
