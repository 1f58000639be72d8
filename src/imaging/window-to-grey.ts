import { Refusal } from "../core/refusal.ts";
import type { FilmPixels, FilmWindow } from "./film-pixels.ts";

/**
 * The grey of one stored value under a window.
 * Takes the value and the window (width at least 1 for "linear", above 0 for the others).
 * Gives 0..255, not rounded; larger values are never darker.
 * @throws Refusal `input.impossible` for a width that the formula has no meaning for.
 * @source DICOM PS3.3 C.11.2.1.2.1 linear, C.11.2.1.3.1 sigmoid, C.11.2.1.3.2 linear exact (seen, quoted)
 */
export function greyAt(value: number, window: FilmWindow): number {
  checkWidth(window);
  const { center, width } = window;
  switch (window.function) {
    case "linear": {
      const black = center - 0.5 - (width - 1) / 2;
      if (value <= black) return 0;
      if (value > black + width - 1) return 255;
      return rising(value - black, width - 1);
    }
    case "linearExact":
      if (value <= center - width / 2) return 0;
      if (value > center + width / 2) return 255;
      return rising(value - (center - width / 2), width);
    case "sigmoid":
      return 255 / (1 + Math.exp((-4 * (value - center)) / width));
  }
}

/** The standard's straight line, counted from its black end: a grey that is a whole number then comes out as one. */
const rising = (aboveBlack: number, span: number): number => (aboveBlack * 255) / span;

function checkWidth({ center, width, function: shape }: FilmWindow): void {
  const isPossible = Number.isFinite(center) && Number.isFinite(width) && (shape === "linear" ? width >= 1 : width > 0);
  if (isPossible) return;
  const needed = shape === "linear" ? "at least 1" : "above 0";
  const says = `Cannot show grey: a ${shape} window of width ${width} about ${center} is not one; width is ${needed}`;
  throw new Refusal("input.impossible", says, { center, width, function: shape });
}

/**
 * A lookup table from every stored sample to the grey on the screen.
 * Takes the window, whether larger samples are brighter (MONOCHROME2) or darker (MONOCHROME1), and a gamma of 0.25 to 4:
 * above 1 what lies between black and white is brighter, 1 leaves the window as it is.
 * Gives 65,536 bytes, rounded down.
 * @throws Refusal `input.impossible` as {@link greyAt}, and for another gamma.
 */
export function windowToGrey(window: FilmWindow, photometric: FilmPixels["photometric"], gamma = 1): Uint8Array {
  if (gamma !== 1) return bentGrey(window, photometric, gamma);
  const grey = new Uint8Array(65_536);
  for (let sample = 0; sample < grey.length; sample++) {
    const level = Math.floor(greyAt(sample, window));
    grey[sample] = photometric === "MONOCHROME1" ? 255 - level : level;
  }
  return grey;
}

/** The gamma bends what is seen, so it comes after the exchange of dark and bright, and before any rounding. */
function bentGrey(window: FilmWindow, photometric: FilmPixels["photometric"], gamma: number): Uint8Array {
  if (!(gamma >= 0.25 && gamma <= 4))
    throw new Refusal("input.impossible", `Cannot show grey: a gamma of ${gamma} is outside 0.25..4`, { gamma });
  const bent = new Uint8Array(65_536);
  for (let sample = 0; sample < bent.length; sample++) {
    const grey = greyAt(sample, window);
    const seen = photometric === "MONOCHROME1" ? 255 - grey : grey;
    bent[sample] = Math.floor(255 * (seen / 255) ** (1 / gamma));
  }
  return bent;
}
