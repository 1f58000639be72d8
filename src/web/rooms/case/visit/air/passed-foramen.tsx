import { useMemo } from "react";
import { marginInWords } from "../../../../../ledger/solvent-in-words.ts";
import { extrusionTold, type SolventTold } from "../../../../../ledger/solvent-told.ts";
import { doseKindWords, extrusionFigure, solventSourceName } from "../../../../../pages/solvent-figures.ts";
import { NumberField } from "../../../../parts/fields/number-field.tsx";
import { Optional } from "../../../../parts/fields/rows.tsx";
import { TextField } from "../../../../parts/fields/text-field.tsx";
import { FigureView } from "../../../../parts/figure-view.tsx";
import { quantityInWords } from "../../../../parts/figures-in-words.ts";
import { SeenMark } from "../../../../parts/seen-mark.tsx";
import { capital } from "../../../../words/capital.ts";
import { refusalInWords } from "../../../../words/value-words.ts";
import { useCaseNow } from "../../case-now.ts";
import { SaidBy } from "./around-the-sum.tsx";

type Extrusion = NonNullable<SolventTold["extrusion"]>;

/** What is taken to have passed the foramen, said by a person; nothing is assumed. */
export function PassedForamen({ visitId }: { readonly visitId: string }) {
  const { ledger } = useCaseNow();
  const told = extrusionTold(ledger, visitId);
  return (
    <section className="form-part" aria-labelledby="air-passed">
      <h2 id="air-passed">Solvent past the foramen</h2>
      <p className="quiet">
        Nobody measures it at the chair. Say what you take to have passed, and why; without that nothing is reckoned.
        With an open apex, resorption or a perforation it was not measured.
      </p>
      <div className="fields">
        <Optional
          at="solventPassed"
          label="amount that passed"
          add="Say what is taken to have passed"
          start={() => ({ says: "" })}
        >
          <NumberField at="massMg" label="Mass that passed" unit="mg" />
          <NumberField at="volumeMl" label="Or its volume" unit="ml" />
          <TextField at="says" label="Why that is taken" />
        </Optional>
        <NumberField at="vitalSigns.bodyMassKg" label="Body mass" unit="kg" />
      </div>
      {told?.why !== undefined && <p className="look">◆ {refusalInWords(told.why)}</p>}
      {told?.output && <ExtrusionTold extrusion={told.output} entryId={told.entryId} />}
    </section>
  );
}

interface ExtrusionToldOptions {
  readonly extrusion: Extrusion;
  readonly entryId: string;
}

/** The margins to each dose on a ladder, the saying that has no source, and what was measured in teeth. */
function ExtrusionTold({ extrusion, entryId }: ExtrusionToldOptions) {
  const { margins, tradition, measured, doseMgPerKg, massMg } = extrusion;
  const figure = useMemo(() => extrusionFigure(extrusion, { theme: "paper", widthPx: 640 }), [extrusion]);
  return (
    <div className="form-part">
      <p>
        {quantityInWords(massMg, "mg")}, that is{" "}
        <a className="air-number" href={`#${entryId}`}>
          {quantityInWords(doseMgPerKg, "mg/kg")}
        </a>
        .
      </p>
      <FigureView figure={figure} />
      <ul className="air-points" aria-label="Against each dose, the lowest first">
        {margins.map((one) => (
          <li key={one.kind + one.source + one.mgPerKg}>
            {capital(marginInWords(one))} the {doseKindWords[one.kind]} of {quantityInWords(one.mgPerKg, "mg/kg")}:{" "}
            <span className="quiet">
              {solventSourceName(one.source)} {one.mark === "own" ? "as entered" : <SeenMark verification={one.mark} />}
            </span>
          </li>
        ))}
        {margins.length === 0 && <li>No dose to hold it against was read for this solvent.</li>}
        <li>
          {tradition.says} {quantityInWords(tradition.impliedMgPerKg.low, "mg/kg")} to{" "}
          {quantityInWords(tradition.impliedMgPerKg.high, "mg/kg")}. <span className="quiet">common practice</span>
        </li>
        {measured.map((one) => (
          <li key={one.says}>
            <SaidBy one={one} />
          </li>
        ))}
      </ul>
    </div>
  );
}
