import type { JawSegment, Strand } from "../jaw-segment.ts";
import { canalStrand } from "../treatment/canal-strand.ts";
import { chainShadow } from "./ball-chain.ts";
import { type Detector, samplesOf } from "./detector.ts";
import { fillVoxels } from "./fill-voxels.ts";
import { type Material, mineralPart, transmission } from "./material.ts";
import { type FilmGeometry, type Projection, projectionOf } from "./projection.ts";
import { addRaySums, raysOfRow } from "./ray-sum.ts";
import { setInsets } from "./set-insets.ts";

/** A film with the exact map from space to its pixels. */
export interface ExposedFilm {
  readonly columns: number;
  readonly rows: number;
  /** 12 bits, brighter where less came through. */
  readonly samples: Uint16Array;
  readonly projection: Projection;
}

/** What a film is made with. */
export interface Exposure {
  readonly geometry: FilmGeometry;
  readonly detector: Detector;
  /** Size of the voxels; 0.08 by 0.16 by 0.08 mm is usual. */
  readonly voxelMm: { readonly x: number; readonly y: number; readonly z: number };
  readonly seed: number;
  /** Hears the part done, 0 to 1. */
  readonly progress?: (part: number) => void;
}

type Sums = { [name in Material]?: Float32Array };

/** The picture of a material's lengths, made at first need. */
function lengthsOf(sums: Sums, material: Material, pixels: number): Float32Array {
  const known = sums[material];
  if (known !== undefined) return known;
  const fresh = new Float32Array(pixels);
  sums[material] = fresh;
  return fresh;
}

/** Adds a strand's lengths, and takes away what stood there. */
function addStrand(sums: Sums, strand: Strand, projection: Projection): void {
  const { columns, rows } = projection.geometry;
  const shadow = chainShadow(strand.chain, projection);
  if (shadow === undefined) return;
  const own = lengthsOf(sums, strand.material, columns * rows);
  const soft = lengthsOf(sums, "soft", columns * rows);
  const mineral = lengthsOf(sums, "mineral", columns * rows);
  for (let row = 0; row < shadow.rows; row++)
    for (let column = 0; column < shadow.columns; column++) {
      const length = shadow.lengthMm[row * shadow.columns + column] as number;
      const at = (row + shadow.top) * columns + column + shadow.left;
      own[at] = (own[at] as number) + length;
      if (strand.replaces === "soft") soft[at] = (soft[at] as number) - length;
      if (strand.replaces === "mineral") {
        mineral[at] = (mineral[at] as number) - length * mineralPart.dentine;
        soft[at] = (soft[at] as number) - length * (1 - mineralPart.dentine);
      }
    }
}

/** Every canal of every tooth, as strands of soft tissue in dentine. */
const canalStrands = (jaw: JawSegment): Strand[] =>
  jaw.teeth.flatMap((placed, index) =>
    placed.tooth.canals
      .filter((canal) => !canal.shape.wide)
      .map((canal) => canalStrand(canal, placed, index === 0 ? jaw.shaped[canal.name] : undefined)),
  );

/**
 * A periapical film of a jaw segment.
 * Gives the same samples for the same segment, exposure and seed.
 */
export function exposeFilm(jaw: JawSegment, exposure: Exposure): ExposedFilm {
  const { geometry, progress = () => undefined } = exposure;
  const projection = projectionOf(geometry);
  const { columns, rows } = geometry;
  const voxels = fillVoxels(jaw, exposure.voxelMm, (part) => progress(part * 0.6));
  const fields = setInsets(voxels, jaw.insets);
  fields.set("soft", [voxels.soft, ...(fields.get("soft") ?? [])]);
  fields.set("mineral", [voxels.mineral, ...(fields.get("mineral") ?? [])]);
  const sums: Sums = {};
  for (const name of fields.keys()) lengthsOf(sums, name, columns * rows);
  for (let row = 0; row < rows; row++) {
    const rays = raysOfRow(projection, row);
    for (const [name, parts] of fields)
      for (const part of parts)
        addRaySums(part, rays, lengthsOf(sums, name, columns * rows).subarray(row * columns, (row + 1) * columns));
    if (row % 16 === 0) progress(0.6 + (0.3 * row) / rows);
  }
  const soft = lengthsOf(sums, "soft", columns * rows);
  for (let at = 0; at < soft.length; at++) soft[at] = (soft[at] as number) + jaw.veilMm;
  for (const strand of [...canalStrands(jaw), ...jaw.strands]) addStrand(sums, strand, projection);
  const through = { columns, rows, values: transmission(sums, columns * rows) };
  const focalBlurMm = ((exposure.detector.focalSpotMm / 2.355) * geometry.toothToDetectorMm) / geometry.sourceToToothMm;
  const samples = samplesOf(through, {
    detector: exposure.detector,
    spacingMm: geometry.spacingMm,
    focalBlurMm,
    seed: exposure.seed,
  });
  progress(1);
  return { columns, rows, samples, projection };
}
