import { svgText } from "../figures/svg-text.ts";
import { decodeFilm } from "../imaging/decode-film.ts";
import { encodePreview, previewOf } from "../imaging/preview.ts";
import type { FilmBlock } from "../pages/page-model.ts";
import { svgToPng } from "./figure-to-png.ts";

/** How wide a film stands in a document, in pixels; more than a projector shows of it. */
const widthPx = 1_400;

/** A film with its drawn measures as one PNG. Takes the kept film's bytes and the block that shows it. */
export async function filmToPng(block: FilmBlock, bytes: Uint8Array, fontsFolder: string): Promise<Uint8Array> {
  const film = await decodeFilm(bytes, "the kept film");
  const window =
    block.window === undefined
      ? {}
      : { window: { center: block.window.centre, width: block.window.width, function: "linear" as const } };
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

/** The overlay's own root, laid exactly over the film. */
const placed = (overlay: string, columns: number, rows: number): string =>
  overlay.replace(
    /<svg([^>]*)>/,
    (_all, attributes: string) =>
      `<svg${attributes.replace(/\s(width|height)="[^"]*"/g, "")} x="0" y="0" width="${columns}" height="${rows}">`,
  );
