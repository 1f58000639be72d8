import type { Block, Page, PageModel, Table } from "../../pages/page-model.ts";
import { alternativeOf, isPicture, type PictureBlock, proportionOf } from "../pictures.ts";
import { escaped, lineText, quoted } from "./typst-text.ts";

/** A document model as typst source; pictures are named by nameOf, their files laid beside it. */
export function handoutSource(
  model: PageModel,
  nameOf: (block: PictureBlock) => string,
  emblem: string | undefined,
): string {
  return [preamble(model), head(model, emblem), ...model.pages.map((page) => section(page, nameOf))].join("\n\n");
}

const preamble = (model: PageModel): string => `#set document(title: ${quoted(model.title)}, author: (), date: none)
#set page(paper: "a4", margin: (x: 17mm, top: 16mm, bottom: 18mm), footer: context [#text(size: 7.5pt, fill: rgb("#5c554c"))[${escaped(model.mark)} #h(1fr) #counter(page).display("1 of 1", both: true)]])
#set text(font: "Inter", size: 8.8pt, fill: rgb("#24211d"), number-width: "tabular", lang: "en")
#set par(leading: 0.55em, spacing: 0.7em)
#set table(stroke: (x: none, y: 0.4pt + rgb("#b9b0a2")), inset: (x: 3pt, y: 3.4pt))
#show table.cell.where(y: 0): set text(size: 7.6pt, fill: rgb("#5c554c"))
#show heading.where(level: 1): it => block(below: 0.5em)[#text(size: 17pt, weight: "semibold")[#it.body]]
#show heading.where(level: 2): it => block(above: 1.1em, below: 0.55em, breakable: false)[#text(size: 10.5pt, weight: "semibold")[#it.body]]
#show heading.where(level: 3): it => block(above: 0.8em, below: 0.35em, breakable: false)[#text(size: 8.2pt, weight: "semibold", fill: rgb("#a6401b"))[#it.body]]
#let quiet(body) = text(fill: rgb("#5c554c"), body)`;

function head(model: PageModel, emblem: string | undefined): string {
  const title = `= ${escaped(model.title)}\n\n#quiet[${escaped(model.mark)}]`;
  if (emblem === undefined || model.emblem === undefined) return title;
  return `#grid(columns: (1fr, auto), align: (left + horizon, right + horizon), [${title}], image(${quoted(emblem)}, height: 24mm, alt: ${quoted(model.emblem.alternative)}))`;
}

/** A section: its picture at the left and the words beside it, or the words alone. */
function section(page: Page, nameOf: (block: PictureBlock) => string): string {
  const pictures = page.blocks.filter(isPicture);
  const words = page.blocks
    .filter((block) => !isPicture(block))
    .map(blockSource)
    .join("\n\n");
  const title = `== ${escaped(page.title)}${page.subtitle === undefined ? "" : ` #quiet[#text(weight: "regular", size: 8.8pt)[${escaped(page.subtitle)}]]`}`;
  if (pictures.length === 0) return `${title}\n\n${words}`;
  const [first] = pictures;
  if (pictures.length > 1) return `${title}\n\n${gallery(pictures, nameOf)}\n\n${words}`;
  const wide = first !== undefined && proportionOf(first) < 0.55;
  const drawn = pictures.map((block) => pictureSource(block, nameOf(block), wide ? "110mm" : "100%")).join("\n\n");
  if (wide || words === "") return `${title}\n\n${drawn}\n\n${words}`;
  return `#v(0.9em, weak: true)\n#block(breakable: false)[\n${title}\n\n#grid(columns: (66mm, 1fr), column-gutter: 6mm, [${drawn}], [${words}])\n]`;
}

/** Several pictures three to a row. */
function gallery(pictures: readonly PictureBlock[], nameOf: (block: PictureBlock) => string): string {
  const cells = pictures.map((block) => `block(breakable: false)[${pictureSource(block, nameOf(block), "100%")}]`);
  return `#grid(columns: (1fr, 1fr, 1fr), column-gutter: 4mm, row-gutter: 4mm, ${cells.join(", ")})`;
}

function pictureSource(block: PictureBlock, name: string, width: string): string {
  const caption = block.kind === "film" ? lineText(block.caption) : escaped(block.caption);
  const under = caption === "" ? "" : `\n#block(above: 0.5em)[#text(size: 7.4pt)[#quiet[${caption}]]]`;
  return `#block[#image(${quoted(name)}, width: ${width}, alt: ${quoted(alternativeOf(block))})]${under}`;
}

function blockSource(block: Block): string {
  if (block.kind === "table") return tableSource(block);
  if (block.kind !== "text") return "";
  const heading = block.heading === undefined ? "" : `=== ${escaped(block.heading)}\n\n`;
  const lines = block.lines.map(lineText).join("\n\n");
  return block.dense === true ? `${heading}#text(size: 7.4pt)[${lines}]` : heading + lines;
}

/** A table of up to this many rows stays on one page. */
const rowsKeptTogether = 12;

function tableSource({ caption, columns, rows }: Table): string {
  const widths = columns.map(({ share }) => `${Math.round(share * 1000)}fr`).join(", ");
  const aligns = columns.map(({ align }) => align).join(", ");
  const headRow = columns.map(({ head: text }) => `[${escaped(text)}]`).join(", ");
  const body = rows.map((row) => row.map((cell) => `[${lineText(cell)}]`).join(", ")).join(",\n");
  const whole = rows.length <= rowsKeptTogether;
  return `#block(breakable: ${!whole})[\n#block(below: 0.3em, sticky: true)[#text(size: 7.6pt)[#quiet[${escaped(caption)}]]]\n#table(columns: (${widths}), align: (${aligns},), table.header(${headRow}),\n${body})\n]`;
}
