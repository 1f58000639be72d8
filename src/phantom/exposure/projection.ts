import { type ImagePoint, px } from "../../core/units.ts";
import type { ToothPoint } from "../tooth-point.ts";

/** How tube, tooth and receptor stand to each other, and how the film is held when it is read. */
export interface FilmGeometry {
  /** From the focal spot to the tooth's axis. */
  readonly sourceToToothMm: number;
  /** From the tooth's axis to the receptor behind it. */
  readonly toothToDetectorMm: number;
  /** 0 straight on; above 0 the tube is moved to mesial. */
  readonly horizontalAngleDeg: number;
  /** 0 square to the tooth's axis; above 0 the tube is moved towards the apex. */
  readonly verticalAngleDeg: number;
  /** Whether the receptor turns with the beam (a holder does this) or stays square to the straight beam. */
  readonly receptor: "turnsWithBeam" | "fixed";
  /** The place on the tooth's axis that the central ray meets. */
  readonly aim: { readonly x: number; readonly z: number };
  /** Whether distal lies to the right on the film as it is read, or mesial. */
  readonly rightIs: "distal" | "mesial";
  /** Whether the roots point up on the film (upper teeth) or down. */
  readonly apexIs: "up" | "down";
  readonly columns: number;
  readonly rows: number;
  /** Distance of neighbouring pixels at the receptor. */
  readonly spacingMm: number;
}

/** The exact map from space to film, and back along a ray. */
export interface Projection {
  readonly geometry: FilmGeometry;
  readonly source: ToothPoint;
  /** Where a place of the tooth falls on the film, in pixels; it may lie outside the film. */
  readonly toFilm: (place: ToothPoint) => ImagePoint;
  /** The same in mm on the receptor: u along x at angle 0, v along z, both from the central ray's foot at angle 0. */
  readonly toDetectorMm: (place: ToothPoint) => { readonly u: number; readonly v: number };
  /** The place on the receptor of a pixel's centre. */
  readonly onDetector: (column: number, row: number) => ToothPoint;
}

interface Frame {
  readonly source: ToothPoint;
  readonly foot: ToothPoint;
  readonly alongU: ToothPoint;
  readonly alongV: ToothPoint;
  readonly normal: ToothPoint;
}

const dot = (a: ToothPoint, b: ToothPoint): number => a.x * b.x + a.y * b.y + a.z * b.z;
const minus = (a: ToothPoint, b: ToothPoint): ToothPoint => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
const plus = (a: ToothPoint, b: ToothPoint, times: number): ToothPoint => ({
  x: a.x + b.x * times,
  y: a.y + b.y * times,
  z: a.z + b.z * times,
});

/** The receptor's plane and the tube's place. Depth towards the tube is w = -x sin a + y cos a at vertical angle 0. */
function frameOf(geometry: FilmGeometry): Frame {
  const a = (geometry.horizontalAngleDeg * Math.PI) / 180;
  const b = (geometry.verticalAngleDeg * Math.PI) / 180;
  const aim = { x: geometry.aim.x, y: 0, z: geometry.aim.z };
  const toTube = { x: -Math.sin(a) * Math.cos(b), y: Math.cos(a) * Math.cos(b), z: Math.sin(b) };
  const source = plus(aim, toTube, geometry.sourceToToothMm);
  if (geometry.receptor === "fixed") {
    const normal = { x: 0, y: 1, z: 0 };
    const foot = plus(aim, normal, -geometry.toothToDetectorMm);
    return { source, foot, alongU: { x: 1, y: 0, z: 0 }, alongV: { x: 0, y: 0, z: 1 }, normal };
  }
  return {
    source,
    foot: plus(aim, toTube, -geometry.toothToDetectorMm),
    alongU: { x: Math.cos(a), y: Math.sin(a), z: 0 },
    alongV: { x: Math.sin(a) * Math.sin(b), y: -Math.cos(a) * Math.sin(b), z: Math.cos(b) },
    normal: toTube,
  };
}

/**
 * The projection of a geometry.
 * Takes a source outside the tooth. Gives exact maps: no rounding to pixels.
 * @source plane geometry (docs/methods/phantom.md)
 */
export function projectionOf(geometry: FilmGeometry): Projection {
  const frame = frameOf(geometry);
  const columnSign = geometry.rightIs === "distal" ? 1 : -1;
  const rowSign = geometry.apexIs === "down" ? 1 : -1;
  const middleColumn = (geometry.columns - 1) / 2;
  const middleRow = (geometry.rows - 1) / 2;
  const height = dot(minus(frame.source, frame.foot), frame.normal);

  const toDetectorMm = (place: ToothPoint): { u: number; v: number } => {
    const ray = minus(place, frame.source);
    const reach = -height / dot(ray, frame.normal);
    const hit = minus(plus(frame.source, ray, reach), frame.foot);
    return { u: dot(hit, frame.alongU), v: dot(hit, frame.alongV) };
  };
  return {
    geometry,
    source: frame.source,
    toDetectorMm,
    toFilm: (place) => {
      const { u, v } = toDetectorMm(place);
      return {
        column: px(middleColumn + (columnSign * u) / geometry.spacingMm),
        row: px(middleRow + (rowSign * v) / geometry.spacingMm),
      };
    },
    onDetector: (column, row) => {
      const u = (column - middleColumn) * columnSign * geometry.spacingMm;
      const v = (row - middleRow) * rowSign * geometry.spacingMm;
      return plus(plus(frame.foot, frame.alongU, u), frame.alongV, v);
    },
  };
}

/** The factor by which a film shows things in the plane of the tooth's axis larger than they are. */
export const magnificationOf = (geometry: FilmGeometry): number =>
  (geometry.sourceToToothMm + geometry.toothToDetectorMm) / geometry.sourceToToothMm;
