import { type Camera, cameraOf } from "./camera.ts";
import type { Views } from "./view.ts";

/**
 * What is not known of how the films were exposed, beside the course itself: the error of each angle, how far each film's
 * heights are off the first one's, how far its u is off (from the third film on: two films can't tell), the error
 * of each scale, and the height of the central ray.
 */
export interface Setting {
  /** In the order of {@link settingOf}. */
  readonly size: number;
  /** Standard deviation of each value before the films are looked at; infinite where nothing is known. */
  readonly sigmas: Float64Array;
  /** The cameras of all films under given values. */
  readonly cameras: (values: ArrayLike<number>) => Camera[];
}

/** The unknowns of a setting; a known value (standard deviation 0) is no unknown. */
export function settingOf(films: Views): Setting {
  const { views, source, centralRay } = films;
  const count = views.length;
  const unsure = views.map(({ angleSigma }) => angleSigma > 0);
  const angles = unsure.filter(Boolean).length;
  const angleAt = unsure.map((_, film) => unsure.slice(0, film).filter(Boolean).length);
  const scales = films.scaleSigma > 0 ? count : 0;
  const rays = source !== undefined && centralRay.sigmaMm > 0 ? 1 : 0;
  const free = Number.POSITIVE_INFINITY;
  const sigmas = Float64Array.from([
    ...views.map(({ angleSigma }) => angleSigma).filter((sigma) => sigma > 0),
    ...Array<number>(count - 1).fill(free),
    ...Array<number>(count - 2).fill(free),
    ...Array<number>(scales).fill(films.scaleSigma),
    ...Array<number>(rays).fill(centralRay.sigmaMm),
  ]);
  const cameras = (values: ArrayLike<number>): Camera[] =>
    views.map(({ angle, tilt }, index) => {
      const exposure = {
        receptor: films.receptor,
        angle: angle + (unsure[index] === true ? at(values, angleAt[index] ?? 0) : 0),
        tilt,
      };
      const ray = centralRay.mm + (rays > 0 ? at(values, sigmas.length - 1) : 0);
      const camera = cameraOf(
        source === undefined ? exposure : { ...exposure, source: { ...source, centralRayMm: ray } },
      );
      const dv = index < 1 ? 0 : at(values, angles + index - 1);
      const du = index < 2 ? 0 : at(values, angles + count - 1 + index - 2);
      const grown = scales === 0 ? 1 : 1 + at(values, angles + 2 * count - 3 + index);
      if (index === 0 && scales === 0) return camera;
      return (place) => {
        const { u, v } = camera(place);
        return { u: grown * u + du, v: grown * v + dv };
      };
    });
  return { size: sigmas.length, sigmas, cameras };
}

const at = (values: ArrayLike<number>, index: number): number => values[index] ?? 0;
