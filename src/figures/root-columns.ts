import type { CanalRoot } from "../core/tooth/canal-root.ts";
import type { EmblemDrawing } from "./emblem-input.ts";
import type { RootColumn } from "./root-shape.ts";
import { mesialIsRight } from "./tooth-outline.ts";

/** Where the roots of a tooth go: the left edge, the level of the orifices, the longest root's length, and what each takes. */
export interface ColumnsPlace {
  readonly left: number;
  readonly orificeY: number;
  readonly length: number;
  /** Between the rooms of neighbours. */
  readonly gap: number;
  /** Half of a root's width at the orifices. */
  readonly halfOf: (root: CanalRoot) => number;
  /** Half of the width that a root takes together with what is written beside it. */
  readonly roomOf: (root: CanalRoot, half: number) => number;
}

/** Roots from the mesial to the distal, in the direction in which the section shows them; upper ones point up. */
export function rootColumns(drawing: EmblemDrawing, place: ColumnsPlace): readonly RootColumn[] {
  const right = mesialIsRight(drawing.tooth);
  const inRow = drawing.roots.some(({ name }) => /^[MD]/.test(name));
  const ordered = right && inRow ? [...drawing.roots].reverse() : drawing.roots;
  const up = drawing.tooth.arch === "upper";
  let { left } = place;
  return ordered.map((root) => {
    const half = place.halfOf(root);
    const room = place.roomOf(root, half);
    const axis = left + room;
    left = axis + room + place.gap;
    const length = place.length * lengthShare(drawing, root);
    const bend = (right ? -1 : 1) * bendOf(drawing, root);
    return { root, axis, half, room, orificeY: place.orificeY, reach: up ? -length : length, bend };
  });
}

/** Lengths of roots against the longest of the tooth, as teaching has them; a picture, not a measure. */
function lengthShare({ tooth, roots }: EmblemDrawing, root: CanalRoot): number {
  if (roots.length === 1) return tooth.type === "canine" ? 1 : 0.94;
  const shares: Readonly<Record<string, number>> = { P: 1, MB: 0.95, DB: 0.89, M: 1, D: 0.94, DL: 0.84, ML: 0.97 };
  return shares[root.name] ?? 0.92;
}

/** Roots end a little to the distal; an extra distolingual root turns sharply. */
function bendOf({ tooth, roots }: EmblemDrawing, root: CanalRoot): number {
  if (roots.length === 1) return 6;
  if (tooth.arch === "lower" && (root.name === "DL" || root.name === "RE")) return -26;
  return root.name.startsWith("D") ? -4 : root.name.startsWith("M") ? 15 : 5;
}
