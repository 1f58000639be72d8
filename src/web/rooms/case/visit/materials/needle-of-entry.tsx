import { Button } from "../../../../parts/button.tsx";
import { AmountField, ChoiceOfEntry } from "./entry-fields.tsx";
import { type Needle, needleInWords } from "./read-irrigant.ts";
import type { Entry } from "./use-entry.ts";

interface NeedleOfEntryOptions {
  readonly entry: Entry;
  /** The one that was told last in this visit. */
  readonly before: Needle | undefined;
  readonly same: () => void;
}

const kinds = { "": "not told", sideVented: "closed, side-vented", open: "open-ended" };
const moves = { free: "moved freely", locked: "locked in the canal" };

/** The needle: told once in a visit, and offered again with one press. */
export const NeedleOfEntry = ({ entry, before, same }: NeedleOfEntryOptions) => (
  <>
    {before && (entry.typed.needle ?? "") === "" && (
      <div className="entry-press">
        <Button hint="n" onClick={same}>
          The same needle: {needleInWords(before)}
        </Button>
      </div>
    )}
    <details open={(entry.typed.needle ?? "") !== ""}>
      <summary>Needle</summary>
      <ChoiceOfEntry at="needle" label="Kind" entry={entry} words={kinds} />
      {(entry.typed.needle ?? "") !== "" && (
        <>
          <div className="fields">
            <AmountField {...{ entry, at: "depthFromStopMm", label: "Tip short of the stop", unit: "mm", step: 0.5 }} />
            <AmountField {...{ entry, at: "gauge", label: "Gauge" }} />
            <AmountField {...{ entry, at: "flowMlPerMin", label: "Flow, where measured", unit: "ml/min" }} />
          </div>
          <ChoiceOfEntry at="freeMovement" label="It" entry={entry} words={moves} />
        </>
      )}
    </details>
  </>
);
