import type { ImagePoint } from "../../../core/units.ts";

/** The crosshair leaves its middle open, so that the place itself can be seen. */
export const Crosshair = ({ at: { column, row }, unit }: { at: ImagePoint; unit: number }) => {
  const [gap, arm] = [4 * unit, 18 * unit];
  const d = [
    `M${column - arm} ${row}H${column - gap}M${column + gap} ${row}H${column + arm}`,
    `M${column} ${row - arm}V${row - gap}M${column} ${row + gap}V${row + arm}`,
  ].join("");
  return (
    <g className="drawing" data-part="crosshair">
      <path className="mark-rim" d={d} />
      <path className="mark-line crosshair" d={d} />
    </g>
  );
};
