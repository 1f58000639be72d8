import { type Block, comparedName, type FilmBlock, type PageModel } from "../pages/page-model.ts";
import { figureToPng } from "./figure-to-png.ts";
import { type FilmFiles, filmToPng } from "./film-to-png.ts";

/** A block that is a picture. */
export type PictureBlock = FilmBlock | Extract<Block, { kind: "figure" }>;

/** Where the kept films and the shipped fonts are. */
export interface ExportPlace {
  /** A kept film by its hash, or a picture of two films compared by {@link comparedName}. */
  readonly readFilm: (name: string) => Promise<Uint8Array>;
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
        ? await filmToPng(block, await filesOf(block, place), place.fontsFolder)
        : figureToPng(block.figure, figureWidthPx, place.fontsFolder);
    pictures.set(block, png);
  }
  progress(blocks.length, blocks.length);
  return pictures;
}

/** The film, and what stands in its place. */
async function filesOf({ hash, compared }: FilmBlock, place: ExportPlace): Promise<FilmFiles> {
  const film = await place.readFilm(hash);
  if (compared === undefined) return { film };
  return { film, inItsPlace: await place.readFilm(comparedName(compared)) };
}

/** Whether a block is a picture. */
export const isPicture = (block: Block): block is PictureBlock => block.kind === "film" || block.kind === "figure";

/** A picture's height over its width. */
export const proportionOf = (block: PictureBlock): number =>
  block.kind === "film" ? block.rows / block.columns : block.figure.heightPx / block.figure.widthPx;

/** What a picture says to somebody who can't see it. */
export const alternativeOf = (block: PictureBlock): string =>
  block.kind === "film" ? block.alternative : block.figure.alternative;
