import { type Deg, radiansOf } from "../units.ts";

/** Where the source of the rays and the detector stand from the tooth. */
export interface TubeGeometry {
  readonly sourceToToothMm: number;
  readonly toothToDetectorMm: number;
}

/**
 * How many times larger than life a tooth is thrown on the detector.
 * Takes both distances in mm, the first above 0, the second 0 or more. Gives a ratio, 1 or more.
 * @source plane geometry (similar triangles); docs/methods/calibrate C5
 */
export const magnificationOf = ({ sourceToToothMm, toothToDetectorMm }: TubeGeometry): number =>
  (sourceToToothMm + toothToDetectorMm) / sourceToToothMm;

/**
 * The diameter of a sphere's shadow, carried back into the plane of the sphere's centre: a little more than the
 * sphere's own, because the outermost rays touch it before its widest place.
 * Takes the diameter and the source's distance from the centre in mm, the distance above half the diameter.
 * Gives mm; times the magnification it is the shadow on the detector.
 * @source plane geometry (tangent rays); docs/methods/calibrate C7
 */
export function sphereShadowMm(diameterMm: number, sourceToCentreMm: number): number {
  const radius = diameterMm / 2;
  return (diameterMm * sourceToCentreMm) / Math.sqrt(sourceToCentreMm ** 2 - radius ** 2);
}

/**
 * Length on the film over true length, for parallel rays in the plane of the tooth's long axis.
 * Takes the angle between tooth and detector, and how far the beam is off the bisecting set-up (above 0 towards
 * square on the detector), both in degrees. Gives a ratio: 1 true, below 1 foreshortened, above 1 elongated.
 * @source plane geometry (law of sines); docs/methods/working-length C5
 */
export function lengthRatioOfBeam(toothToDetector: Deg, beamError: Deg): number {
  const half = radiansOf(toothToDetector) / 2;
  const error = radiansOf(beamError);
  return Math.cos(half + error) / Math.cos(half - error);
}
