import { Link } from "wouter";
import { today } from "../../../parts/days-in-words.ts";
import { numberInWords } from "../../../parts/figures-in-words.ts";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { useDue } from "../../../record/due.ts";
import { dueCounts, endOfWeek } from "./due-groups.ts";
import "./due-link.css";

/** Leads from the logbook to what is due, and says how much of it there is. */
export function DueLink() {
  const now = today();
  const due = useDue(now, endOfWeek(now));
  const { overdue, week } = dueCounts(due.data ?? [], now);
  return (
    <Link href="/due" className="button button-bare due-link" aria-keyshortcuts="d">
      Due
      {week > 0 && <span className="due-link-count due-link-week">{numberInWords(week, 0)} this week</span>}
      {overdue > 0 && (
        <span className="due-link-count look">
          <span aria-hidden="true">▲ </span>
          {numberInWords(overdue, 0)} overdue
        </span>
      )}
      <KeyHint keys="d" />
    </Link>
  );
}
