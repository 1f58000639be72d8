import { memo } from "react";
import { isOverMark, type MeasuredMark } from "../kernels/measured-marks.ts";
import { MeasureOnFilm } from "./marks-layer.tsx";

interface MeasuresLayerOptions {
  readonly measured: readonly MeasuredMark[];
  readonly chosen: string | undefined;
  readonly unit: number;
}

/** What the ledger made of the marks: constructions, ways to the apex, ticks of levels. Drawn as documents draw it. */
export const MeasuresLayer = memo(function MeasuresLayer({ measured, chosen, unit }: MeasuresLayerOptions) {
  return measured
    .filter(({ measure }) => isOverMark(measure))
    .map(({ markId, measure }) => (
      <g
        key={`${markId} ${measure.kind} ${measure.label}`}
        className="mark"
        data-shape={measure.kind}
        data-chosen={markId === chosen}
      >
        <MeasureOnFilm measure={measure} unit={unit} />
      </g>
    ));
});
