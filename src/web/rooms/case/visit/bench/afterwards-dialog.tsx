import { useState } from "react";
import { afterwardsWords } from "../../../../../record/words/visit-words.ts";
import { today } from "../../../../parts/days-in-words.ts";
import { DayInput } from "../../../../parts/fields/day-input.tsx";
import { capital } from "../../../../words/capital.ts";
import type { Visit } from "../materials/use-visit.ts";
import { ChairDialog } from "./chair-dialog.tsx";
import { keysOf, Targets } from "./targets.tsx";
import { useBench } from "./use-bench.ts";
import { WordsLine } from "./words-line.tsx";

type Afterwards = NonNullable<Visit["afterwards"]>[number];

const kinds = (["asked", "call", "unplannedVisit", "flareUp"] as const).map((value, index) => ({
  ...{ value, says: capital(afterwardsWords[value]), hint: String(index + 1) },
}));
const pains = Array.from({ length: 11 }, (_, value) => ({ value: String(value), says: String(value) }));

/** Pain, calls and visits after the visit that nobody had planned; entered whole. */
export function AfterwardsDialog({ close }: { readonly close: () => void }) {
  const { visit, record } = useBench("Afterwards");
  const [what, setWhat] = useState<Afterwards["what"]>();
  const [on, setOn] = useState(() => today());
  const [pain, setPain] = useState<string>();
  const [says, setSays] = useState("");
  const [did, setDid] = useState("");
  const save = () => {
    if (what === undefined || on === "") return;
    const row: Afterwards = {
      ...{ on, what, says: says.trim() },
      ...(pain === undefined ? {} : { pain: Number(pain) }),
      ...(did.trim() === "" ? {} : { did: did.trim() }),
    };
    record({ ...visit, afterwards: [...(visit.afterwards ?? []), row] }, afterwardsWords[row.what]);
    close();
  };
  return (
    <ChairDialog
      title="Afterwards"
      close={close}
      keys={keysOf(kinds, setWhat)}
      records="Record it"
      record={what === undefined || on === "" ? undefined : save}
      missing="Press what it was."
    >
      <Targets label="What it was" targets={kinds} value={what} choose={setWhat} />
      <div className="field">
        <label className="field-label" htmlFor="afterwards-on">
          On
        </label>
        <DayInput id="afterwards-on" value={on} readOnly={false} onChange={({ target }) => setOn(target.value)} />
      </div>
      <Targets label="Pain, 0 to 10" columns={11} targets={pains} value={pain} choose={setPain} />
      <WordsLine label="What was said" value={says} write={setSays} />
      <WordsLine label="What was done" value={did} write={setDid} />
    </ChairDialog>
  );
}
