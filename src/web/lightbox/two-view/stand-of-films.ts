import type { ImagePoint } from "../../../core/units.ts";
import type { FilmOrientation, FilmPlacement, PaneSize } from "../kernels/film-placement.ts";
import { filmPoint } from "../kernels/film-point.ts";
import type { TracedFilm } from "./traced-films.ts";

/** What lies to the right, and where the apex is, as a film is seen: a drawing in space stands the same way. */
export interface FilmStand {
  readonly rightIs: "distal" | "mesial";
  readonly apexIs: "down" | "up";
}

/** How the straightest of some films stands before the eye, turned and mirrored as it is looked at. */
export function standOf({ film: { body }, trace }: TracedFilm): FilmStand {
  const { quarterTurns = 0, mirrored = false } = body.view ?? {};
  const upsideDown = quarterTurns === 2;
  const runsDown = (trace.body.points.at(-1)?.[1] ?? 0) >= (trace.body.points[0]?.[1] ?? 0);
  const runsToDistal = body.uRunsTo !== "mesial";
  return {
    rightIs: runsToDistal === (mirrored === upsideDown) ? "distal" : "mesial",
    apexIs: runsDown !== upsideDown ? "down" : "up",
  };
}

/** How much of the pane's height, and of its width, a canal takes when it is framed. */
const share = { high: 0.58, wide: 0.4 } as const;

/** The canal in the middle of the pane, large enough to set levels on it and with the crown still in sight. */
export function framedOn(points: readonly ImagePoint[], pane: PaneSize, orientation: FilmOrientation): FilmPlacement {
  const [columns, rows] = [points.map(({ column }) => column), points.map(({ row }) => row)];
  const [left, right] = [Math.min(...columns), Math.max(...columns)];
  const [top, bottom] = [Math.min(...rows), Math.max(...rows)];
  const lying = orientation.quarterTurns % 2 !== 0;
  const [wide, high] = lying ? [bottom - top, right - left] : [right - left, bottom - top];
  const zoom = Math.min((pane.height * share.high) / Math.max(1, high), (pane.width * share.wide) / Math.max(1, wide));
  return { zoom: Math.min(8, zoom), centre: filmPoint((left + right) / 2, (top + bottom) / 2), orientation };
}
