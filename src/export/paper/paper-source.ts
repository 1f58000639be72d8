import type { Block, Line, Page, PageModel, Table } from "../../pages/page-model.ts";
import { alternativeOf, isPicture, type PictureBlock, proportionOf } from "../pictures.ts";
import { blanks } from "./blanks.ts";
import type { PaperLook } from "./paper-look.ts";
import { escaped, lineText, quoted } from "./typst-text.ts";

/** How a document is set: its sizes, and what the file of each picture is called. */
export interface PaperSetting {
  readonly look: PaperLook;
  readonly nameOf: (block: PictureBlock) => string;
}

/** A document model as typst source; the pictures' files lie beside it. */
export function paperSource(model: PageModel, setting: PaperSetting): string {
  const sections = model.pages.map((page) => section(page, setting));
  return [preamble(model, setting.look), head(model), ...sections].join("\n\n");
}

const preamble = (
  model: PageModel,
  look: PaperLook,
): string => `#set document(title: ${quoted(model.title)}, author: (), date: none)
#set page(paper: "a4", margin: (x: 15mm, top: 13mm, bottom: 15mm), footer-descent: 25%, footer: context [#text(size: ${look.footer}pt, fill: rgb("#5c554c"))[${escaped(model.mark)} #h(1fr) #counter(page).display("1 of 1", both: true)]])
#set text(font: "Inter", size: ${look.body}pt, fill: rgb("#24211d"), number-width: "tabular", lang: "en")
#set par(leading: ${look.leading}em, spacing: ${look.spacing}em)
#set table(stroke: (x: none, y: 0.4pt + rgb("#b9b0a2")), inset: (x: 2.5pt, y: 2.7pt))
#show table: set text(size: 7.8pt)
#show table.cell.where(y: 0): set text(size: 7.2pt, fill: rgb("#5c554c"))
#show heading.where(level: 1): it => block(below: 0.5em)[#text(size: ${look.title}pt, weight: "semibold")[#it.body]]
#show heading.where(level: 2): it => block(above: 1.1em, below: 0.6em, breakable: false)[#text(size: ${look.section}pt, weight: "semibold")[#it.body]]
#show heading.where(level: 3): it => block(above: 0.8em, below: 0.45em, breakable: false)[#text(size: ${look.heading}pt, weight: "semibold", fill: rgb("#a6401b"))[#it.body]]
#let quiet(body) = text(size: ${look.quietEm}em, fill: rgb("#5c554c"), body)`;

const head = (model: PageModel): string => `= ${escaped(model.title)}\n\n#quiet[${escaped(model.mark)}]`;

/** A section: a drawing at the right of its words, one film at their left, several films side by side above them. */
function section(page: Page, { look, nameOf }: PaperSetting): string {
  const pictures = page.blocks.filter(isPicture);
  const words = page.blocks
    .filter((block) => !isPicture(block))
    .map((block) => blockSource(block))
    .join("\n\n");
  const title =
    page.title === ""
      ? "#v(1em)"
      : `== ${escaped(page.title)}${page.subtitle === undefined ? "" : ` #quiet[#text(weight: "regular", size: ${look.body}pt)[${escaped(page.subtitle)}]]`}`;
  const [first] = pictures;
  // What is signed stands on one page with its lines.
  if (page.blocks.some(({ kind }) => kind === "blanks"))
    return `#block(breakable: false, above: 1.2em)[\n${title}\n\n${words}\n]`;
  if (first === undefined) return `${title}\n\n${words}`;
  if (pictures.length === 2 && words !== "") return `${title}\n\n${besideWords(pictures, words, { look, nameOf })}`;
  if (pictures.length > 1) return `${title}\n\n${gallery(pictures, { look, nameOf })}\n\n${words}`;
  const wide = proportionOf(first) < 0.55;
  const drawn = pictureSource(first, { look, nameOf }, words === "" && wide ? "110mm" : "100%");
  if (words === "") return `${title}\n\n${drawn}`;
  const cells = wide
    ? `(1fr, ${look.wideMm}mm), column-gutter: 6mm, [${words}], [${drawn}]`
    : `(${look.besideMm}mm, 1fr), column-gutter: 6mm, [${drawn}], [${words}]`;
  return `#v(0.9em, weak: true)\n#block(breakable: false)[\n${title}\n\n#grid(columns: ${cells})\n]`;
}

/** Two pictures and the words to them, side by side. */
function besideWords(pictures: readonly PictureBlock[], words: string, setting: PaperSetting): string {
  const cells = pictures.map((block) => `[${pictureSource(block, setting, "100%")}]`);
  return `#grid(columns: (1fr, 1fr, 1.3fr), column-gutter: 5mm, ${cells.join(", ")}, [${words}])`;
}

/** Several pictures, four to a row, or three where there are no more. */
function gallery(pictures: readonly PictureBlock[], setting: PaperSetting): string {
  const cells = pictures.map((block) => `block(breakable: false)[${pictureSource(block, setting, "100%")}]`);
  // Five stand in one row rather than one alone in a second.
  const across = pictures.length === 5 ? 5 : Math.min(4, Math.max(3, pictures.length));
  const columns = `(${Array.from({ length: across }, () => "1fr").join(", ")})`;
  return `#grid(columns: ${columns}, column-gutter: 3.5mm, row-gutter: 3mm, ${cells.join(", ")})`;
}

function pictureSource(block: PictureBlock, { look, nameOf }: PaperSetting, width: string): string {
  const caption = block.kind === "film" ? lineText(block.caption) : escaped(block.caption);
  const under = caption === "" ? "" : `\n#block(above: 0.4em)[#text(size: ${look.caption}pt)[#quiet[${caption}]]]`;
  return `#block[#image(${quoted(nameOf(block))}, width: ${width}, alt: ${quoted(alternativeOf(block))})]${under}`;
}

function blockSource(block: Block): string {
  if (block.kind === "table") return tableSource(block);
  if (block.kind === "blanks") return blanks(block);
  if (block.kind !== "text") return "";
  const heading = block.heading === undefined ? "" : `=== ${escaped(block.heading)}\n\n`;
  if (block.dense === true) return heading + inColumns(block.lines);
  if (block.points === true) return heading + inPoints(block.lines);
  return heading + block.lines.map(lineText).join("\n\n");
}

/** Lines one under the other, each with its point. */
const inPoints = (lines: readonly Line[]): string => `#list(${lines.map((line) => `[${lineText(line)}]`).join(", ")})`;

/** Small lines in three columns of about the same height. */
function inColumns(lines: readonly Line[]): string {
  const lengths = lines.map((line) => line.reduce((sum, { text }) => sum + text.length, 0));
  const whole = lengths.reduce((sum, length) => sum + length, 0);
  const columnOf = (index: number): number => {
    const middle = lengths.slice(0, index).reduce((sum, length) => sum + length, 0) + (lengths[index] ?? 0) / 2;
    return Math.min(2, Math.floor((3 * middle) / whole));
  };
  const columns = [0, 1, 2].map((column) => lines.filter((_, index) => columnOf(index) === column));
  const cells = columns.map((part) => `[#set par(leading: 0.4em, spacing: 0.5em)\n${part.map(lineText).join("\n\n")}]`);
  return `#text(size: 6.2pt)[#grid(columns: (1fr, 1fr, 1fr), column-gutter: 4mm, ${cells.join(", ")})]`;
}

/** A table of up to this many rows stays on one page. */
const rowsKeptTogether = 12;

/** One of more letters than this, as of recalls with their notes, may go on over the page. */
const lettersKeptTogether = 600;

function tableSource({ caption, columns, rows }: Table): string {
  const widths = columns.map(({ share }) => `${Math.round(share * 1000)}fr`).join(", ");
  const aligns = columns.map(({ align }) => align).join(", ");
  const headRow = columns.map(({ head: text }) => `[${escaped(text)}]`).join(", ");
  const body = rows.map((row) => row.map((cell) => `[${lineText(cell)}]`).join(", ")).join(",\n");
  const letters = rows.flat(2).reduce((sum, { text }) => sum + text.length, 0);
  const whole = rows.length <= rowsKeptTogether && letters <= lettersKeptTogether;
  return `#block(breakable: ${!whole})[\n#block(below: 0.3em, sticky: true)[#text(size: 7.6pt)[#quiet[${escaped(caption)}]]]\n#table(columns: (${widths}), align: (${aligns},), table.header(${headRow}),\n${body})\n]`;
}
