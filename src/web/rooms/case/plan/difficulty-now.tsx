import { difficultyTold } from "../../../../ledger/difficulty-told.ts";
import { entryNow } from "../../../../ledger/entry-now.ts";
import { Cautions } from "../../../parts/cautions.tsx";
import { useCaseNow } from "../case-now.ts";
import { DifficultyList } from "./difficulty-list.tsx";
import { DifficultyOrigin } from "./difficulty-origin.tsx";

/** What makes the tooth harder as the record stands now; nothing while the ledger has no such list. */
export function DifficultyNow() {
  const { parts, ledger } = useCaseNow();
  const entry = entryNow("difficulty", ledger, parts);
  const told = difficultyTold(entry);
  if (told === undefined || entry === undefined) return null;
  return (
    <section className="form-part">
      <h2>What makes this tooth harder</h2>
      <DifficultyList told={told} />
      <Cautions topic="difficulty" cautions={told.cautions} />
      <DifficultyOrigin entryId={entry.id} says="Where it comes from" />
    </section>
  );
}
