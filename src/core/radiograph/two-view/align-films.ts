import { faultAt } from "../../refusal.ts";
import { cholesky, solveCholesky } from "../../statistics/solve-linear.ts";
import { cameraOf, type FilmPlace } from "./camera.ts";
import { placeOfViews } from "./places-of-views.ts";
import type { View, Views } from "./view.ts";

/** How one film was brought to the first one's scale and level. */
export interface Alignment {
  readonly film: number;
  /** How many times larger than the first film it was. */
  readonly scale: number;
  /** How far it was turned in its own plane, in radians. */
  readonly turned: number;
}

type Unpaired = Omit<Views, "byIndex">;

/** Before the landmarks are looked at, scales differ by about this share and films are turned by about this angle. */
const scaleSigma = 0.03;
const turnSigma = 0.035;
/** Landmarks that lie nearer to one line than this, in mm, can't tell a scale from a turn. */
const asideMm = 0.5;
/** Two landmarks nearer in height than this, in mm, say nothing of the scale. */
const apartMm = 3;

/**
 * The films brought to the scale and level of the first one by the heights of common landmarks: only heights, because
 * distances across change with the angle. Two landmarks give the scale; three and more, not in one line, also the turn.
 * @throws Refusal `input.impossible` where three or more landmarks lie in one line.
 * @source plane geometry, docs/methods/two-view.md C13
 */
export function alignFilms(films: Unpaired, sigmaMm: number): { films: Unpaired; alignments: Alignment[] } {
  const alignments = films.views.slice(1).flatMap((_, index) => alignmentOf(films, index + 1, sigmaMm) ?? []);
  const views = films.views.map((view, film) => {
    const found = alignments.find((one) => one.film === film);
    return found === undefined ? view : aligned(view, found);
  });
  return { films: { ...films, views }, alignments };
}

function aligned(view: View, { scale, turned }: Alignment): View {
  const level = ({ u, v }: FilmPlace): FilmPlace => ({ u: (u + turned * v) / scale, v: (v - turned * u) / scale });
  return {
    ...view,
    points: view.points.map(level),
    landmarks: Object.fromEntries(Object.entries(view.landmarks).map(([name, at]) => [name, level(at)])),
  };
}

interface Height {
  /** Across as this film shows it, along as the first one does. */
  readonly at: FilmPlace;
  /** How much higher the film shows it than the first one, less what depth explains. */
  readonly more: number;
}

function alignmentOf(films: Unpaired, film: number, sigmaMm: number): Alignment | undefined {
  const heights = heightsOf(films, film);
  if (heights.length < 2) return undefined;
  if (heights.length === 2) return scaleOf(heights, film, sigmaMm);
  if (asideOf(heights) < asideMm)
    throw faultAt(
      `views[${film}].landmarks`,
      `${heights.length} landmarks common with views[0] lie in one line: scale and turn can't be told apart; mark one aside of it, or leave all but two out`,
    );
  return scaleAndTurn(heights, film, sigmaMm);
}

function heightsOf(films: Unpaired, film: number): Height[] {
  const first = films.views[0];
  const other = films.views[film];
  if (first === undefined || other === undefined) return [];
  const pair: Unpaired = { ...films, views: [first, other] };
  const [cameraA, cameraB] = pair.views.map(({ angle, tilt }) => {
    const exposure = { receptor: films.receptor, angle, tilt };
    const { source, centralRay } = films;
    return cameraOf(
      source === undefined ? exposure : { ...exposure, source: { ...source, centralRayMm: centralRay.mm } },
    );
  });
  return Object.entries(first.landmarks).flatMap(([name, a]): Height[] => {
    const b = other.landmarks[name];
    if (b === undefined || cameraA === undefined || cameraB === undefined) return [];
    const { place } = placeOfViews(pair, [a, b]);
    return [{ at: { u: b.u, v: a.v }, more: b.v - cameraB(place).v - (a.v - cameraA(place).v) }];
  });
}

function scaleOf(heights: readonly Height[], film: number, sigmaMm: number): Alignment | undefined {
  const [one, other] = heights;
  const apart = (other?.at.v ?? 0) - (one?.at.v ?? 0);
  if (Math.abs(apart) < apartMm) return undefined;
  const more = ((other?.more ?? 0) - (one?.more ?? 0)) / apart;
  const noise = (2 * sigmaMm) / apart;
  return { film, turned: 0, scale: 1 + more / (1 + (noise / scaleSigma) ** 2) };
}

/** Least squares of the heights on 1, v and u, with what was known before as further equations. */
function scaleAndTurn(heights: readonly Height[], film: number, sigmaMm: number): Alignment | undefined {
  const weight = 1 / (2 * sigmaMm ** 2);
  const information = new Float64Array([1e-9, 0, 0, 0, scaleSigma ** -2, 0, 0, 0, turnSigma ** -2]);
  const gradient = new Float64Array(3);
  for (const { at, more } of heights) {
    const row = [1, at.v, at.u];
    row.forEach((a, r) => {
      gradient[r] = (gradient[r] ?? 0) + weight * a * more;
      row.forEach((b, c) => {
        information[3 * r + c] = (information[3 * r + c] ?? 0) + weight * a * b;
      });
    });
  }
  const lower = cholesky(information, 3);
  if (lower === undefined) return undefined;
  const [, scale = 0, turned = 0] = solveCholesky(lower, gradient);
  return { film, scale: 1 + scale, turned };
}

/** How far landmarks lie from the line that fits them best, root mean square, in mm. */
function asideOf(heights: readonly Height[]): number {
  const n = heights.length;
  const mean = (of: (at: FilmPlace) => number): number => heights.reduce((sum, { at }) => sum + of(at), 0) / n;
  const u = mean((at) => at.u);
  const v = mean((at) => at.v);
  const uu = mean((at) => (at.u - u) ** 2);
  const vv = mean((at) => (at.v - v) ** 2);
  const uv = mean((at) => (at.u - u) * (at.v - v));
  return Math.sqrt(Math.max(0, (uu + vv) / 2 - Math.hypot((uu - vv) / 2, uv)));
}
