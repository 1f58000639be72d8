import type { ImagePoint } from "../../units.ts";
import type { Level } from "./aligned-films.ts";
import { correlationStep } from "./correlation-step.ts";
import { type Template, templateOf } from "./film-template.ts";
import { type Homography, mapped, resized } from "./homography.ts";
import { placeAt } from "./homography-of-landmarks.ts";

/** How far one small piece of the films still lies off under the map. */
export interface LocalShift {
  /** The middle of the piece, on the first film. */
  readonly at: ImagePoint;
  /** What would have to be added on the second film, px. */
  readonly right: number;
  readonly down: number;
}

/** What the pieces of two films say. */
export interface LocalShifts {
  readonly shifts: readonly LocalShift[];
  /** Pieces with enough to see on the first film; those that were found again are the shifts. */
  readonly looked: number;
}

/** Side of a piece, px of the film. */
const sidePx = 64;
const mostSteps = 12;
/** A piece is found again where it correlates at least this well. */
const foundAgain = 0.8;
/** A direction in which a piece changes less than this share of the other is not told by it. */
const oneDirection = 0.1;

/**
 * How far the films lie off piece by piece under a map: what depth, movement or a bad start left over.
 * Takes the levels of {@link levelsOf} and the map at full size. Each piece is found by shifting alone, from a quarter of
 * the size to half of it, gain and offset free.
 * @source Evangelidis and Psarakis 2008 (memory), with a shift as motion; docs/methods/compare-films C4
 */
export function localShifts(levels: readonly Level[], map: Homography): LocalShifts {
  const [finest] = levels;
  if (finest === undefined) return { shifts: [], looked: 0 };
  const shifts: LocalShift[] = [];
  let looked = 0;
  for (let row = 0; row + sidePx <= finest.first.rows; row += sidePx)
    for (let column = 0; column + sidePx <= finest.first.columns; column += sidePx) {
      const found = shiftOf(levels, map, { column, row });
      if (found === "blank") continue;
      looked += 1;
      if (found !== "lost") shifts.push(found);
    }
  return { shifts, looked };
}

function shiftOf(
  levels: readonly Level[],
  map: Homography,
  corner: { column: number; row: number },
): LocalShift | "blank" | "lost" {
  const at = placeAt(corner.column + sidePx / 2, corner.row + sidePx / 2);
  let moved = map;
  let correlation = -1;
  for (const index of [2, 1]) {
    const level = levels[index];
    if (level === undefined) continue;
    const factor = 0.5 ** index;
    const window = {
      column: Math.round(corner.column * factor),
      row: Math.round(corner.row * factor),
      columns: Math.round(sidePx * factor),
      rows: Math.round(sidePx * factor),
    };
    const template = templateOf(level, window);
    if (!showsEnough(template, window.columns * window.rows)) return "blank";
    const found = settledShift(template, level, resized(moved, factor));
    if (found === undefined) return "lost";
    moved = resized(found.map, 1 / factor);
    correlation = found.correlation;
  }
  if (correlation < foundAgain) return "lost";
  const [from, to] = [mapped(map, at), mapped(moved, at)];
  const shift = { at, right: to.column - from.column, down: to.row - from.row };
  return Math.hypot(shift.right, shift.down) > sidePx / 2 ? "lost" : shift;
}

function settledShift(template: Template, level: Level, start: Homography) {
  let map = start;
  let correlation = -1;
  for (let step = 0; step < mostSteps; step++) {
    const next = correlationStep(template, level.second, map, "shift");
    if (next === undefined) return undefined;
    correlation = next.correlation;
    map = next.map;
    if (next.movedPx < 0.005) break;
  }
  return { map, correlation };
}

/** Whether most of a piece counts, and its grey changes in both directions. */
function showsEnough({ count, right, down }: Template, pixels: number): boolean {
  if (count < 0.6 * pixels) return false;
  const sum = (of: (index: number) => number): number =>
    right.reduce((total, _, index) => total + of(index), 0) / count;
  const across = sum((index) => (right[index] ?? 0) ** 2);
  const along = sum((index) => (down[index] ?? 0) ** 2);
  const mixed = sum((index) => (right[index] ?? 0) * (down[index] ?? 0));
  const [half, apart] = [(across + along) / 2, Math.hypot((across - along) / 2, mixed)];
  return half - apart > oneDirection * (half + apart);
}
