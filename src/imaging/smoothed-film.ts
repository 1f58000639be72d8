import { Refusal } from "../core/refusal.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { gaussianHalf, smoothedAcross } from "./gaussian-rows.ts";

/**
 * A film under a Gaussian, for telling what is fine on it from what is broad.
 * Takes the film and the Gaussian's standard deviation in pixels, 0.5 to 16. Gives one number a pixel, in stored samples;
 * a level and an evenly sloping film come back as they are, up to their borders.
 * @throws Refusal `input.impossible` for another radius.
 */
export function smoothedFilm({ columns, rows, samples }: FilmPixels, radiusPx: number): Float32Array {
  if (!(radiusPx >= 0.5 && radiusPx <= 16))
    throw new Refusal("input.impossible", `Cannot smooth: a radius of ${radiusPx} pixels is outside 0.5..16`);
  const half = gaussianHalf(radiusPx);
  const plane = { columns, rows, values: Float64Array.from(samples) };
  return Float32Array.from(smoothedAcross(smoothedAcross(plane, half), half).values);
}
