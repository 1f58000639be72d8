import type { DueView } from "../../../../server/api.ts";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";

interface CalendarFileOptions {
  readonly due: readonly DueView[];
  readonly today: string;
}

/** What is due as a file for a calendar: one's own days; the invented ones of the demo only while there are no others. */
export function CalendarFile({ due, today }: CalendarFileOptions) {
  const isDemo = due.every(({ demo }) => demo);
  useShortcut("c", "Due", "Calendar file", () => document.getElementById("due-calendar")?.click());
  return (
    <>
      <span className="quiet" id="due-calendar-says">
        {isDemo ? "Invented days of the demo" : "Your own cases"}: kind, day and mark; no pseudonym, no tooth
      </span>
      <a
        id="due-calendar"
        className="button"
        href={`/api/due.ics?today=${today}&demo=${isDemo ? "with" : "without"}`}
        download="canalog-due.ics"
        aria-describedby="due-calendar-says"
        aria-keyshortcuts="c"
      >
        Calendar file <KeyHint keys="c" />
      </a>
    </>
  );
}
