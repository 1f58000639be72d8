import { useState } from "react";
import { ChairDialog } from "./chair-dialog.tsx";
import { useBench } from "./use-bench.ts";
import { WordsLine } from "./words-line.tsx";

/** A line that is noted at its minute; without a running clock it goes to the visit's note. */
export function NoteDialog({ close }: { readonly close: () => void }) {
  const { visit, record, minute } = useBench("Noted");
  const atMin = minute();
  const [text, setText] = useState("");
  const says = text.trim();
  const save = () => {
    const next =
      atMin === undefined
        ? { ...visit, note: visit.note === "" ? says : `${visit.note}\n${says}` }
        : { ...visit, log: [...(visit.log ?? []), { atMin, says }] };
    record(next, says.length > 40 ? "a line" : `“${says}”`);
    close();
  };
  return (
    <ChairDialog title="Note" close={close} records="Note it" record={says === "" ? undefined : save}>
      <WordsLine
        label={atMin === undefined ? "Noted without a minute" : `Noted at ${atMin} min`}
        value={text}
        write={setText}
      />
    </ChairDialog>
  );
}
