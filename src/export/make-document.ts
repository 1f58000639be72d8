import { Refusal } from "../core/refusal.ts";
import type { PageModel } from "../pages/page-model.ts";
import { writeDeck } from "./deck/write-deck.ts";
import { figureToPng } from "./figure-to-png.ts";
import { writePaper } from "./paper/write-paper.ts";
import { type ExportPlace, picturesOf } from "./pictures.ts";

/** Tells how far the document is: a fraction of 1 and a line of words. */
export type ExportProgress = (fraction: number, says: string) => void;

/** Makes a document: see {@link makeDocument}. */
export type MakeDocument = typeof makeDocument;

const lastStep = {
  deck: "Writing the deck",
  handout: "Setting the hand-out",
  consent: "Setting the consent page",
  piece: "Setting the page about the piece",
  letter: "Setting the letter",
} as const;

/**
 * A document model as the bytes of its file: a deck as PPTX, everything on paper as PDF.
 * @throws Refusal `export.failed` when a writer fails; nothing is kept then
 */
export async function makeDocument(
  model: PageModel,
  place: ExportPlace,
  progress: ExportProgress,
): Promise<Uint8Array> {
  try {
    const pictures = await picturesOf(model, place, (done, all) =>
      progress(0.1 + (0.7 * done) / Math.max(1, all), `Drawing pictures, ${done} of ${all}`),
    );
    const emblem = model.emblem === undefined ? undefined : figureToPng(model.emblem, 1_600, place.fontsFolder);
    progress(0.85, lastStep[model.as]);
    return model.as === "deck"
      ? await writeDeck(model, pictures, emblem)
      : await writePaper({ ...model, as: model.as }, pictures, place.fontsFolder);
  } catch (thrown) {
    if (thrown instanceof Refusal) throw thrown;
    const why = thrown instanceof Error ? thrown.message : String(thrown);
    throw new Refusal("export.failed", `Cannot make the ${model.as}: ${why}; nothing was kept, try again`);
  }
}
