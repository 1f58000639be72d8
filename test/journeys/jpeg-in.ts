import type { Page } from "playwright-core";
import type { IncisorFilm } from "./incisor-films.ts";

/** A film as a JPEG file of 8 bits, packed by the browser itself. */
export async function jpegIn(page: Page, { columns, rows, samples }: IncisorFilm): Promise<Uint8Array> {
  const grey = Buffer.from(samples.map((sample) => sample >> 8)).toString("base64");
  const packed = await page.evaluate(
    async ([text, width, height]) => {
      const levels = atob(text);
      const picture = new ImageData(width, height);
      for (let at = 0; at < levels.length; at += 1)
        picture.data.set([levels.charCodeAt(at), levels.charCodeAt(at), levels.charCodeAt(at), 255], 4 * at);
      const canvas = new OffscreenCanvas(width, height);
      canvas.getContext("2d")?.putImageData(picture, 0, 0);
      const blob = await canvas.convertToBlob({ type: "image/jpeg", quality: 0.95 });
      return Array.from(new Uint8Array(await blob.arrayBuffer()));
    },
    [grey, columns, rows] as const,
  );
  return Uint8Array.from(packed);
}
