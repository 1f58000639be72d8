import { toScreen } from "../kernels/film-placement.ts";
import { pointOf } from "../kernels/film-point.ts";
import type { PlacementUse } from "../view/use-placement.ts";
import type { FilmOutline } from "./comparison.ts";

/** An outline as a closed path of a drawing. */
export const closedPath = (outline: FilmOutline): string =>
  `${outline.map(([u, v], index) => `${index === 0 ? "M" : "L"}${u} ${v}`).join("")}Z`;

interface DrawnOptions {
  readonly outlines: readonly FilmOutline[];
  readonly chosen?: number | undefined;
}

/** The parts that the films are brought together by; dotted, so that no lesion is taken for one. */
export const HardPartsDrawn = ({ outlines, chosen }: DrawnOptions) => (
  <g className="hard-parts">
    {numberedParts(outlines).map(({ number, outline }) => (
      <g key={number} className="hard-part" data-chosen={number - 1 === chosen}>
        <path className="mark-rim" d={closedPath(outline)} />
        <path className="mark-line" d={closedPath(outline)} />
      </g>
    ))}
  </g>
);

/** What each is called, at its first corner. */
export const HardPartNames = ({ outlines, chosen, placing }: DrawnOptions & { readonly placing: PlacementUse }) =>
  numberedParts(outlines).map(({ number, outline }) => {
    const [first = [0, 0]] = outline;
    const { x, y } = toScreen(placing.placement, placing.pane, pointOf(first));
    return (
      <text key={number} className="mark-name hard-part-name" data-chosen={number - 1 === chosen} x={x + 8} y={y - 6}>
        part {number}
      </text>
    );
  });

/** Outlines with the numbers that they are known by. */
export const numberedParts = (
  outlines: readonly FilmOutline[],
): { readonly number: number; readonly outline: FilmOutline }[] =>
  outlines.map((outline, index) => ({ number: index + 1, outline }));
