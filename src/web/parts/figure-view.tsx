import { createElement, Fragment, type ReactNode } from "react";
import type { Figure, SvgNode } from "../../figures/svg-tree.ts";
import "./figure-view.css";

/** Mounts a drawing of src/figures as it stands: the same tree that a document embeds, with its text alternative. */
export function FigureView({ figure }: { readonly figure: Figure }) {
  const { tree, alternative } = figure;
  return createElement(
    tree.tag,
    { ...reactAttributes(tree), role: "img", "aria-label": alternative, className: "figure-view" },
    ...tree.children.map(mounted),
  );
}

/** Parts of a drawing, mounted into one that stands already. */
export const DrawnNodes = ({ nodes }: { readonly nodes: readonly SvgNode[] }) =>
  createElement(Fragment, {}, ...nodes.map(mounted));

function mounted(node: SvgNode | string): ReactNode {
  return typeof node === "string"
    ? node
    : createElement(node.tag, reactAttributes(node), ...node.children.map(mounted));
}

const reactAttributes = ({ attributes }: SvgNode) =>
  Object.fromEntries(Object.entries(attributes).map(([name, value]) => [reactName(name), value]));

/** stroke-width becomes strokeWidth; aria- and data- names stay as they are. */
function reactName(name: string): string {
  if (name === "class") return "className";
  if (name.startsWith("aria-") || name.startsWith("data-")) return name;
  return name.replace(/[-:]([a-z])/g, (_, letter: string) => letter.toUpperCase());
}
