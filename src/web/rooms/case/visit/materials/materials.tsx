import { type ReactNode, useState } from "react";
import { minuteNow } from "../../../../../record/chairside/visit-clock.ts";
import { confirmationsOf } from "../../../../../record/words/confirmed-words.ts";
import { medicamentWords } from "../../../../../record/words/visit-words.ts";
import { Button } from "../../../../parts/button.tsx";
import { SelectField } from "../../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../../parts/fields/number-field.tsx";
import { Optional } from "../../../../parts/fields/rows.tsx";
import { TextField } from "../../../../parts/fields/text-field.tsx";
import { InstrumentsEntered } from "../../entry/instruments-entered.tsx";
import { AnaestheticSection } from "./anaesthetic-section.tsx";
import { HeatSection } from "./heat-section.tsx";
import { IrrigationSection } from "./irrigation-section.tsx";
import { MaterialDialogs, type MaterialEntered } from "./material-dialogs.tsx";
import { BurstRows, InjectionRows, IrrigantRows, SolventRows } from "./material-rows.tsx";
import "./materials.css";
import { useVisit } from "./use-visit.ts";

interface Opened {
  readonly material: MaterialEntered;
  /** The minute of the visit when it was opened. */
  readonly atMin: number | undefined;
}

/** What was given, used and left, each with what its sum says; entered by a press, mended row by row. */
export function Materials() {
  const { visit, readOnly } = useVisit("Materials");
  const [opened, setOpened] = useState<Opened>();
  const enter = (material: MaterialEntered, words: string) =>
    readOnly ? null : (
      <Button onClick={() => setOpened({ material, atMin: minuteNow(visit, Date.now()) })}>{words}</Button>
    );
  return (
    <>
      <Material name="Local anaesthetic" enter={enter("anaesthetic", "Note an injection")}>
        <AnaestheticSection />
        {visit.anaesthetic.length > 0 && <InjectionRows />}
        <Confirmations of="anaesthetic" />
      </Material>
      <Material name="Irrigation, in order" enter={enter("irrigant", "Note an irrigant")}>
        <IrrigationSection />
        {visit.irrigation.length > 0 && <IrrigantRows />}
        <Confirmations of="irrigation" />
      </Material>
      <InstrumentsEntered />
      <Material name="Ultrasound" enter={enter("ultrasound", "Time a burst")}>
        <HeatSection />
        {visit.ultrasonics !== undefined && visit.ultrasonics.length > 0 && <BurstRows />}
      </Material>
      <Material name="Solvent" enter={enter("solvent", "Note a dose of solvent")}>
        {visit.solvent.length > 0 ? <SolventRows /> : <p className="quiet">No solvent is noted.</p>}
        <Confirmations of="solvent" />
      </Material>
      <Material
        name="Left in the tooth"
        enter={
          <>
            {visit.medicament === undefined && enter("medicament", "A medicament was left")}
            {visit.temporary === undefined && enter("temporary", "A temporary filling was placed")}
            {enter("filling", "Something stays in the tooth")}
          </>
        }
      >
        <LeftInTheTooth />
      </Material>
      <MaterialDialogs open={opened?.material} close={() => setOpened(undefined)} atMin={opened?.atMin} />
    </>
  );
}

interface MaterialOptions {
  readonly name: string;
  readonly enter: ReactNode;
  readonly children: ReactNode;
}

const Material = ({ name, enter, children }: MaterialOptions) => (
  <section className="form-part material">
    <h2>{name}</h2>
    {enter && <div className="material-enter">{enter}</div>}
    {children}
  </section>
);

/** Who stood by what was asked before it was recorded. */
function Confirmations({ of }: { readonly of: Parameters<typeof confirmationsOf>[1] }) {
  const { visit } = useVisit("Confirmed");
  const lines = confirmationsOf(visit, of);
  if (lines.length === 0) return null;
  return (
    <ul className="quiet" aria-label="Confirmed when it was asked">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

const nothing = () => ({});

/** Medicament and temporary filling as they stand; they come in by their dialogs. */
function LeftInTheTooth() {
  const { visit } = useVisit("Left in the tooth");
  return (
    <>
      {visit.medicament !== undefined && (
        <div className="fields">
          <Optional at="medicament" label="medicament" add="" start={nothing}>
            <SelectField at="kind" label="Medicament" words={medicamentWords} />
            <TextField at="detail" label="Detail" optional wraps />
            <DayField at="changeBy" label="Out, or changed, by" optional />
          </Optional>
        </div>
      )}
      {visit.temporary !== undefined && (
        <div className="fields">
          <Optional at="temporary" label="temporary filling" add="" start={nothing}>
            <TextField at="material" label="Temporary filling" wraps />
            <NumberField at="thicknessMm" label="Thickness" unit="mm" />
          </Optional>
        </div>
      )}
      <div className="fields">
        <TextField at="orificeBarrier" label="Barrier at the orifice" optional wraps />
        <TextField at="buildUp" label="Build-up" optional wraps />
      </div>
    </>
  );
}
