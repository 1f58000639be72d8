import { dueKinds } from "../../../../record/due.ts";
import { dueWords } from "../../../../record/words/due-words.ts";
import type { DueView } from "../../../../server/api.ts";
import { Button } from "../../../parts/button.tsx";
import { numberInWords } from "../../../parts/figures-in-words.ts";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { capital } from "../../../words/capital.ts";
import { type DueFilter, everyDue, filteredDue, kindsDue, withKind } from "./due-groups.ts";

interface DueFilterLineOptions {
  readonly due: readonly DueView[];
  readonly filter: DueFilter;
  readonly change: (filter: DueFilter) => void;
}

/** Narrows what is due: kinds add up, and what is chosen stands out by its mark. */
export function DueFilterLine({ due, filter, change }: DueFilterLineOptions) {
  const ofOrigin = filteredDue(due, { kinds: [], origin: filter.origin });
  const isMixed = due.some(({ demo }) => demo) && due.some(({ demo }) => !demo);
  const isNarrowed = filter.kinds.length > 0 || filter.origin !== "";
  return (
    <search className="due-filter" aria-label="Kinds of what is due">
      {kindsDue(ofOrigin).map(({ kind, count }) => (
        <button
          key={kind}
          type="button"
          className="due-kind"
          aria-pressed={filter.kinds.includes(kind)}
          aria-keyshortcuts={String(dueKinds.indexOf(kind) + 1)}
          onClick={() => change(withKind(filter, kind))}
        >
          <span className="due-kind-mark" aria-hidden="true">
            {filter.kinds.includes(kind) ? "●" : "○"}
          </span>
          {capital(dueWords[kind])}
          <span className="due-kind-count">{numberInWords(count, 0)}</span>
          <KeyHint keys={String(dueKinds.indexOf(kind) + 1)} />
        </button>
      ))}
      {isMixed && (
        <select
          aria-label="Origin"
          className="due-origin"
          value={filter.origin}
          onChange={({ target }) =>
            change({ ...filter, origin: target.value === "own" || target.value === "demo" ? target.value : "" })
          }
        >
          <option value="">demo and own</option>
          <option value="own">own</option>
          <option value="demo">demo</option>
        </select>
      )}
      {isNarrowed && (
        <Button weight="bare" hint="0" onClick={() => change(everyDue)}>
          Show all
        </Button>
      )}
    </search>
  );
}
