import type { Vector } from "../../geometry/vector.ts";

/** A place on a film in mm: u to distal, v to the apex. */
export interface FilmPlace {
  readonly u: number;
  readonly v: number;
}

/** Whether the receptor turns with the beam (a holder does this) or stays square to the straight beam. */
export type Receptor = "turnsWithBeam" | "fixed";

/** How one film was exposed. */
export interface Exposure {
  readonly receptor: Receptor;
  /** Horizontal angle in radians: 0 straight on, above 0 with the tube moved to mesial. */
  readonly angle: number;
  /** Vertical angle in radians: 0 square to the tooth's axis, above 0 with the tube moved to the apex. */
  readonly tilt: number;
  /** Where the tube stands; absent for parallel rays. */
  readonly source?: PointSource;
}

/** A tube at a finite distance. */
export interface PointSource {
  readonly toToothMm: number;
  /** From the tooth's axis to the plane in which millimetres are counted: 0 for millimetres in the plane of the tooth. */
  readonly toPlaneMm: number;
  /** The height at which the central ray meets the tooth's axis. */
  readonly centralRayMm: number;
}

/** Where a place in the tooth's axes (x to distal, y to buccal, z to the apex) falls on a film. */
export type Camera = (place: Vector) => FilmPlace;

/**
 * The map from space to one film; the tooth's axis at the height of the central ray falls on u = 0.
 * @source plane geometry, docs/methods/two-view.md C2 to C4
 */
export function cameraOf(exposure: Exposure): Camera {
  if (exposure.source !== undefined) return pointCamera(exposure, exposure.source);
  const { cosA, sinA, cosB, sinB } = turnsOf(exposure);
  // C2: u = x cos a + y sin a, v = z at vertical angle 0
  if (exposure.receptor === "turnsWithBeam")
    return ({ x, y, z }) => ({ u: x * cosA + y * sinA, v: (x * sinA - y * cosA) * sinB + z * cosB });
  // C3: u = x + y tan a
  const slideU = sinA / cosA;
  const slideV = sinB / cosB / cosA;
  return ({ x, y, z }) => ({ u: x + y * slideU, v: z - y * slideV });
}

function pointCamera(exposure: Exposure, { toToothMm, toPlaneMm, centralRayMm }: PointSource): Camera {
  const { cosA, sinA, cosB, sinB } = turnsOf(exposure);
  if (exposure.receptor === "turnsWithBeam") {
    const reach = toToothMm + toPlaneMm;
    const axis = (reach / toToothMm) * centralRayMm;
    return ({ x, y, z }) => {
      const height = z - centralRayMm;
      const depth = y * cosA - x * sinA;
      // C4: u = D (x cos a + y sin a) / (D - w)
      const grown = reach / (toToothMm - depth * cosB - height * sinB);
      return { u: grown * (x * cosA + y * sinA), v: axis + grown * (height * cosB - depth * sinB) };
    };
  }
  const tube = { x: -toToothMm * sinA * cosB, y: toToothMm * cosA * cosB, z: toToothMm * sinB };
  const onAxis = (tube.y + toPlaneMm) / tube.y;
  return ({ x, y, z }) => {
    const grown = (tube.y + toPlaneMm) / (tube.y - y);
    const height = z - centralRayMm;
    return {
      u: tube.x * (onAxis - grown) + grown * x,
      v: onAxis * centralRayMm + tube.z * (onAxis - grown) + grown * height,
    };
  };
}

const turnsOf = ({ angle, tilt }: Exposure) => ({
  cosA: Math.cos(angle),
  sinA: Math.sin(angle),
  cosB: Math.cos(tilt),
  sinB: Math.sin(tilt),
});
