import { greyOfDifference } from "../../figures/difference-scale.ts";
import { brightIsHigh } from "../../imaging/bright-is-high.ts";
import { decodeFilm } from "../../imaging/decode-film.ts";
import { encodePng16 } from "../../imaging/encode-png16.ts";
import type { FilmPixels } from "../../imaging/film-pixels.ts";
import { encodePreview } from "../../imaging/preview.ts";
import { type ComparedFilms, comparedFilms, type FilmGrey } from "../../ledger/compared-films.ts";
import type { Comparing, FilmsCompared } from "./comparing.ts";

/** The comparison done where it is asked for: by the thread aside, and where nobody else is served. */
export const comparingHere: Comparing = async ({ input, before, after }, told, signal) => {
  // The shares are those of the time that each takes on films of 2 million pixels.
  told(0.02, "Reading the first film");
  const first = brightIsHigh(await decodeFilm(before, "the first film"));
  told(0.1, "Reading the second film");
  const second = brightIsHigh(await decodeFilm(after, "the second film"));
  signal.throwIfAborted();
  told(0.18, "Bringing the films together");
  const compared = comparedFilms(input, { before: greyOf(first), after: greyOf(second) });
  signal.throwIfAborted();
  told(0.85, "Drawing what changed");
  return { outcome: compared.outcome, pictures: picturesOf(compared, first) };
};

/** A film's grey in shares of its full range. */
function greyOf({ columns, rows, samples, bitsStored }: FilmPixels): FilmGrey {
  const most = 2 ** bitsStored - 1;
  const grey = new Float32Array(samples.length);
  for (let at = 0; at < grey.length; at++) grey[at] = (samples[at] ?? 0) / most;
  return { columns, rows, grey };
}

function picturesOf({ laid, difference, outcome }: ComparedFilms, first: FilmPixels): FilmsCompared["pictures"] {
  const sigma = sigmaOf(outcome);
  return {
    // Somebody waits for them, and they can be made again: quickly packed rather than small.
    ...(laid === undefined ? {} : { aligned: encodePng16(asFilm(first, laid.values), "quick") }),
    ...(difference === undefined || sigma === undefined
      ? {}
      : { difference: encodePreview({ ...difference, grey: greysOf(difference.values, sigma) }, "quick") }),
  };
}

function greysOf(values: Float32Array | Float64Array, sigma: number): Uint8Array {
  const grey = new Uint8Array(values.length);
  for (let at = 0; at < grey.length; at++) grey[at] = greyOfDifference(values[at] ?? 0, sigma);
  return grey;
}

/** The laid film with the first one's depth, so that the first one's window fits both; black where it does not reach. */
function asFilm(first: FilmPixels, shares: Float32Array | Float64Array): FilmPixels {
  const { columns, rows, bitsStored } = first;
  const most = 2 ** bitsStored - 1;
  const samples = new Uint16Array(shares.length);
  for (let at = 0; at < samples.length; at++) {
    const share = shares[at] ?? 0;
    samples[at] = Number.isNaN(share) ? 0 : within(Math.round(share * most), most);
  }
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  return { columns, rows, bitsStored, samples, photometric: "MONOCHROME2", technical };
}

const within = (value: number, most: number): number => Math.min(most, Math.max(0, value));

function sigmaOf(outcome: ComparedFilms["outcome"]): number | undefined {
  const output: unknown = "output" in outcome ? outcome.output : undefined;
  const sigma: unknown =
    typeof output === "object" && output !== null ? Reflect.get(output, "differenceSigma") : undefined;
  return typeof sigma === "number" && sigma > 0 ? sigma : undefined;
}
