import { type AlveolarBone, alveolarBoneOf } from "../anatomy/alveolar-bone.ts";
import { boneLeft } from "../anatomy/lesion.ts";
import { laminaPart, socket } from "../anatomy/ligament.ts";
import type { PlacedTooth } from "../anatomy/placed-tooth.ts";
import { trabeculaeIn } from "../anatomy/trabeculae.ts";
import type { JawSegment } from "../jaw-segment.ts";
import { smoothNoise } from "../smooth-noise.ts";
import { coverage, type Solid, smoothStep } from "../solid.ts";
import { mineralPart } from "./material.ts";
import { emptyField, fullVoxel, gridOver, subgrid, type VoxelField, type VoxelGrid } from "./voxel-field.ts";

/** The jaw in voxels: how much soft tissue and how much mineral each holds. */
export interface JawVoxels {
  readonly soft: VoxelField;
  readonly mineral: VoxelField;
}

/** One slice across y while it is being filled. */
interface Slice {
  readonly grid: VoxelGrid;
  readonly y: number;
  /** Distance to the nearest tooth. */
  readonly fromTooth: Float32Array;
  /** Part of the voxel inside a tooth. */
  readonly inTooth: Float32Array;
  /** Mineral of the tooth's part. */
  readonly toothMineral: Float32Array;
}

const farMm = 9;

/** Adds one tooth to a slice. */
function addTooth(slice: Slice, placed: PlacedTooth): void {
  const { grid, y } = slice;
  if (y < placed.box.from.y || y > placed.box.to.y) return;
  const { grid: part, offset } = subgrid(grid, placed.box);
  const edge = grid.stepMm.x * 1.1;
  const { tooth } = placed;
  const pulpEndZ = tooth.canals.some((canal) => canal.shape.wide) ? placed.box.to.z : 3;
  for (let k = 0; k < part.count.z; k++)
    for (let i = 0; i < part.count.x; i++) {
      const at = (k + offset.z) * grid.count.x + i + offset.x;
      const own = placed.toOwn(part.from.x + i * grid.stepMm.x, y, part.from.z + k * grid.stepMm.z);
      const outside = tooth.outside(own.x, own.y, own.z);
      if (outside < (slice.fromTooth[at] as number)) slice.fromTooth[at] = outside;
      const whole = coverage(outside, edge);
      if (whole === 0) continue;
      const dentine = own.z > 1.4 ? whole : Math.min(whole, coverage(tooth.dentine(own.x, own.y, own.z), edge));
      const pulp = own.z < pulpEndZ ? coverage(tooth.chamber(own.x, own.y, own.z), edge) : 0;
      slice.inTooth[at] = Math.max(whole, slice.inTooth[at] as number);
      const mineral = ((whole - dentine) * mineralPart.enamel + dentine * mineralPart.dentine) * (1 - pulp);
      slice.toothMineral[at] = Math.max(mineral, slice.toothMineral[at] as number);
    }
}

/** Mineral and air of the bone at a place outside the teeth. */
function boneAt(
  jaw: JawSegment,
  bone: AlveolarBone,
  left: Solid,
): (x: number, y: number, z: number, around: Around) => void {
  const compactAt = (x: number, y: number, z: number, depth: number): number => {
    const usual = bone.compactMm(x, y, z);
    if (-depth > usual * 1.8 + 0.2) return 0;
    const thickness = usual * (1 + 0.3 * smoothNoise(x / 1.3, y / 1.3, z / 1.3, jaw.seed + 3));
    return 1 - smoothStep(thickness * 0.8, thickness * 1.25 + 0.08, -depth);
  };
  const laminaAt = (x: number, y: number, z: number, fromTooth: number): number =>
    laminaPart(fromTooth) * (1 - 0.35 * Math.max(0, smoothNoise(x / 0.7, y / 0.7, z / 0.7, jaw.seed + 9)));
  return (x, y, z, around) => {
    const depth = bone.bone(x, y, z);
    around.mineral = 0;
    around.soft = 1;
    if (depth > 0.2) {
      around.soft = coverage(bone.gum(x, y, z), 0.3);
      return;
    }
    const inBone = coverage(depth, 0.12);
    const compact = compactAt(x, y, z, depth);
    const lamina = around.fromTooth < 1 ? laminaAt(x, y, z, around.fromTooth) : 0;
    let density = Math.max(
      compact * mineralPart.compactBone,
      lamina * mineralPart.compactBone,
      around.strut * mineralPart.strut,
    );
    if (around.fromTooth < socket.ligamentMm)
      density *= smoothStep(socket.ligamentMm - 0.08, socket.ligamentMm + 0.04, around.fromTooth);
    for (const hollow of jaw.hollows) {
      const space = hollow.space(x, y, z, around.fromTooth);
      if (space > hollow.wallMm + 0.3) continue;
      const wall = 1 - smoothStep(hollow.wallMm - 0.12, hollow.wallMm + 0.12, space);
      const inside = coverage(space, 0.12);
      density = Math.max(density, wall * hollow.wallPart * mineralPart.compactBone) * (1 - inside);
      if (hollow.holds === "air") around.soft *= 1 - inside;
    }
    around.mineral = density * inBone * left(x, y, z);
  };
}

/** What is known of a voxel's surroundings, and what {@link boneAt} finds there. */
interface Around {
  fromTooth: number;
  strut: number;
  mineral: number;
  soft: number;
}

/**
 * The jaw segment in voxels of this size.
 * Takes a step of 0.06 to 0.3 mm. `progress` hears the part done, 0 to 1, after each slice.
 */
export function fillVoxels(
  jaw: JawSegment,
  stepMm: { x: number; y: number; z: number },
  progress: (part: number) => void = () => undefined,
): JawVoxels {
  const grid = gridOver(jaw.box, stepMm);
  const alveolar = alveolarBoneOf(jaw.bone, jaw.teeth);
  const struts = trabeculaeIn(grid, jaw.nets, ({ x, y, z }) => alveolar.bone(x, y, z) < 0.5);
  const bone = boneAt(jaw, alveolar, boneLeft(jaw.lesions));
  const voxels = { soft: emptyField(grid), mineral: emptyField(grid) };
  const size = grid.count.x * grid.count.z;
  const slice = {
    fromTooth: new Float32Array(size),
    inTooth: new Float32Array(size),
    toothMineral: new Float32Array(size),
  };
  const around: Around = { fromTooth: farMm, strut: 0, mineral: 0, soft: 0 };
  for (let j = 0; j < grid.count.y; j++) {
    const y = grid.from.y + j * grid.stepMm.y;
    slice.fromTooth.fill(farMm);
    slice.inTooth.fill(0);
    slice.toothMineral.fill(0);
    for (const placed of jaw.teeth) addTooth({ grid, y, ...slice }, placed);
    for (let at = 0; at < size; at++) {
      const inTooth = slice.inTooth[at] as number;
      const whole = j * size + at;
      if (inTooth < 1) {
        around.fromTooth = slice.fromTooth[at] as number;
        around.strut = (struts[whole] as number) / 255;
        bone(
          grid.from.x + (at % grid.count.x) * grid.stepMm.x,
          y,
          grid.from.z + Math.floor(at / grid.count.x) * grid.stepMm.z,
          around,
        );
      }
      const mineral = (slice.toothMineral[at] as number) + (inTooth < 1 ? (1 - inTooth) * around.mineral : 0);
      const soft = inTooth < 1 ? Math.max(inTooth, around.soft) : 1;
      voxels.mineral.filled[whole] = Math.round(mineral * fullVoxel);
      voxels.soft.filled[whole] = Math.round(Math.max(0, soft - mineral) * fullVoxel);
    }
    progress((j + 1) / grid.count.y);
  }
  return voxels;
}
