import { strFromU8, unzipSync } from "fflate";

/** A picture on a slide. */
export interface DeckPicture {
  readonly alternative: string;
  readonly bytes: Uint8Array;
}

/** A slide as somebody reads it who opens the file. */
export interface DeckSlide {
  /** Every text box, in order; a paragraph a line. */
  readonly texts: readonly string[];
  /** Every table: rows of cells. */
  readonly tables: readonly (readonly (readonly string[])[])[];
  readonly pictures: readonly DeckPicture[];
  readonly notes: string;
  /** Placeholders that nothing was put into. */
  readonly emptyPlaceholders: number;
}

/** Reads a PPTX file back: its slides in their order. */
export function readDeck(bytes: Uint8Array): DeckSlide[] {
  const files = unzipSync(bytes);
  const text = (path: string): string => strFromU8(files[path] ?? new Uint8Array());
  const order = relations(text("ppt/_rels/presentation.xml.rels"));
  const ids = [...text("ppt/presentation.xml").matchAll(/<p:sldId [^>]*r:id="([^"]+)"/g)].map(([, id = ""]) => id);
  return ids.map((id) => {
    const path = `ppt/${order.get(id) ?? ""}`;
    const related = relations(text(path.replace("slides/", "slides/_rels/").concat(".rels")));
    const inside = (target: string | undefined): string => `ppt/${(target ?? "").replace("../", "")}`;
    const notes = [...related.values()].find((target) => target.includes("notesSlide"));
    return slideOf(text(path), {
      media: (relation) => files[inside(related.get(relation))] ?? new Uint8Array(),
      notes: notes === undefined ? "" : notesOf(text(inside(notes))),
    });
  });
}

/** All words of a slide, as one text. */
export const wordsOf = ({ texts, tables }: DeckSlide): string => [...texts, ...tables.flat(2)].join("\n");

function slideOf(xml: string, around: { media: (relation: string) => Uint8Array; notes: string }): DeckSlide {
  const shapes = blocks(xml, "p:sp");
  const tables = blocks(xml, "a:tbl").map((table) =>
    blocks(table, "a:tr").map((row) => blocks(row, "a:tc").map(paragraphs)),
  );
  const pictures = blocks(xml, "p:pic").map((picture) => ({
    alternative: unescaped(/<p:cNvPr [^>]*descr="([^"]*)"/.exec(picture)?.[1] ?? ""),
    bytes: around.media(/r:embed="([^"]+)"/.exec(picture)?.[1] ?? ""),
  }));
  const placeholders = shapes.filter((shape) => shape.includes("<p:ph"));
  return {
    texts: shapes.filter((shape) => !shape.includes("<p:ph")).map(paragraphs),
    ...{ tables, pictures, notes: around.notes },
    emptyPlaceholders: placeholders.filter((shape) => !/<a:(t|fld)[ >]/.test(shape)).length,
  };
}

/** Elements of a name with what is in them; such elements never hold one another here. */
const blocks = (xml: string, name: string): string[] =>
  [...xml.matchAll(new RegExp(`<${name}(?: [^>]*)?>.*?</${name}>`, "gs"))].map(([whole]) => whole);

const paragraphs = (xml: string): string =>
  blocks(xml, "a:p")
    .map((paragraph) => [...paragraph.matchAll(/<a:t>([^<]*)<\/a:t>/g)].map(([, run = ""]) => unescaped(run)).join(""))
    .join("\n");

const notesOf = (xml: string): string =>
  blocks(xml, "p:sp")
    .filter((shape) => shape.includes('type="body"'))
    .map(paragraphs)
    .join("\n");

const relations = (xml: string): Map<string, string> =>
  new Map(
    [...xml.matchAll(/<Relationship [^>]*>/g)].map(([one]) => [
      /Id="([^"]+)"/.exec(one)?.[1] ?? "",
      /Target="([^"]+)"/.exec(one)?.[1] ?? "",
    ]),
  );

const unescaped = (text: string): string =>
  text
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&apos;", "'")
    .replaceAll("&amp;", "&");
