import { placedLabels } from "../../../figures/film-labels.ts";
import { strainLines } from "../../../figures/strain-on-film.ts";
import { strainText } from "../../../figures/strain-ramp.ts";
import { themes } from "../../../figures/theme.ts";
import type { BendOnFilm } from "../../../ledger/strain-on-film.ts";
import { DrawnNodes } from "../../parts/figure-view.tsx";
import { toScreen } from "../kernels/film-placement.ts";
import { filmPoint } from "../kernels/film-point.ts";
import type { PlacementUse } from "./use-placement.ts";

/** The strain of an instrument over the film, as documents draw it; lines keep their width on the screen. */
export const StrainLayer = ({ bend: { on }, unit }: { readonly bend: BendOnFilm; readonly unit: number }) => (
  <g data-part="strain">
    <DrawnNodes
      nodes={strainLines(
        { seated: on.seated, ...(on.tightest === undefined ? {} : { tightest: { at: on.tightest, label: "" } }) },
        unit,
      )}
    />
  </g>
);

interface StrainNameOptions {
  readonly bend: BendOnFilm;
  readonly placing: PlacementUse;
}

/** The largest strain in words beside its place, upright however the film lies. */
export function StrainName({ bend: { on, told }, placing }: StrainNameOptions) {
  if (on.tightest === undefined) return null;
  const near = toScreen(placing.placement, placing.pane, filmPoint(...on.tightest));
  const wish = { text: `most ${strainText(told.peakStrain)}`, near: { x: near.x + 10, y: near.y }, fill: "" };
  const [label] = placedLabels([wish], [], { ...placing.pane, size: 13, halo: "" });
  return (
    <text className="mark-name" x={label?.x} y={label?.y} fill={themes.dark.accent}>
      {label?.text}
    </text>
  );
}
