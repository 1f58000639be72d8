import { type Profile, valueAt } from "../profile.ts";
import { type Solid, smoothIntersection, smoothStep } from "../solid.ts";

/** A cusp, or the corner of an incisal edge. */
export interface Cusp {
  readonly x: number;
  readonly y: number;
  /** Height of its tip over the cementoenamel junction. */
  readonly heightMm: number;
}

/** What a crown, with the trunk under it, is made from. Heights count from the junction: z below 0 in the crown. */
export interface CrownShape {
  /** Half the width from mesial to distal by z. */
  readonly halfMesiodistal: Profile;
  /** y of the buccal outline by z. */
  readonly buccal: Profile;
  /** y of the lingual outline by z. */
  readonly lingual: Profile;
  /** 2 is an ellipse, 3 a rounded square. */
  readonly squareness: number;
  readonly cusps: readonly Cusp[];
  /** Fall of a cusp's slopes per mm. */
  readonly cuspSlope: number;
  /** How blunt the cusps are. */
  readonly cuspRoundingMm: number;
  /** The z at which the trunk ends: at the furcation, or 1 mm or so below the junction where there is one root. */
  readonly trunkEndZ: number;
  /** How much earlier the trunk ends at its mesial and distal side, and 5 mm to buccal and lingual; below 0 later (an arch). */
  readonly trunkEndsEarlierMm: { readonly atSides: number; readonly atFaces: number };
  readonly enamelAtSideMm: number;
  readonly enamelAtCuspMm: number;
  /** How far the junction rises towards the crown at the contacts. */
  readonly junctionRiseMm: number;
}

/** A crown as two solids: its outside, and the dentine under the enamel. Both go on below the junction as trunk. */
export interface Crown {
  readonly shape: CrownShape;
  readonly outside: Solid;
  readonly dentine: Solid;
}

const tableStepMm = 0.05;

interface Outline {
  readonly from: number;
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly middle: Float64Array;
}

function outlineOf(shape: CrownShape): Outline {
  const from = -Math.max(...shape.cusps.map((cusp) => cusp.heightMm)) - 1;
  const count = Math.ceil((shape.trunkEndZ + 2 - from) / tableStepMm) + 1;
  const outline = { from, a: new Float64Array(count), b: new Float64Array(count), middle: new Float64Array(count) };
  for (let i = 0; i < count; i++) {
    const z = from + i * tableStepMm;
    const buccal = valueAt(shape.buccal, z);
    const lingual = valueAt(shape.lingual, z);
    outline.a[i] = valueAt(shape.halfMesiodistal, z);
    outline.b[i] = (buccal - lingual) / 2;
    outline.middle[i] = (buccal + lingual) / 2;
  }
  return outline;
}

/** z of the chewing surface: the highest of cones that stand on the cusps; grooves are where two cones meet. */
function chewingSurface(shape: CrownShape, slope: number, loweredMm: number): (x: number, y: number) => number {
  const { cusps, cuspRoundingMm } = shape;
  return (x, y) => {
    let z = Number.POSITIVE_INFINITY;
    for (const cusp of cusps) {
      const across = (x - cusp.x) * (x - cusp.x) + (y - cusp.y) * (y - cusp.y);
      const side = slope * (Math.sqrt(across + cuspRoundingMm * cuspRoundingMm) - cuspRoundingMm);
      z = Math.min(z, loweredMm - cusp.heightMm + side);
    }
    return z;
  };
}

/** Thickness of the enamel at the side: nothing at the junction, full from two fifths of the way up. */
const sideEnamel = (shape: CrownShape, aboveJunctionMm: number): number =>
  shape.enamelAtSideMm * Math.sqrt(smoothStep(-0.1, 4.4, aboveJunctionMm));

/** The crown's solids for a shape. */
export function crownOf(shape: CrownShape): Crown {
  const outline = outlineOf(shape);
  const n = shape.squareness;
  const neck = valueAt(shape.halfMesiodistal, 0);
  const junctionRise = (x: number): number => shape.junctionRiseMm * Math.min(1, (x / neck) * (x / neck));

  const side = (x: number, y: number, z: number, insetMm: number): number => {
    const place = Math.min(outline.a.length - 1.001, Math.max(0, (z - outline.from) / tableStepMm));
    const at = Math.floor(place);
    const on = place - at;
    const read = (table: Float64Array): number => (table[at] as number) * (1 - on) + (table[at + 1] as number) * on;
    const a = Math.max(0.15, read(outline.a) - insetMm);
    const b = Math.max(0.15, read(outline.b) - insetMm);
    const u = Math.abs(x) / a;
    const v = Math.abs(y - read(outline.middle)) / b;
    // Far from the wall an estimate is enough, and saves the powers.
    if (u > 1.4 || v > 1.4) return Math.max(u - 1, v - 1) * Math.min(a, b);
    const round = u * u + v * v;
    if (round < 0.5) return (Math.sqrt(round) - 1) * Math.min(a, b);
    const k = (u ** n + v ** n) ** (1 / n);
    const gx = (u / k) ** (n - 1) / a;
    const gy = (v / k) ** (n - 1) / b;
    return (k - 1) / Math.sqrt(gx * gx + gy * gy);
  };
  const steep = Math.sqrt(1 + shape.cuspSlope * shape.cuspSlope);
  const top = chewingSurface(shape, shape.cuspSlope, 0);
  const dentineTop = chewingSurface(shape, shape.cuspSlope * 0.8, shape.enamelAtCuspMm);

  const edgeMm = Math.min(1.2, shape.cuspRoundingMm);
  const { atSides, atFaces } = shape.trunkEndsEarlierMm;
  const under = (x: number, y: number, z: number): number =>
    (z - shape.trunkEndZ + atSides * (x / neck) * (x / neck) + atFaces * (y / 5) * (y / 5)) * 0.8;
  const outside: Solid = (x, y, z) => {
    const across = side(x, y, z, 0);
    if (across > 2) return across;
    const body = smoothIntersection(across, (top(x, y) - z) / steep, edgeMm);
    return smoothIntersection(body, under(x, y, z), 2);
  };
  const dentine: Solid = (x, y, z) => {
    const inset = sideEnamel(shape, -z - junctionRise(x));
    const body = smoothIntersection(side(x, y, z, inset), (dentineTop(x, y) - z) / steep, 1.5);
    return smoothIntersection(body, under(x, y, z), 2);
  };
  return { shape, outside, dentine };
}
