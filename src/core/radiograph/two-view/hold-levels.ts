import { cameraOf } from "./camera.ts";
import { placeOfViews } from "./places-of-views.ts";
import type { View, Views } from "./view.ts";

type Unpaired = Omit<Views, "byIndex">;

/** Films whose heights were moved so that the levels that a person fixed agree. */
export interface HeldLevels {
  readonly films: Unpaired;
  /** The largest movement of a height, in mm; 0 where no level was fixed. */
  readonly mostMovedMm: number;
}

/**
 * The films with their heights moved so that the places of each row, of the first and of the last points are images of one
 * place each; between rows the movement goes over evenly. Films without rows stay as they are.
 * @source own rule, docs/methods/two-view.md C6
 */
export function holdLevels(films: Unpaired): HeldLevels {
  const { views } = films;
  if (views.every(({ rows }) => rows.length === 0)) return { films, mostMovedMm: 0 };
  const moves = movesOf(films);
  const moved = views.map((view, film) => movedView(view, moves[film] ?? []));
  return { films: { ...films, views: moved }, mostMovedMm: Math.max(...moves.flat().map(Math.abs)) };
}

const anchorsOf = ({ points, rows }: View): number[] => [0, ...rows, points.length - 1];

/** For each film, how far the height of each of its anchors must move to be the image of the common place. */
function movesOf(films: Unpaired): number[][] {
  const { views, receptor, source, centralRay } = films;
  const count = (views[0]?.rows.length ?? 0) + 2;
  const places = Array.from({ length: count }, (_, anchor) => {
    const seen = views.flatMap((view) => view.points[anchorsOf(view)[anchor] ?? 0] ?? []);
    return placeOfViews(films, seen).place;
  });
  return views.map((view) => {
    const { angle, tilt, points } = view;
    const tube = source === undefined ? {} : { source: { ...source, centralRayMm: centralRay.mm } };
    const camera = cameraOf({ receptor, angle, tilt, ...tube });
    return anchorsOf(view).map((at, anchor) => {
      const place = places[anchor];
      return place === undefined ? 0 : camera(place).v - (points[at]?.v ?? 0);
    });
  });
}

function movedView(view: View, moves: readonly number[]): View {
  const anchors = anchorsOf(view);
  const points = view.points.map(({ u, v }, index) => {
    const next = Math.max(
      1,
      anchors.findIndex((anchor) => anchor >= index),
    );
    const [from = 0, to = 0] = [anchors[next - 1], anchors[next]].map((anchor) => view.alongMm[anchor ?? 0]);
    const share = to === from ? 1 : ((view.alongMm[index] ?? 0) - from) / (to - from);
    const [low = 0, high = 0] = [moves[next - 1], moves[next]];
    return { u, v: v + low + share * (high - low) };
  });
  return { ...view, points };
}
