import type { PlacedTooth } from "../anatomy/placed-tooth.ts";
import type { OnFilm } from "../cases/film-truth.ts";
import { placeAt } from "../course.ts";
import type { Projection } from "../exposure/projection.ts";
import type { Solid } from "../solid.ts";
import { type ToothPoint, toothPoint } from "../tooth-point.ts";
import type { PlaceToMark } from "./calibration-film.ts";

/**
 * Where a place to be marked falls on its film, from the tooth's own shape: column and row in pixels. The crest of the
 * bone has none: its edge is rough and no single place of it is the true one.
 */
export function truePlace(placed: PlacedTooth, place: PlaceToMark, projection: Projection): OnFilm | undefined {
  if (place.kind === "crest") return undefined;
  const onFilm = (own: ToothPoint): OnFilm => {
    const { column, row } = projection.toFilm(placed.fromOwn(own));
    return [column, row];
  };
  if (place.kind === "entrance") return onFilm(placeAt(canalOf(placed, place).course, 0));
  if (place.kind === "apex") {
    const { axis, distance } = rootOf(placed, place);
    const tip = placeAt(axis, axis.lengthMm);
    const along = step(onFilm(placeAt(axis, axis.lengthMm - 1.5)), onFilm(tip));
    return farthest({ solid: distance, around: tip, reachMm: 1.2 }, onFilm, along);
  }
  const crown = placed.tooth.crown;
  const top = Math.max(...crown.shape.cusps.map(({ heightMm }) => heightMm));
  const x = place.cuspX ?? 0;
  const up = step(onFilm(toothPoint(x, 0, 0)), onFilm(toothPoint(x, 0, -1)));
  return farthest({ solid: crown.outside, around: toothPoint(x, 0, -top + 0.6), reachMm: 1.3, deepMm: 6 }, onFilm, up);
}

const step = (from: OnFilm, to: OnFilm): OnFilm => [to[0] - from[0], to[1] - from[1]];

function rootOf({ tooth }: PlacedTooth, { of }: PlaceToMark): PlacedTooth["tooth"]["roots"][number] {
  const found = tooth.roots.find(({ shape }) => shape.name === of);
  if (found === undefined) throw new Error(`no root ${of}`);
  return found;
}

function canalOf({ tooth }: PlacedTooth, { of }: PlaceToMark): PlacedTooth["tooth"]["canals"][number] {
  const found = tooth.canals.find(({ name }) => name === of);
  if (found === undefined) throw new Error(`no canal ${of}`);
  return found;
}

/** A piece of a solid that is looked through: a box around a place, deeper from lingual to buccal if stated. */
interface Piece {
  readonly solid: Solid;
  readonly around: ToothPoint;
  readonly reachMm: number;
  readonly deepMm?: number;
}

/** The place of a solid's shadow that lies farthest along a direction of the film: looked for coarsely, then finely. */
function farthest(piece: Piece, onFilm: (own: ToothPoint) => OnFilm, along: OnFilm): OnFilm {
  let [around, reach, deep] = [piece.around, piece.reachMm, piece.deepMm ?? piece.reachMm];
  let best: OnFilm = onFilm(around);
  for (let round = 0; round < 3; round++) {
    let most = Number.NEGATIVE_INFINITY;
    let bestAt = around;
    const steps = 24;
    for (let i = -steps; i <= steps; i++)
      for (let j = -steps; j <= steps; j++)
        for (let k = -steps; k <= steps; k++) {
          const at = toothPoint(
            around.x + (i / steps) * reach,
            around.y + (j / steps) * deep,
            around.z + (k / steps) * reach,
          );
          if (piece.solid(at.x, at.y, at.z) > 0) continue;
          const [column, row] = onFilm(at);
          const far = column * along[0] + row * along[1];
          if (far <= most) continue;
          [most, bestAt, best] = [far, at, [column, row]];
        }
    [around, reach, deep] = [bestAt, reach / 10, deep / 10];
  }
  return best;
}
