import { readdirSync } from "node:fs";
import { join } from "node:path";
import { Resvg } from "@resvg/resvg-js";
import { svgText } from "../figures/svg-text.ts";
import type { Figure } from "../figures/svg-tree.ts";

/** A drawing as a PNG of a width in pixels, set in the shipped fonts alone. */
export function figureToPng(figure: Figure, widthPx: number, fontsFolder: string): Uint8Array {
  return svgToPng(svgText(figure), widthPx, fontsFolder);
}

/** An SVG text as a PNG; no font of the machine is looked at. */
export function svgToPng(svg: string, widthPx: number, fontsFolder: string): Uint8Array {
  const font = { fontFiles: fontFilesIn(fontsFolder), loadSystemFonts: false, defaultFontFamily: "Inter" };
  return new Resvg(svg, { font, fitTo: { mode: "width", value: widthPx } }).render().asPng();
}

/** The font files that ship with the program. */
const fontFilesIn = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".otf"))
    .sort()
    .map((name) => join(folder, name));
