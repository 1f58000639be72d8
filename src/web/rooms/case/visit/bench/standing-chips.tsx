import type { Standing } from "../../../../../record/chairside/visit-standing.ts";
import { useBenchWays } from "./opened.ts";

const marks = { done: "✓", open: "○", look: "◆" } as const;
const said = { done: "done", open: "open", look: "to be looked at" } as const;

interface StandingChipsOptions {
  readonly standing: readonly Standing[];
  readonly readOnly: boolean;
  readonly label?: string;
}

/** How things stand, by a mark and in words; a press goes to where it is written. */
export function StandingChips({ standing, readOnly, label = "How the visit stands" }: StandingChipsOptions) {
  const { lead } = useBenchWays();
  return (
    <ul className="bench-chips" aria-label={label}>
      {standing.map(({ leads, stands, says }) => (
        <li key={leads}>
          <button
            type="button"
            className="bench-chip"
            data-stands={stands}
            disabled={readOnly}
            onClick={() => lead(leads)}
          >
            <span aria-hidden="true">{marks[stands]}</span>
            <span className="unseen">{said[stands]}: </span>
            {says}
          </button>
        </li>
      ))}
    </ul>
  );
}
