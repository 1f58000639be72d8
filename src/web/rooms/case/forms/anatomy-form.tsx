import { foundByWords } from "../../../../record/words/later-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TicksField } from "../../../parts/fields/tick-field.tsx";
import { innerSide } from "../../../words/two-view-words.ts";
import { levelsInWords, namesInWords, readLevels, readNames } from "./levels.ts";
import { rowName } from "./row-name.ts";
import { TypedCell } from "./typed-cell.tsx";

/** How the roots became known, and the roots and canals once more as a table, with sides called as they are in the tooth. */
export const AnatomyForm = ({ tooth }: { readonly tooth: string }) => (
  <>
    <div className="fields">
      <TicksField at="foundBy" label="Found by" words={foundByWords} />
      <FilledBefore />
    </div>
    <details className="roots-table">
      <summary>The same roots as a table</summary>
      <RootsTable tooth={tooth} />
      <p className="quiet">
        2-1 are two canals that join; 1-2-1 is one that parts and joins again; a C-shaped section carries its form: 1
        C1-2 C3.
      </p>
    </details>
  </>
);

const RootsTable = ({ tooth }: { readonly tooth: string }) => (
  <Rows
    at="roots"
    label="Roots"
    add="Add a root"
    start={() => ({ name: "X", levels: [1] })}
    nameOf={(row, index) => rowName(row, "name", `root ${index + 1}`)}
    columns={[
      { head: "Root", narrow: true, cell: <TextField at="name" label="Name" bare /> },
      {
        head: "Lies",
        cell: (
          <SelectField
            at="side"
            label="Side"
            words={{ buccal: "buccal", lingual: innerSide(tooth) }}
            unset="in line"
            bare
          />
        ),
      },
      {
        head: "Canals, orifice to foramen",
        cell: (
          <TypedCell at="levels" label="Canals by level" inWords={levelsInWords} read={readLevels} placeholder="2-1" />
        ),
        wide: true,
      },
      {
        head: "Names at the orifice",
        cell: (
          <TypedCell at="orifices" label="Names" inWords={namesInWords} read={readNames} placeholder="as the root" />
        ),
        wide: true,
      },
    ]}
  />
);

const FilledBefore = () => (
  <div className="field">
    <span className="field-label" aria-hidden="true">
      Came filled
    </span>
    <TypedCell
      at="filledBefore"
      label="Canals that came filled"
      inWords={namesInWords}
      read={readNames}
      placeholder="none"
    />
  </div>
);
