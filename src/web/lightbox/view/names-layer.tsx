import { placedLabels } from "../../../figures/film-labels.ts";
import { themes } from "../../../figures/theme.ts";
import type { Mark } from "../kernels/mark-shape.ts";
import { isNamedByMeasure, type MeasuredMark } from "../kernels/measured-marks.ts";
import { drawnSpots, measureWishes, nameWishes } from "../kernels/name-wishes.ts";
import type { PlacementUse } from "./use-placement.ts";

interface NamesLayerOptions {
  readonly marks: readonly Mark[];
  readonly measured: readonly MeasuredMark[];
  readonly chosen: string | undefined;
  readonly placing: PlacementUse;
}

const colours = { chosen: themes.dark.accent, course: "#b6f2e2", length: themes.dark.ink } as const;
const size = 13;

/** The names of what is marked, upright and clear of each other however the film lies. */
export function NamesLayer({ marks, measured, chosen, placing }: NamesLayerOptions) {
  const named = marks.filter((mark) => !isNamedByMeasure(mark, measured));
  const wishes = [...nameWishes(named, placing, chosen, colours), ...measureWishes(measured, placing, chosen, colours)];
  const labels = placedLabels(wishes, drawnSpots(marks, placing), { ...placing.pane, size, halo: themes.dark.ground });
  return labels.map(({ text, x, y, fill }, index) => (
    <text key={`${wishes[index]?.near.x} ${text}`} className="mark-name" x={x} y={y} fill={fill}>
      {text}
    </text>
  ));
}
