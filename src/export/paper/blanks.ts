import type { Blanks } from "../../pages/page-model.ts";
import { escaped } from "./typst-text.ts";

/** Room to write over a line, as handwriting needs it. */
const lineMm = 8.5;

/** Boxes to tick, and lines to write on: two to a row with their labels under them, without labels across the page. */
export function blanks({ ticks = [], labels }: Blanks): string {
  const boxes = ticks.map((says) => `#block[${box} #h(2mm) ${escaped(says)}]`);
  const cells = labels.map((label) =>
    label === "" ? `grid.cell(colspan: 2)[${rule}]` : `[${rule}\n#block(above: 0.35em)[${escaped(label)}]]`,
  );
  const grid = `#grid(columns: (1fr, 1fr), column-gutter: 8mm, row-gutter: 1mm, ${cells.join(", ")})`;
  return `#block(breakable: false)[\n${[...boxes, ...(cells.length > 0 ? [grid] : [])].join("\n")}\n]`;
}

const ink = `0.7pt + rgb("#24211d")`;
const rule = `#v(${lineMm}mm, weak: false)\n#line(length: 100%, stroke: ${ink})`;
const box = `#box(width: 3.6mm, height: 3.6mm, stroke: ${ink}, baseline: 0.4mm)`;
