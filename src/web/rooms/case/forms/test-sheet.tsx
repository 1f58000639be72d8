import { replyWords, touchWords } from "../../../../record/words/finding-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { emptyTestedTooth } from "../new-bodies.ts";
import { KeyCell } from "./key-cell.tsx";
import { probingInWords, readProbing } from "./probing.ts";
import { rowName } from "./row-name.ts";
import { TypedCell } from "./typed-cell.tsx";

const notDone = { n: "none", x: "notDone" } as const;

/** The sheet of tests: a row a tooth, a column a test, one key a cell. */
export const TestSheet = () => (
  <>
    <Rows
      at="teeth"
      label="Tests by tooth"
      add="Add a control tooth"
      start={() => emptyTestedTooth("11", "control")}
      nameOf={(row, index) => rowName(row, "tooth", `tooth ${index + 1}`)}
      columns={[
        { head: "Tooth", narrow: true, cell: <TextField at="tooth" label="Tooth" bare /> },
        {
          head: "Is",
          cell: <SelectField at="role" label="Role" words={{ tooth: "the tooth", control: "control" }} bare />,
        },
        { head: "Cold", cell: <KeyCell at="cold.reply" label="Cold" words={replyWords} /> },
        {
          head: "lingers",
          narrow: true,
          unit: "s",
          cell: <NumberField at="cold.lingersSeconds" label="Cold lingers" unit="s" bare />,
        },
        { head: "Heat", cell: <KeyCell at="heat.reply" label="Heat" words={replyWords} /> },
        {
          head: "Electric",
          narrow: true,
          cell: <NumberField at="electric" label="Electric" words={notDone} required bare />,
        },
        { head: "Percussion", cell: <KeyCell at="percussion" label="Percussion" words={touchWords} /> },
        { head: "Palpation", cell: <KeyCell at="palpation" label="Palpation" words={touchWords} /> },
        { head: "Bite", cell: <KeyCell at="bite" label="Bite" words={touchWords} /> },
        {
          head: "Mobility",
          narrow: true,
          cell: <NumberField at="mobility" label="Mobility" words={{ x: "notDone" }} required bare />,
        },
        {
          head: "Probing",
          unit: "mm",
          cell: (
            <TypedCell at="probingMm" label="Probing" inWords={probingInWords} read={readProbing} placeholder="mm" />
          ),
        },
      ]}
    />
    <p className="quiet">
      One key a cell: n none or normal again for the next, h heightened, s slight, p painful, x not done; a number for
      electric, mobility and probing (3 2 3 / 3 2 3: mesial to distal, buccal / lingual). Arrow keys walk.
    </p>
  </>
);
