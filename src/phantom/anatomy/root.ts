import { type Course, courseThrough } from "../course.ts";
import { type Profile, valueAt } from "../profile.ts";
import { ellipsoidDistance, type Solid } from "../solid.ts";
import type { ToothPoint } from "../tooth-point.ts";

/** What a root is made from. */
export interface RootShape {
  /** As the clinician names it: "MB", "DB", "P", "M", "D", "DL". */
  readonly name: string;
  /** The axis from inside the trunk to the tip of the root. */
  readonly axis: readonly ToothPoint[];
  /** Half the width from mesial to distal, by the fraction of the axis (0 trunk, 1 tip). */
  readonly halfMesiodistal: Profile;
  /** Half the width from lingual to buccal, by the fraction of the axis. */
  readonly halfBuccolingual: Profile;
  /** An apex that has not closed ends blunt. */
  readonly open?: boolean;
}

/** A root as a solid with its axis. */
export interface Root {
  readonly shape: RootShape;
  readonly axis: Course;
  /** Distance to the root's surface; "far" (2 mm) where the root is not near. */
  readonly distance: Solid;
}

interface Tables {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly tx: Float64Array;
  readonly ty: Float64Array;
  readonly tz: Float64Array;
}

const farMm = 2;

/** Where the rounded end of the root begins, so that its tip falls on the end of the axis. */
const capOf = (shape: RootShape): number => {
  const a = valueAt(shape.halfMesiodistal, 1);
  const b = valueAt(shape.halfBuccolingual, 1);
  return shape.open ? 0.25 : Math.sqrt(a * b) * 1.25;
};

function tablesOf(shape: RootShape, axis: Course, cap: number): Tables {
  const count = Math.max(8, Math.round((axis.lengthMm - cap) / axis.stepMm));
  const column = (): Float64Array => new Float64Array(count + 1);
  const tables = { count, x: column(), y: column(), z: column(), a: column(), b: column() };
  const tangents = { tx: column(), ty: column(), tz: column() };
  for (let i = 0; i <= count; i++) {
    const here = axis.points[i];
    const before = axis.points[Math.max(0, i - 3)];
    const after = axis.points[Math.min(axis.points.length - 1, i + 3)];
    if (here === undefined || before === undefined || after === undefined) continue;
    const length = Math.hypot(after.x - before.x, after.y - before.y, after.z - before.z);
    tables.x[i] = here.x;
    tables.y[i] = here.y;
    tables.z[i] = here.z;
    tables.a[i] = valueAt(shape.halfMesiodistal, i / count);
    tables.b[i] = valueAt(shape.halfBuccolingual, i / count);
    tangents.tx[i] = (after.x - before.x) / length;
    tangents.ty[i] = (after.y - before.y) / length;
    tangents.tz[i] = (after.z - before.z) / length;
  }
  return { ...tables, ...tangents };
}

/** The index of the axis point nearest in height to each tenth of a millimetre: where the search for the nearest begins. */
function startsByHeight(tables: Tables): { from: number; index: Int32Array } {
  const from = tables.z[0] ?? 0;
  const to = tables.z[tables.count] ?? 0;
  const index = new Int32Array(Math.max(1, Math.ceil((to - from) / 0.1)) + 1);
  for (let k = 0, i = 0; k < index.length; k++) {
    while (i < tables.count && (tables.z[i] ?? 0) < from + k * 0.1) i++;
    index[k] = i;
  }
  return { from, index };
}

/** A root whose section is an ellipse across its curved axis and whose tip is rounded. Takes axes that lean up to 50 degrees from z. */
export function rootOf(shape: RootShape): Root {
  const axis = courseThrough(shape.axis);
  const cap = capOf(shape);
  const t = tablesOf(shape, axis, cap);
  const starts = startsByHeight(t);
  const farSquare = (Math.max(...t.a, ...t.b) + farMm) ** 2;

  const distance: Solid = (x, y, z) => {
    let i = starts.index[Math.min(starts.index.length - 1, Math.max(0, Math.round((z - starts.from) / 0.1)))] ?? 0;
    let [qx, qy, qz, along] = [0, 0, 0, 0];
    for (let turn = 0; turn < 3; turn++) {
      qx = x - (t.x[i] ?? 0);
      qy = y - (t.y[i] ?? 0);
      qz = z - (t.z[i] ?? 0);
      if (turn === 0 && qx * qx + qy * qy + qz * qz > farSquare) return farMm;
      along = qx * (t.tx[i] ?? 0) + qy * (t.ty[i] ?? 0) + qz * (t.tz[i] ?? 0);
      const next = Math.min(t.count, Math.max(0, i + Math.round(along / axis.stepMm)));
      if (next === i) break;
      i = next;
    }
    return sectionDistance(t, i, { qx, qy, qz, cap });
  };
  return { shape, axis, distance };
}

/** Distance in the frame of one axis point: across the axis an ellipse, beyond the axis's end a rounded cap. */
function sectionDistance(t: Tables, i: number, at: { qx: number; qy: number; qz: number; cap: number }): number {
  const tx = t.tx[i] ?? 0;
  const ty = t.ty[i] ?? 0;
  const tz = t.tz[i] ?? 1;
  const flat = Math.sqrt(tx * tx + tz * tz);
  const along = at.qx * tx + at.qy * ty + at.qz * tz;
  const beyond = i === t.count && along > 0 ? along : i === 0 && along < 0 ? along : 0;
  const q1 = (at.qx * tz - at.qz * tx) / flat;
  const q2 = (at.qy * (tx * tx + tz * tz) - ty * (at.qx * tx + at.qz * tz)) / flat;
  // Between the ends nothing lies along the axis, and the cap must not shorten the depth.
  const c = beyond === 0 ? farMm * 5 : i === 0 ? (t.a[0] ?? 1) : at.cap;
  return ellipsoidDistance(q1, q2, beyond, { a: t.a[i] ?? 1, b: t.b[i] ?? 1, c });
}
