import PptxGenJS from "pptxgenjs";
import type { Line, PageModel } from "../../pages/page-model.ts";
import { alternativeOf, type PictureBlock, type Pictures } from "../pictures.ts";
import { afterTableIn, leadIn } from "./fill-columns.ts";
import { captionIn, headRowIn, plain, sizes, type Unit } from "./slide-units.ts";
import { type Box, captionBox, type Slide, slideSize, slidesOf } from "./slides-of.ts";

/** A face that every office program has or replaces by one of the same widths, so that the layout holds. */
const face = "Arial";
const ink = "24211D";
const quiet = "5C554C";
const accent = "A6401B";
const paper = "FAF8F3";
const hairline = "B9B0A2";

type PptxSlide = ReturnType<PptxGenJS["addSlide"]>;

/** A document model as a PPTX deck: masters in place, native text and tables, pictures with alternative text, notes. */
export async function writeDeck(
  model: PageModel,
  pictures: Pictures,
  emblem: Uint8Array | undefined,
): Promise<Uint8Array> {
  const deck = new PptxGenJS();
  deck.defineLayout({ name: "WIDE", width: slideSize.w, height: slideSize.h });
  deck.layout = "WIDE";
  deck.title = model.title;
  deck.author = "";
  deck.company = "";
  deck.theme = { headFontFace: face, bodyFontFace: face };
  defineMasters(deck, model);
  addTitle(deck, model, emblem);
  for (const page of model.pages) for (const slide of slidesOf(page)) addPage(deck, slide, pictures);
  const written = await deck.write({ outputType: "uint8array", compression: true });
  if (written instanceof Uint8Array) return written;
  throw new TypeError("the deck came in another form than bytes");
}

function defineMasters(deck: PptxGenJS, model: PageModel): void {
  const foot = {
    x: 0.65,
    y: 7.02,
    w: 10,
    h: 0.3,
    fontSize: sizes.footer,
    color: quiet,
    fontFace: face,
    margin: 0,
  } as const;
  const number = {
    x: 12.1,
    y: 7.02,
    w: 0.6,
    h: 0.3,
    fontSize: sizes.footer,
    color: quiet,
    fontFace: face,
    align: "right",
  } as const;
  const mark = { text: { text: model.mark, options: foot } };
  const rule = { line: { x: 0.65, y: 6.95, w: 12.03, h: 0, line: { color: hairline, width: 0.5 } } };
  deck.defineSlideMaster({ title: "Opening", background: { color: paper }, objects: [mark] });
  deck.defineSlideMaster({ title: "Page", background: { color: paper }, objects: [rule, mark], slideNumber: number });
}

function addTitle(deck: PptxGenJS, model: PageModel, emblem: Uint8Array | undefined): void {
  const slide = deck.addSlide({ masterName: "Opening" });
  const words = { x: 0.65, w: 12.03, fontFace: face, color: ink, margin: 0, valign: "top" } as const;
  slide.addText(model.title, { ...words, y: 0.9, h: 1.3, fontSize: 36, bold: true, objectName: "Title" });
  if (emblem === undefined || model.emblem === undefined) return;
  const proportion = model.emblem.heightPx / model.emblem.widthPx;
  const w = Math.min(11, 4 / proportion);
  slide.addImage({ data: dataOf(emblem), x: 0.65, y: 2.6, w, h: w * proportion, altText: model.emblem.alternative });
}

function addPage(deck: PptxGenJS, page: Slide, pictures: Pictures): void {
  const slide = deck.addSlide({ masterName: "Page" });
  slide.addText(page.title, {
    x: 0.65,
    y: 0.4,
    w: 12.03,
    h: 0.5,
    fontSize: sizes.title,
    bold: true,
    color: ink,
    fontFace: face,
    margin: 0,
    objectName: "Title",
  });
  if (page.subtitle !== undefined)
    slide.addText(page.subtitle, {
      x: 0.65,
      y: 0.94,
      w: 12.03,
      h: 0.32,
      fontSize: sizes.subtitle,
      color: quiet,
      fontFace: face,
      margin: 0,
    });
  for (const { block, box } of page.pictures) addPicture(slide, { block, box, png: pictures.get(block) });
  addUnits(slide, page);
  if (page.notes.length > 0) slide.addNotes(page.notes.join("\n"));
}

function addPicture(slide: PptxSlide, picture: { block: PictureBlock; box: Box; png: Uint8Array | undefined }): void {
  const { block, box, png } = picture;
  if (png === undefined) return;
  slide.addImage({ data: dataOf(png), ...box, altText: alternativeOf(block) });
  const caption = block.kind === "film" ? plain(block.caption) : block.caption;
  if (caption !== "")
    slide.addText(caption, {
      ...captionBox(box),
      fontSize: sizes.caption,
      color: quiet,
      fontFace: face,
      margin: 0,
      valign: "top",
    });
}

/** Units one under the other: lines and headings as text boxes, rows of one table together as a table. */
function addUnits(slide: PptxSlide, { column, units }: Slide): void {
  let y = column.y;
  for (let at = 0; at < units.length; ) {
    const unit = units[at];
    if (unit === undefined) return;
    const run = runFrom(units, at);
    const height = run.reduce((sum, one, index) => sum + one.heightIn + leadIn(one, run[index - 1]), 0);
    // A table's head lies inside its own box; air under a table lies above what follows.
    if (units[at - 1]?.kind === "row") y += afterTableIn;
    const box = { x: column.x, y, w: column.w, h: height };
    if (unit.kind === "row") addTable(slide, run, box);
    else addWords(slide, run, box);
    y += height;
    at += run.length;
  }
}

/** The units from a place on that go into one object: rows of the same table, or words up to the next table. */
function runFrom(units: readonly Unit[], from: number): Unit[] {
  const first = units[from];
  const same = (unit: Unit): boolean =>
    first?.kind === "row" ? unit.kind === "row" && unit.table === first.table : unit.kind !== "row";
  const after = units.slice(from).findIndex((unit) => !same(unit));
  return units.slice(from, after === -1 ? undefined : from + after);
}

function addWords(slide: PptxSlide, run: readonly Unit[], box: Box): void {
  const runs = run.flatMap((unit): PptxGenJS.TextProps[] => {
    if (unit.kind === "heading")
      return [
        {
          text: unit.text,
          options: { fontSize: unit.sizePt, bold: true, color: accent, breakLine: true, paraSpaceBefore: 5 },
        },
      ];
    return unit.kind === "line" ? textRuns(unit.line, unit.sizePt, true) : [];
  });
  slide.addText(runs, { ...box, fontFace: face, margin: 0, valign: "top", paraSpaceAfter: 5 });
}

function textRuns(line: Line, size: number, breaks: boolean): PptxGenJS.TextProps[] {
  const runs = line.length === 0 ? [{ text: "" }] : line;
  return runs.map((run, at) => ({
    text: run.text,
    options: {
      fontSize: size,
      color: "quiet" in run && run.quiet === true ? quiet : ink,
      ...(breaks && at === runs.length - 1 ? { breakLine: true } : {}),
    },
  }));
}

function addTable(slide: PptxSlide, run: readonly Unit[], box: Box): void {
  const rows = run.filter((unit) => unit.kind === "row");
  const [first] = rows;
  if (first === undefined) return;
  const { columns, caption } = first.table;
  slide.addText(caption, {
    ...box,
    h: 0.26,
    fontSize: sizes.caption,
    color: quiet,
    fontFace: face,
    margin: 0,
    valign: "top",
  });
  const border = [
    { type: "none" },
    { type: "none" },
    { type: "solid", color: hairline, pt: 0.5 },
    { type: "none" },
  ] as PptxGenJS.TableCellProps["border"];
  const head = columns.map(({ head: text, align }) => ({
    text,
    options: { bold: true, color: quiet, align, ...(border === undefined ? {} : { border }) },
  }));
  const body = rows.map(({ row }) =>
    row.map((cell, at) => ({
      text: textRuns(cell, first.sizePt, false),
      options: { align: columns[at]?.align ?? "left", ...(border === undefined ? {} : { border }) },
    })),
  );
  const total = columns.reduce((sum, { share }) => sum + share, 0);
  slide.addTable([head, ...body] as PptxGenJS.TableRow[], {
    x: box.x,
    y: box.y + captionIn,
    w: box.w,
    colW: columns.map(({ share }) => (share / total) * box.w),
    rowH: [headRowIn(first), ...rows.map(({ heightIn }) => heightIn)],
    fontSize: first.sizePt,
    fontFace: face,
    color: ink,
    margin: [0.05, 0.08, 0.05, 0.02],
    valign: "top",
  });
}

const dataOf = (png: Uint8Array): string => `image/png;base64,${Buffer.from(png).toString("base64")}`;
