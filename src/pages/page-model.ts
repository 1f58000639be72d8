import type { Figure } from "../figures/svg-tree.ts";
import type { DocumentKind } from "../record/document-kind.ts";

/** A piece of text; one that is a computed number says which ledger entry and which place in its output it was read from. */
export interface Run {
  readonly text: string;
  readonly number?: NumberSource;
  /** Stands back: an interval, a unit, an aside. */
  readonly quiet?: boolean;
}

/** Where a printed number comes from. */
export interface NumberSource {
  readonly ledgerEntry: string;
  /** Path in the entry's output, as `intervals.lengthMm.low`. */
  readonly path: string;
}

/** A line of text, run by run. */
export type Line = readonly Run[];

/** A table of native text. */
export interface Table {
  readonly kind: "table";
  readonly caption: string;
  readonly columns: readonly {
    readonly head: string;
    readonly align: "left" | "right" /** Share of the width. */;
    readonly share: number;
  }[];
  readonly rows: readonly (readonly Line[])[];
}

/** A picture that a comparison made of two films, by the entry of the ledger that it belongs to. */
export interface ComparedPicture {
  readonly ledgerEntry: string;
  readonly picture: "aligned" | "difference";
}

/** The name under which whoever makes the document asks for such a picture; no film's hash has its form. */
export const comparedName = ({ ledgerEntry, picture }: ComparedPicture): string => `${ledgerEntry}/${picture}`;

/** The picture that such a name stands for; undefined for a film's hash. */
export function comparedPicture(name: string): ComparedPicture | undefined {
  const [ledgerEntry = "", picture] = name.split("/");
  return picture === "aligned" || picture === "difference" ? { ledgerEntry, picture } : undefined;
}

/** A film with what was drawn on it, in the film's own pixels. */
export interface FilmBlock {
  readonly kind: "film";
  readonly hash: string;
  readonly columns: number;
  readonly rows: number;
  /** A picture that a comparison made on this film's pixels, shown in its place and in its window. */
  readonly compared?: ComparedPicture;
  readonly window?: { readonly centre: number; readonly width: number; readonly invert: boolean };
  readonly overlay: Figure;
  readonly caption: Line;
  readonly alternative: string;
}

/** Room for a pen, on paper alone: sentences with a box to tick, then lines with a label each, or with none. */
export interface Blanks {
  readonly kind: "blanks";
  readonly ticks?: readonly string[];
  readonly labels: readonly string[];
}

/** What a page holds, in the order of reading. */
export type Block =
  | {
      readonly kind: "text";
      readonly heading?: string;
      readonly lines: readonly Line[];
      /** To be set small: lists of sources. */
      readonly dense?: boolean;
      /** Each line is a point of its own. */
      readonly points?: boolean;
    }
  | Table
  | Blanks
  | { readonly kind: "figure"; readonly figure: Figure; readonly caption: string }
  | FilmBlock;

/** One slide of a deck or one section of a document on paper. */
export interface Page {
  readonly title: string;
  readonly subtitle?: string;
  /** The day that it tells of, for the order of a deck; never printed. */
  readonly on: string;
  readonly blocks: readonly Block[];
  /** What is said beside the page: the numbers' formulas and sources. */
  readonly notes: readonly string[];
  /** What stands behind steps that the page tells of, by source id, or "common practice". */
  readonly stepSources?: readonly string[];
}

/** A document as data: everything that it says, and nothing of how it looks in one format. */
export interface PageModel {
  readonly as: DocumentKind;
  readonly title: string;
  /** One line that stands on every page: pseudonym, and "Demo: invented" where it is. */
  readonly mark: string;
  readonly demo: boolean;
  readonly emblem?: Figure;
  readonly pages: readonly Page[];
}

/** A plain line. */
export const says = (text: string): Line => [{ text }];

/** Every computed number that stands in a document, once for each place where it stands. */
export function numbersIn(model: Pick<PageModel, "pages">): { ledgerEntry: string; path: string; text: string }[] {
  return model.pages
    .flatMap((page) => page.blocks.flatMap(linesOf))
    .flatMap((line) => line.flatMap(({ text, number }) => (number === undefined ? [] : [{ ...number, text }])));
}

function linesOf(block: Block): readonly Line[] {
  if (block.kind === "text") return block.lines;
  if (block.kind === "table") return block.rows.flat();
  if (block.kind === "film") return [block.caption];
  return [];
}
