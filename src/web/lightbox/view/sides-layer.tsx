import { toScreen } from "../kernels/film-placement.ts";
import type { FilmSize } from "../kernels/film-point.ts";
import { filmPoint } from "../kernels/film-point.ts";
import type { SidesOnFilm } from "../kernels/sides-on-film.ts";
import type { PlacementUse } from "./use-placement.ts";

interface SidesLayerOptions {
  readonly sides: SidesOnFilm;
  readonly film: FilmSize;
  readonly placing: PlacementUse;
}

const margin = 14;
const letterSize = 26;

/**
 * The patient's side as a letter at the film's first lower corner, lying as the film lies: on a mirrored film it can't be
 * read. Beside the edges what lies toward them.
 */
export function SidesLayer({ sides: { letter, isReadable, edges, says }, film, placing }: SidesLayerOptions) {
  const { width, height } = placing.pane;
  const corner = toScreen(placing.placement, placing.pane, filmPoint(0, film.rows - 1));
  const inside = toScreen(placing.placement, placing.pane, filmPoint((film.columns - 1) / 2, (film.rows - 1) / 2));
  const x = within(corner.x + Math.sign(inside.x - corner.x) * (margin + letterSize / 2), width);
  const y = within(corner.y + Math.sign(inside.y - corner.y) * (margin + letterSize / 2), height - 28);
  const side = x < width / 2 ? "start" : "end";
  return (
    <g data-part="sides">
      <g
        className="side-letter"
        data-readable={isReadable}
        transform={`translate(${x} ${y}) scale(${isReadable ? 1 : -1} 1)`}
      >
        <rect x={-letterSize / 2} y={-letterSize / 2} width={letterSize} height={letterSize} rx={2} />
        <text textAnchor="middle" dominantBaseline="central">
          {letter}
        </text>
      </g>
      {says !== undefined && (
        <text
          className="side-says"
          textAnchor={side}
          x={x + (side === "start" ? 1 : -1) * (letterSize / 2 + 8)}
          y={y + 5}
        >
          {says}
        </text>
      )}
      {edges.left && <EdgeWord x={margin} y={height - margin} anchor="start" text={`◂ ${edges.left}`} />}
      {edges.right && <EdgeWord x={width - margin} y={height - margin} anchor="end" text={`${edges.right} ▸`} />}
      {edges.up && <EdgeWord x={width / 2} y={margin + 12} anchor="middle" text={`▴ ${edges.up}`} />}
      {edges.down && <EdgeWord x={width / 2} y={height - margin} anchor="middle" text={`▾ ${edges.down}`} />}
    </g>
  );
}

const within = (place: number, size: number): number =>
  Math.min(Math.max(place, margin + letterSize / 2), Math.max(0, size - margin - letterSize / 2));

const EdgeWord = ({
  anchor,
  text,
  x,
  y,
}: {
  anchor: "start" | "middle" | "end";
  text: string;
  x: number;
  y: number;
}) => (
  <text className="edge-word" textAnchor={anchor} x={x} y={y}>
    {text}
  </text>
);
