import { useMemo } from "react";
import { instrumentToScale } from "../../../../figures/instrument-to-scale.ts";
import { type CanalToScale, instrumentsToScale } from "../../../../ledger/instruments-to-scale.ts";
import { useEditedPart } from "../../../parts/fields/editing.tsx";
import { FigureView } from "../../../parts/figure-view.tsx";
import { countOf } from "../../../parts/figures-in-words.ts";
import { useCaseNow } from "../case-now.ts";

/** The instruments of each canal drawn to scale beside it, the largest to length marked. */
export function CanalsToScale() {
  const part = useEditedPart();
  const { ledger } = useCaseNow();
  const canals = useMemo(() => (part.kind === "visit" ? instrumentsToScale(part, ledger) : []), [part, ledger]);
  const drawn = canals.filter(({ instruments }) => instruments.length > 0);
  if (drawn.length === 0) return null;
  return (
    <div className="canals-to-scale">
      {drawn.map((canal) => (
        <Drawn key={canal.canal} canal={canal} isLast={canal === drawn.at(-1)} />
      ))}
    </div>
  );
}

interface DrawnOptions {
  readonly canal: CanalToScale;
  /** The canal that was entered last stands open. */
  readonly isLast: boolean;
}

function Drawn({ canal: { canal, lengthMm, instruments, largest }, isLast }: DrawnOptions) {
  const figure = useMemo(() => {
    const beside = lengthMm === undefined ? {} : { canal: { name: canal, lengthMm } };
    return instrumentToScale({ instruments, ...beside, theme: "paper", widthPx: 640 });
  }, [canal, instruments, lengthMm]);
  return (
    <details open={isLast}>
      <summary>
        {canal}: {countOf(instruments.length, "instrument")} to scale
        {largest === undefined ? "" : <strong>; largest to length {largest}</strong>}
        {lengthMm === undefined && <span className="quiet">; its length is not in the table</span>}
      </summary>
      <FigureView figure={figure} />
    </details>
  );
}
