import { useState } from "react";
import { Link } from "wouter";
import { instrumentName } from "../../../../record/instrument-name.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { alloyWords, movementWords } from "../../../../record/words/visit-words.ts";
import { Button } from "../../../parts/button.tsx";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { useCabinet } from "../../../record/cabinet.ts";
import { CanalsToScale } from "./canals-to-scale.tsx";
import "./instruments-entered.css";
import { QuickEntry } from "./quick-entry.tsx";
import { UseMore } from "./use-more.tsx";

type Use = BodyOf<"visit">["instruments"][number];

/** Which instrument went into which canal, how deep, how long and at what speed; by sequences of the cabinet or row by row. */
export function InstrumentsEntered() {
  const { readOnly } = useField("instruments", "Instruments");
  return (
    <section className="form-part instruments-entered">
      <h2>Instruments, by geometry</h2>
      {!readOnly && <Ways />}
      <Rows
        at="instruments"
        label="Instruments"
        add="Add an instrument by hand"
        start={() => ({ size: 25, taper: 0.04, alloy: "nickelTitanium", movement: "continuous" })}
        nameOf={(row, index) => nameOfUse(row as Use, index)}
        columns={[
          { head: "Canal", narrow: "name", cell: <TextField at="canal" label="Canal" optional bare /> },
          { head: "Size", cell: <NumberField at="size" label="Size" required bare />, figure: true },
          { head: "Taper", cell: <NumberField at="taper" label="Taper" digits={2} required bare />, figure: true },
          { head: "Alloy", cell: <SelectField at="alloy" label="Alloy" words={alloyWords} bare />, wide: true },
          { head: "Movement", cell: <SelectField at="movement" label="Movement" words={movementWords} bare /> },
          { head: "Turns", unit: "/min", cell: <NumberField at="rpm" label="Turns a minute" bare />, figure: true },
          { head: "For", unit: "s", cell: <NumberField at="seconds" label="Time" unit="s" bare />, figure: true },
          {
            head: "Depth",
            unit: "mm",
            cell: <NumberField at="depthMm" label="Depth" unit="mm" digits={1} bare />,
            figure: true,
          },
          { head: "More", cell: <UseMore /> },
        ]}
      />
      <CanalsToScale />
    </section>
  );
}

/** `MB1, 25/.04, row 3`, so that rows of one instrument are told apart. */
const nameOfUse = (row: Use, index: number): string =>
  [row.canal ?? "no canal", ...(hasSize(row) ? [instrumentName(row)] : []), `row ${index + 1}`].join(", ");

/** A row may stand half written. */
const hasSize = ({ size, taper }: Partial<Use>): boolean => typeof size === "number" && typeof taper === "number";

function Ways() {
  const [open, setOpen] = useState(false);
  // Read while the page is open, so that counts are those after the last change when the entry opens.
  useCabinet();
  useShortcut("i", "Case", "Instruments into the next canal", () => setOpen(true));
  return (
    <div className="entry-ways">
      <Button hint="i" onClick={() => setOpen(true)}>
        Instruments into a canal
      </Button>
      <Link href="/instruments" className="button button-bare">
        Cabinet
      </Link>
      {open && <QuickEntry close={() => setOpen(false)} />}
    </div>
  );
}
