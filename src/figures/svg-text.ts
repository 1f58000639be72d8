import { element, type Figure, numberText, type SvgNode } from "./svg-tree.ts";

/**
 * A drawing as the text of an SVG file, with its alternative as title and description.
 * The same drawing always gives the same text.
 */
export function svgText(figure: Figure): string {
  const [title = "", ...rest] = figure.alternative.split(/(?<=[.:]) /);
  const described = rest.length === 0 ? [] : [element("desc", {}, [rest.join(" ")])];
  const { tag, attributes, children } = figure.tree;
  const named = element(tag, { ...attributes, role: "img" }, [
    element("title", {}, [title]),
    ...described,
    ...children,
  ]);
  return nodeText(named);
}

function nodeText(node: SvgNode | string): string {
  if (typeof node === "string") return escaped(node);
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${typeof value === "number" ? numberText(value) : escaped(value)}"`)
    .join("");
  if (node.children.length === 0) return `<${node.tag}${attributes}/>`;
  return `<${node.tag}${attributes}>${node.children.map(nodeText).join("")}</${node.tag}>`;
}

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

const escaped = (text: string): string =>
  [...text]
    .filter(isKnownToXml)
    .map((sign) => entities[sign] ?? sign)
    .join("");

/** XML 1.0 has no form at all for most control signs and for halves of surrogate pairs. */
function isKnownToXml(sign: string): boolean {
  const code = sign.codePointAt(0) ?? 0;
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
  return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
}
