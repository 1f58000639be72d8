import { useState } from "react";
import { Button } from "../../../parts/button.tsx";
import { useCaseNow } from "../case-now.ts";
import { EntryDialog } from "../ledger/entry-dialog.tsx";

interface DifficultyOriginOptions {
  readonly entryId: string;
  /** On the button that opens the entry. */
  readonly says: string;
}

/** What a list of difficulty is not, and the entry that it stands in. */
export function DifficultyOrigin({ entryId, says }: DifficultyOriginOptions) {
  const { caseId } = useCaseNow();
  const [source, setSource] = useState(false);
  return (
    <>
      <p className="quiet plan-note">
        A list without a total and without a grade.{" "}
        <Button weight="bare" onClick={() => setSource(true)}>
          {says}
        </Button>
      </p>
      {source && <EntryDialog caseId={caseId} entryId={entryId} close={() => setSource(false)} />}
    </>
  );
}
