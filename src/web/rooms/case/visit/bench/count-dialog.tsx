import { useState } from "react";
import type { Visit } from "../materials/use-visit.ts";
import { ChairDialog } from "./chair-dialog.tsx";
import { useBench } from "./use-bench.ts";
import { countFault, withCounted } from "./with-counted.ts";
import { WordsLine } from "./words-line.tsx";

/** Instruments counted out before the work and in after it, with the set and its cycle. */
export function CountDialog({ close }: { readonly close: () => void }) {
  const { visit, record } = useBench("Instruments counted");
  const now: Partial<NonNullable<Visit["instrumentSet"]>> = visit.instrumentSet ?? {};
  const [typed, setTyped] = useState({
    ...{ set: now.set ?? "", steriliserCycle: now.steriliserCycle ?? "" },
    ...{ countedOut: textOf(now.countedOut), countedIn: textOf(now.countedIn) },
  });
  const write = (at: keyof typeof typed) => (text: string) => setTyped({ ...typed, [at]: text });
  const faults = [countFault(typed.countedOut), countFault(typed.countedIn)];
  const { next, says, differs } = withCounted(visit, typed);
  const save = () => {
    record(next, says);
    close();
  };
  return (
    <ChairDialog
      title="Count the instruments"
      close={close}
      records="Record the count"
      record={faults.every((fault) => fault === undefined) ? save : undefined}
      isLook={differs !== undefined}
    >
      <div className="count-fields">
        <WordsLine label="Counted out" value={typed.countedOut} write={write("countedOut")} fault={faults[0]} number />
        <WordsLine label="Counted in" value={typed.countedIn} write={write("countedIn")} fault={faults[1]} number />
      </div>
      {differs !== undefined && (
        <p className="time-out-stop" role="alert">
          <strong>{differs}</strong>
        </p>
      )}
      <div className="count-fields">
        <WordsLine label="Instrument set" value={typed.set} write={write("set")} />
        <WordsLine label="Steriliser cycle" value={typed.steriliserCycle} write={write("steriliserCycle")} />
      </div>
    </ChairDialog>
  );
}

const textOf = (count: number | undefined): string => (count === undefined ? "" : String(count));
