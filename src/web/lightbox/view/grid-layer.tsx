import type { FilmGrid } from "../kernels/film-grid.ts";
import type { FilmSize } from "../kernels/film-point.ts";

/** A grid over the film, in the film's own pixels; its lines keep their width on the screen. */
export function GridLayer({ grid, film }: { readonly grid: FilmGrid; readonly film: FilmSize }) {
  const [right, lower] = [film.columns - 0.5, film.rows - 0.5];
  const path = (strong: boolean) => [
    ...grid.columns.flatMap(({ at, isStrong }) => (isStrong === strong ? [`M${at} -0.5V${lower}`] : [])),
    ...grid.rows.flatMap(({ at, isStrong }) => (isStrong === strong ? [`M-0.5 ${at}H${right}`] : [])),
  ];
  return (
    <g data-part="grid">
      <path className="grid-line" d={path(false).join("")} />
      <path className="grid-line grid-strong" d={path(true).join("")} />
    </g>
  );
}
