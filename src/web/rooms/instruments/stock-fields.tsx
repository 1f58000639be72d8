import type { ReactNode } from "react";
import { fillingWords, type StockHolds } from "../../../record/words/stock-words.ts";
import {
  activatedWords,
  agentWords,
  medicamentWords,
  solutionWords,
  solventWords,
  vasoconstrictorWords,
} from "../../../record/words/visit-words.ts";
import { SelectField } from "../../parts/fields/choice-field.tsx";
import { useField } from "../../parts/fields/editing.tsx";
import { NumberField } from "../../parts/fields/number-field.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";
import { plain } from "./stock-draft.ts";

interface StockFieldsOptions {
  readonly kind: StockHolds["kind"];
  /** A new material: nothing is chosen in it yet. */
  readonly isNew?: boolean;
}

/** What a material is, by its kind; usual amounts only where the clinic enters them. */
export function StockFields({ kind, isNew = false }: StockFieldsOptions): ReactNode {
  switch (kind) {
    case "anaesthetic":
      return <AnaestheticFields isNew={isNew} />;
    case "irrigant":
      return <IrrigantFields />;
    case "solvent":
      return <SolventFields />;
    case "medicament":
      return (
        <div className="fields">
          <SelectField at="holds.medicament" label="Medicament" words={medicaments} unset={unset} />
          <TextField at="holds.detail" label="In more words" optional />
        </div>
      );
    case "temporary":
      return (
        <div className="fields">
          <TextField at="holds.material" label="Material, by its kind" />
        </div>
      );
    case "filling":
      return (
        <div className="fields">
          <TextField at="holds.material" label="Material, by its kind" />
          <SelectField at="holds.as" label="Serves as" words={fillingWords} unset={unset} />
        </div>
      );
  }
}

const unset = "not said";
const { none: _none, ...medicaments } = medicamentWords;

function AnaestheticFields({ isNew }: { readonly isNew: boolean }) {
  return (
    <div className="fields">
      <SelectField at="holds.agent" label="Agent" words={agentWords} unset={unset} />
      <NumberField at="holds.percent" label="Strength" unit="%" required={!isNew} />
      <VasoconstrictorField isNew={isNew} />
      <NumberField at="holds.cartridgeMl" label="Volume of a cartridge" unit="ml" required={!isNew} />
    </div>
  );
}

function VasoconstrictorField({ isNew }: { readonly isNew: boolean }) {
  const name = useField("holds.vasoconstrictor.name", "Vasoconstrictor").value;
  return (
    <>
      {isNew ? (
        <SelectField
          at="holds.vasoconstrictor.name"
          label="Vasoconstrictor"
          words={{ ...vasoconstrictorWords, [plain]: "plain: none" }}
          unset={unset}
        />
      ) : (
        <KnownVasoconstrictor />
      )}
      {name === "felypressin" && <NumberField at="holds.vasoconstrictor.iuPerMl" label="Its strength" unit="IU/ml" />}
      {(name === "epinephrine" || name === "levonordefrin") && (
        <NumberField at="holds.vasoconstrictor.ratio" label="Its strength, 1 in" placeholder="100000" />
      )}
    </>
  );
}

/** Another vasoconstrictor has another strength: what stood of the first goes with it. */
function KnownVasoconstrictor() {
  const field = useField("holds.vasoconstrictor", "Vasoconstrictor");
  const { name = plain }: { readonly name?: string } = Object(field.value);
  return (
    <div className="field">
      <label className="field-label" htmlFor={field.id}>
        Vasoconstrictor
      </label>
      <select
        id={field.id}
        className="field-select"
        value={name}
        disabled={field.readOnly}
        onChange={({ target }) =>
          field.write(target.value === plain ? undefined : { name: target.value }, target.value, "now")
        }
      >
        {Object.entries({ ...vasoconstrictorWords, [plain]: "plain: none" }).map(([value, word]) => (
          <option key={value} value={value}>
            {word}
          </option>
        ))}
      </select>
    </div>
  );
}

function IrrigantFields() {
  const solution = useField("holds.solution", "Solution").value;
  return (
    <>
      <div className="fields">
        <SelectField at="holds.solution" label="Solution" words={solutionWords} unset={unset} />
        {solution === "other" && <TextField at="holds.named" label="What it is" />}
        <NumberField at="holds.percent" label="Strength" unit="%" placeholder="none" />
      </div>
      <Usual>
        <NumberField at="holds.volumeMl" label="Usual volume" unit="ml" placeholder="none" />
        <NumberField at="holds.minutes" label="Usual time" unit="min" placeholder="none" />
        <SelectField at="holds.activated" label="Usually activated" words={activatedWords} unset="not said" />
      </Usual>
    </>
  );
}

function SolventFields() {
  const solvent = useField("holds.solvent", "Solvent").value;
  return (
    <>
      <div className="fields">
        <SelectField at="holds.solvent" label="Solvent" words={solventWords} unset={unset} />
      </div>
      {solvent === "other" && (
        <>
          <div className="fields">
            <TextField at="holds.own.name" label="Its name" />
            <NumberField at="holds.own.molarMassGMol" label="Molar mass" unit="g/mol" />
            <NumberField at="holds.own.densityGMl" label="Density" unit="g/ml" />
            <NumberField at="holds.own.vapourPressureKPa" label="Vapour pressure in the room" unit="kPa" />
          </div>
          <p className="quiet">As its safety data sheet prints them. Without them no sum can be done of it.</p>
        </>
      )}
      <Usual>
        <NumberField at="holds.volumeMl" label="Usual dose" unit="ml" placeholder="none" />
      </Usual>
    </>
  );
}

/** What a visit is offered to begin with; it stands only where the clinic wrote it. */
const Usual = ({ children }: { readonly children: ReactNode }) => (
  <section className="form-part">
    <h3>Usual amounts, where the clinic has any</h3>
    <div className="fields">{children}</div>
  </section>
);
