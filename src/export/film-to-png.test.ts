import { describe, expect, it } from "vitest";
import { lesionThenAndNow } from "../figures/lesion-then-and-now.ts";
import { decodeFilm } from "../imaging/decode-film.ts";
import { encodePng16 } from "../imaging/encode-png16.ts";
import { type Block, comparedName, type FilmBlock, says } from "../pages/page-model.ts";
import { filmToPng } from "./film-to-png.ts";
import { picturesOf } from "./pictures.ts";

const [columns, rows] = [1_400, 700];
/** A film of one grey, its window black at 0 and white at 4095 unless a person set another. */
function film(grey: (column: number) => number): Uint8Array {
  const samples = Uint16Array.from({ length: columns * rows }, (_, at) => grey(at % columns));
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  return encodePng16({ columns, rows, bitsStored: 12, samples, photometric: "MONOCHROME2", technical });
}
const ramp = film((column) => Math.round((4095 * column) / (columns - 1)));
const flat = film(() => 1000);

const block: FilmBlock = {
  ...{ kind: "film", hash: "ab".repeat(32), columns, rows, caption: says(""), alternative: "" },
  overlay: lesionThenAndNow({ columns, rows, before: [], after: [] }),
};
const middle = async (png: Uint8Array): Promise<number> => {
  const { samples, columns: across, rows: down } = await decodeFilm(png, "made");
  return samples[Math.floor(down / 2) * across + Math.floor(across / 2)] ?? -1;
};

describe("a picture in a film's place", () => {
  it("is shown in the film's own window: a flat picture is as grey as that value is on the film", async () => {
    const made = await filmToPng(block, { film: ramp, inItsPlace: flat }, "data/fonts");
    // By the window of a flat picture alone it would be middle grey, black or white.
    const shown = await filmToPng(
      block,
      { film: film((column) => (column === 700 ? 1000 : Math.round((4095 * column) / (columns - 1)))) },
      "data/fonts",
    );
    expect(Math.abs((await middle(made)) - (await middle(shown)))).toBeLessThanOrEqual(2);
  });

  it("is shown in the window that a person set, like the film itself", async () => {
    const window = { centre: 1000, width: 500, invert: false };
    const made = await filmToPng({ ...block, window }, { film: ramp, inItsPlace: flat }, "data/fonts");
    expect(Math.abs((await middle(made)) - 128)).toBeLessThanOrEqual(2);
    const turned = { ...window, centre: 900, invert: true };
    const inverted = await filmToPng({ ...block, window: turned }, { film: ramp, inItsPlace: flat }, "data/fonts");
    // (1000 - 900) / 500 above the middle, turned over.
    expect(Math.abs((await middle(inverted)) - (255 - 255 * 0.7))).toBeLessThanOrEqual(2);
  });

  it("is asked for by its entry, beside the film itself", async () => {
    const compared = { ledgerEntry: "cd".repeat(32), picture: "aligned" } as const;
    const asked: string[] = [];
    const readFilm = async (name: string) => {
      asked.push(name);
      return name === block.hash ? ramp : flat;
    };
    const blocks: Block[] = [{ ...block, compared }, block];
    const model = { as: "deck", title: "", mark: "", demo: false } as const;
    const pages = [{ title: "", on: "", blocks, notes: [] }];
    const made = await picturesOf({ ...model, pages }, { readFilm, fontsFolder: "data/fonts" }, () => undefined);
    expect(made.size).toBe(2);
    expect(asked).toEqual([block.hash, comparedName(compared), block.hash]);
  });
});
