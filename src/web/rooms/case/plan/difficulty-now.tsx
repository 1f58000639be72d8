import { useState } from "react";
import { difficultyTold } from "../../../../ledger/difficulty-told.ts";
import { entryNow } from "../../../../ledger/entry-now.ts";
import { Button } from "../../../parts/button.tsx";
import { Cautions } from "../../../parts/cautions.tsx";
import { useCaseNow } from "../case-now.ts";
import { EntryDialog } from "../ledger/entry-dialog.tsx";
import { DifficultyList } from "./difficulty-list.tsx";

/** What makes the tooth harder as the record stands now; nothing while the ledger has no such list. */
export function DifficultyNow() {
  const { caseId, parts, ledger } = useCaseNow();
  const [source, setSource] = useState(false);
  const entry = entryNow("difficulty", ledger, parts);
  const told = difficultyTold(entry);
  if (told === undefined || entry === undefined) return null;
  return (
    <section className="form-part">
      <h2>What makes this tooth harder</h2>
      <DifficultyList told={told} />
      <Cautions topic="difficulty" cautions={told.cautions} />
      <p className="quiet plan-note">
        A list without a total and without a grade.{" "}
        <Button weight="bare" onClick={() => setSource(true)}>
          Where it comes from
        </Button>
      </p>
      {source && <EntryDialog caseId={caseId} entryId={entry.id} close={() => setSource(false)} />}
    </section>
  );
}
