import { z } from "zod";
import type { Interval } from "../../basis.ts";
import { mm, type PlanePoint } from "../../units.ts";
import { intervalAround } from "../interval-around.ts";

/** A place on a film in mm, as the shell writes it: [x to the right, y down]. */
export const filmPlace = z.tuple([z.number().min(-1000).max(1000), z.number().min(-1000).max(1000)]);

/** A line followed on a film, in order towards the apex. */
export const filmLine = z.array(filmPlace).max(4_000);

/** How a film's clicks and its scale err; spread it into an input that is read on a film. */
export const filmErrors = {
  sigmaMm: z
    .number()
    .min(0)
    .max(5)
    .optional()
    .describe("Standard deviation of one click in each direction, in mm; without it there are no intervals."),
  scaleRelativeSigma: z
    .number()
    .min(0)
    .max(0.5)
    .optional()
    .describe("Standard deviation of the calibration as a share of the scale: 0.02 is 2 %."),
} as const;

/** See {@link filmErrors}. */
export interface FilmErrors {
  readonly sigmaMm?: number | undefined;
  readonly scaleRelativeSigma?: number | undefined;
}

/** A place of the shell as one of the plane. */
export const planePlace = ([x, y]: readonly [number, number]): PlanePoint => ({ x: mm(x), y: mm(y) });

/**
 * 95 % intervals of lengths read on one film, by name; none without a click error.
 * Takes each length with its share of the click error (its standard deviation where a click errs by 1 in each direction).
 * Clicks err independently; the scale errs once for the whole film, so its part grows with the length.
 * @source first-order propagation of error; docs/methods/level-on-canal C3
 */
export function lengthIntervals(
  lengths: Readonly<Record<string, { readonly mm: number; readonly clickShare: number } | undefined>>,
  { sigmaMm, scaleRelativeSigma = 0 }: FilmErrors,
): Record<string, Interval> {
  if (sigmaMm === undefined) return {};
  const around = Object.entries(lengths).flatMap(([name, length]): [string, Interval][] =>
    length === undefined
      ? []
      : [[name, intervalAround(length.mm, Math.hypot(length.clickShare * sigmaMm, length.mm * scaleRelativeSigma))]],
  );
  return Object.fromEntries(around);
}

/** What is assumed of the errors, one sentence each. */
export function errorAssumptions({ sigmaMm, scaleRelativeSigma }: FilmErrors): string[] {
  return [
    sigmaMm === undefined
      ? "No click error is given, so there are no intervals."
      : `Each click errs by itself by ${sigmaMm} mm in each direction (standard deviation).`,
    scaleRelativeSigma === undefined
      ? "The scale is taken as exact."
      : `The scale errs by a share of ${scaleRelativeSigma} (standard deviation), the same for the whole film.`,
  ];
}

/** What every length that is read on one film leaves unsaid. */
export const oneProjection =
  "One film shows one projection: what runs towards the tube or away from it reads too short, by a share that this film can't tell.";
