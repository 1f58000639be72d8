import type { ToothPoint } from "../tooth-point.ts";
import type { Projection } from "./projection.ts";

/** One link of a chain: an ellipsoid with its axes along the tooth's axes. */
export interface Ball {
  readonly middle: ToothPoint;
  readonly rx: number;
  readonly ry: number;
  readonly rz: number;
}

/** A thin thing (canal, root filling, instrument) as ellipsoids so close to each other that they make one tube. */
export interface BallChain {
  readonly balls: readonly Ball[];
}

/** Where on the film a chain lies, and the length of ray inside it in each pixel there. */
export interface ChainShadow {
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
  readonly lengthMm: Float32Array;
}

interface Window {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** The pixels that a ball can darken: around its middle, as wide as its largest axis with one pixel more. */
function windowOf(ball: Ball, projection: Projection): Window {
  const { geometry } = projection;
  const { column, row } = projection.toFilm(ball.middle);
  const largest = Math.max(ball.rx, ball.ry, ball.rz);
  const total = geometry.sourceToToothMm + geometry.toothToDetectorMm;
  const reach = (largest * 1.3 * total) / (geometry.sourceToToothMm - 20) / geometry.spacingMm + 1;
  return {
    left: Math.max(0, Math.floor(column - reach)),
    top: Math.max(0, Math.floor(row - reach)),
    right: Math.min(geometry.columns - 1, Math.ceil(column + reach)),
    bottom: Math.min(geometry.rows - 1, Math.ceil(row + reach)),
  };
}

const joined = (windows: readonly Window[]): Window => ({
  left: Math.min(...windows.map((w) => w.left)),
  top: Math.min(...windows.map((w) => w.top)),
  right: Math.max(...windows.map((w) => w.right)),
  bottom: Math.max(...windows.map((w) => w.bottom)),
});

/** Rays of a small window of the film, as unit directions from the source. */
function raysOfWindow(projection: Projection, window: Window): Float64Array {
  const columns = window.right - window.left + 1;
  const rays = new Float64Array(columns * (window.bottom - window.top + 1) * 3);
  let at = 0;
  for (let row = window.top; row <= window.bottom; row++)
    for (let column = window.left; column <= window.right; column++) {
      const place = projection.onDetector(column, row);
      const dx = place.x - projection.source.x;
      const dy = place.y - projection.source.y;
      const dz = place.z - projection.source.z;
      const length = Math.sqrt(dx * dx + dy * dy + dz * dz);
      rays[at++] = dx / length;
      rays[at++] = dy / length;
      rays[at++] = dz / length;
    }
  return rays;
}

/**
 * The exact length of each pixel's ray inside a chain.
 * Each ball gives an interval on the ray; neighbours overlap and are joined, so nothing is counted twice.
 * Takes balls in order along the chain. Gives the shadow, or undefined where the chain misses the film.
 * @source plane geometry (a quadratic equation for each ray and ball; docs/methods/phantom.md)
 */
export function chainShadow(chain: BallChain, projection: Projection): ChainShadow | undefined {
  const windows = chain.balls.map((ball) => windowOf(ball, projection));
  if (windows.length === 0) return undefined;
  const window = joined(windows.filter((w) => w.left <= w.right && w.top <= w.bottom));
  if (!(window.left <= window.right && window.top <= window.bottom)) return undefined;
  const columns = window.right - window.left + 1;
  const rows = window.bottom - window.top + 1;
  const rays = raysOfWindow(projection, window);
  const lengthMm = new Float32Array(columns * rows);
  const opened = new Float64Array(columns * rows);
  const closed = new Float64Array(columns * rows);
  const { source } = projection;

  chain.balls.forEach((ball, index) => {
    const w = windows[index];
    if (w === undefined) return;
    const sx = (source.x - ball.middle.x) / ball.rx;
    const sy = (source.y - ball.middle.y) / ball.ry;
    const sz = (source.z - ball.middle.z) / ball.rz;
    const c = sx * sx + sy * sy + sz * sz - 1;
    for (let row = w.top; row <= w.bottom; row++)
      for (let column = w.left; column <= w.right; column++) {
        const at = (row - window.top) * columns + column - window.left;
        const dx = (rays[at * 3] as number) / ball.rx;
        const dy = (rays[at * 3 + 1] as number) / ball.ry;
        const dz = (rays[at * 3 + 2] as number) / ball.rz;
        const a = dx * dx + dy * dy + dz * dz;
        const b = dx * sx + dy * sy + dz * sz;
        const inside = b * b - a * c;
        if (inside <= 0) continue;
        const half = Math.sqrt(inside) / a;
        const enter = -b / a - half;
        const leave = -b / a + half;
        if (enter > (closed[at] as number) || leave < (opened[at] as number)) {
          lengthMm[at] = (lengthMm[at] as number) + (closed[at] as number) - (opened[at] as number);
          opened[at] = enter;
          closed[at] = leave;
        } else {
          opened[at] = Math.min(opened[at] as number, enter);
          closed[at] = Math.max(closed[at] as number, leave);
        }
      }
  });
  for (let at = 0; at < lengthMm.length; at++)
    lengthMm[at] = (lengthMm[at] as number) + (closed[at] as number) - (opened[at] as number);
  return { left: window.left, top: window.top, columns, rows, lengthMm };
}
