import { svgText } from "../figures/svg-text.ts";
import { windowOf } from "../imaging/auto-window.ts";
import { decodeFilm } from "../imaging/decode-film.ts";
import type { FilmWindow } from "../imaging/film-pixels.ts";
import { encodePreview, previewOf } from "../imaging/preview.ts";
import type { FilmBlock } from "../pages/page-model.ts";
import { svgToPng } from "./figure-to-png.ts";

/** How wide a film stands in a document, in pixels; more than a projector shows of it. */
const widthPx = 1_400;

/** The bytes of a kept film, and of a picture on its pixels that is shown in its place and in its window. */
export interface FilmFiles {
  readonly film: Uint8Array;
  readonly inItsPlace?: Uint8Array;
}

/** A film with its drawn measures as one PNG. Takes the film's files and the block that shows it. */
export async function filmToPng(block: FilmBlock, files: FilmFiles, fontsFolder: string): Promise<Uint8Array> {
  const film = await decodeFilm(files.inItsPlace ?? files.film, "the kept film");
  const window = await windowFor(block, files);
  const shown = previewOf(film, {
    maxSide: Math.max(widthPx, Math.round((widthPx * film.rows) / film.columns)),
    ...window,
  });
  const grey = block.window?.invert === true ? { ...shown, grey: shown.grey.map((level) => 255 - level) } : shown;
  const picture = Buffer.from(encodePreview(grey)).toString("base64");
  const { columns, rows } = block;
  const overlay = svgText(block.overlay).replace(/^<\?xml[^>]*\?>/, "");
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 ${columns} ${rows}" width="${columns}" height="${rows}"><image x="0" y="0" width="${columns}" height="${rows}" xlink:href="data:image/png;base64,${picture}"/>${placed(overlay, columns, rows)}</svg>`;
  return svgToPng(svg, Math.min(widthPx, Math.max(700, columns)), fontsFolder);
}

/** The window that a person set; a picture in the film's place takes the film's own, so that both look alike. */
async function windowFor({ window }: FilmBlock, { film, inItsPlace }: FilmFiles): Promise<{ window?: FilmWindow }> {
  if (window !== undefined) return { window: { center: window.centre, width: window.width, function: "linear" } };
  return inItsPlace === undefined ? {} : { window: windowOf(await decodeFilm(film, "the kept film")) };
}

/** The overlay's own root, laid exactly over the film. */
const placed = (overlay: string, columns: number, rows: number): string =>
  overlay.replace(
    /<svg([^>]*)>/,
    (_all, attributes: string) =>
      `<svg${attributes.replace(/\s(width|height)="[^"]*"/g, "")} x="0" y="0" width="${columns}" height="${rows}">`,
  );
