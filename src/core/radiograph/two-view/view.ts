import type { FilmPlace, PointSource, Receptor } from "./camera.ts";

/** One film made ready: u to distal, v to the apex, both in mm and counted from the shared point. */
export interface View {
  /** Horizontal angle in radians. */
  readonly angle: number;
  /** Standard deviation of the angle. */
  readonly angleSigma: number;
  /** Vertical angle in radians. */
  readonly tilt: number;
  readonly points: readonly FilmPlace[];
  /** Distance of each point along the trace as it was given, in mm. */
  readonly alongMm: readonly number[];
  /** Which of the points a person fixed as one level with those of the other films, in their order. */
  readonly rows: readonly number[];
  readonly landmarks: Readonly<Record<string, FilmPlace>>;
}

/** All films of one course, and what is known of how they were exposed. */
export interface Views {
  readonly views: readonly View[];
  readonly receptor: Receptor;
  readonly source?: Omit<PointSource, "centralRayMm">;
  /** Height of the central ray above the shared point, with its standard deviation: 0 where it was stated. */
  readonly centralRay: { readonly mm: number; readonly sigmaMm: number };
  /** Standard deviation of each film's scale, as a share of it. */
  readonly scaleSigma: number;
  /** Whether the points of all films are the same places, one by one. */
  readonly byIndex: boolean;
}
