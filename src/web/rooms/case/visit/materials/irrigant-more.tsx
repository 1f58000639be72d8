import { useState } from "react";
import { Button } from "../../../../parts/button.tsx";
import { Dialog } from "../../../../parts/dialog.tsx";
import { useField, Within } from "../../../../parts/fields/editing.tsx";
import { NumberField } from "../../../../parts/fields/number-field.tsx";
import { TextField } from "../../../../parts/fields/text-field.tsx";
import { type Irrigant, needleInWords } from "./read-irrigant.ts";

/** The rest of a row of the irrigation: what it is where it is another one, its canal, its needle. */
export function IrrigantMore() {
  const field = useField("", "More");
  const [open, setOpen] = useState(false);
  const row = field.value as Irrigant;
  const shown = [row.named, row.canal].filter((text) => text !== undefined && text !== "").join(", ");
  if (field.readOnly)
    return <span className="quiet">{[shown, row.needle && needleInWords(row.needle)].filter(Boolean).join("; ")}</span>;
  return (
    <>
      <button
        type="button"
        className="button button-bare use-more"
        aria-haspopup="dialog"
        onClick={() => setOpen(true)}
      >
        {shown === "" ? (row.needle === undefined ? "more" : "needle") : shown}
        <span className="unseen">: {field.fullLabel}</span>
      </button>
      {open && (
        <Dialog title={field.fullLabel} close={() => setOpen(false)}>
          <div className="fields">
            <TextField at="named" label="What it is, where it is another one" optional />
            <TextField at="canal" label="Canal; all that are open where empty" optional />
          </div>
          <NeedleOfRow />
        </Dialog>
      )}
    </>
  );
}

const vents = { open: "open-ended", sideVented: "closed, side-vented" };

/** The needle of a row that stands: its depth and kind come together, by a dialog; here they are mended. */
function NeedleOfRow() {
  const field = useField("needle", "Needle");
  const row = useField("", "Irrigant").value as Irrigant;
  if (row.needle === undefined) return <p className="quiet">No needle was told when it was entered.</p>;
  const { needle } = row;
  const turn = (sideVented: boolean) =>
    field.write({ ...needle, sideVented }, sideVented ? vents.sideVented : vents.open, "now");
  return (
    <Within at="needle">
      <div className="entry-press">
        <span>{needle.sideVented ? vents.sideVented : vents.open}</span>
        <Button onClick={() => turn(!needle.sideVented)}>
          It was {needle.sideVented ? vents.open : vents.sideVented}
        </Button>
        <Button weight="bare" onClick={() => field.write(undefined, "taken out", "now")}>
          Take out the needle
        </Button>
      </div>
      <div className="fields">
        <NumberField at="depthFromStopMm" label="Tip short of the stop" unit="mm" required />
        <NumberField at="gauge" label="Gauge" />
        <NumberField at="flowMlPerMin" label="Flow" unit="ml/min" />
      </div>
    </Within>
  );
}
