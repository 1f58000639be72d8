import type { Block, FilmBlock, PageModel } from "../pages/page-model.ts";
import { figureToPng } from "./figure-to-png.ts";
import { filmToPng } from "./film-to-png.ts";

/** A block that is a picture. */
export type PictureBlock = FilmBlock | Extract<Block, { kind: "figure" }>;

/** Where the kept films and the shipped fonts are. */
export interface ExportPlace {
  readonly readFilm: (hash: string) => Promise<Uint8Array>;
  readonly fontsFolder: string;
}

/** Every picture of a document as a PNG, by its block. */
export type Pictures = ReadonlyMap<PictureBlock, Uint8Array>;

/** How wide a drawing is made, in pixels. */
const figureWidthPx = 1_800;

/** Makes the pictures of a document one by one, telling how many are done. */
export async function picturesOf(
  model: PageModel,
  place: ExportPlace,
  progress: (done: number, all: number) => void,
): Promise<Pictures> {
  const blocks = model.pages.flatMap((page) => page.blocks).filter(isPicture);
  const pictures = new Map<PictureBlock, Uint8Array>();
  for (const block of blocks) {
    progress(pictures.size, blocks.length);
    const png =
      block.kind === "film"
        ? await filmToPng(block, await place.readFilm(block.hash), place.fontsFolder)
        : figureToPng(block.figure, figureWidthPx, place.fontsFolder);
    pictures.set(block, png);
  }
  progress(blocks.length, blocks.length);
  return pictures;
}

/** Whether a block is a picture. */
export const isPicture = (block: Block): block is PictureBlock => block.kind === "film" || block.kind === "figure";

/** A picture's height over its width. */
export const proportionOf = (block: PictureBlock): number =>
  block.kind === "film" ? block.rows / block.columns : block.figure.heightPx / block.figure.widthPx;

/** What a picture says to somebody who can't see it. */
export const alternativeOf = (block: PictureBlock): string =>
  block.kind === "film" ? block.alternative : block.figure.alternative;
