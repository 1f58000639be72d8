import { useState } from "react";
import { Link } from "wouter";
import { dueWords } from "../../../../record/words/due-words.ts";
import type { DueView } from "../../../../server/api.ts";
import { Button } from "../../../parts/button.tsx";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { numberInWords } from "../../../parts/figures-in-words.ts";
import { useSettings, useTeeth } from "../../../record/readings.ts";
import { capital } from "../../../words/capital.ts";
import { toothInNotation } from "../../../words/tooth-words.ts";
import { type DueGroup, distanceOfDue } from "./due-groups.ts";

interface DueGroupsOptions {
  readonly groups: readonly DueGroup[];
  readonly today: string;
  readonly clear: () => void;
}

/** What is due, a heading for each span; arrow keys walk over all of it. */
export function DueGroups({ groups, today, clear }: DueGroupsOptions) {
  if (groups.length === 0)
    return (
      <p className="due-none">
        Nothing of these kinds is due.{" "}
        <Button weight="bare" onClick={clear}>
          Show all
        </Button>
      </p>
    );
  return groups.map((group) => <Group key={group.span} group={group} today={today} />);
}

/** So many rows of a span are drawn before more are asked for. */
const atOnce = 100;

function Group({ group: { span, name, to, due }, today }: { readonly group: DueGroup; readonly today: string }) {
  const [limit, setLimit] = useState(atOnce);
  return (
    <section className="due-group" data-span={span} aria-labelledby={`due-${span}`}>
      <h2 id={`due-${span}`}>
        {span === "overdue" && <span aria-hidden="true">▲ </span>}
        {name} <span className="due-group-count">{numberInWords(due.length, 0)}</span>
        {to !== undefined && <span className="quiet"> to {dayInWords(to)}</span>}
      </h2>
      <ul>
        {due.slice(0, limit).map((one) => (
          <li key={`${one.caseId} ${one.partId} ${one.kind}`}>
            <Row due={one} today={today} />
          </li>
        ))}
      </ul>
      {due.length > limit && (
        <Button weight="bare" onClick={() => setLimit(limit + atOnce)}>
          Show {numberInWords(Math.min(atOnce, due.length - limit), 0)} more of {numberInWords(due.length - limit, 0)}
        </Button>
      )}
    </section>
  );
}

/** One thing that is due; it leads to the very part that says so. */
function Row({ due, today }: { readonly due: DueView; readonly today: string }) {
  const teeth = useTeeth();
  const settings = useSettings();
  const tooth = toothInNotation(due.tooth, teeth.data, settings.data?.notation ?? "twoDigit");
  return (
    <Link href={`/case/${due.caseId}/${due.partId}`} className="due-row">
      <span className="due-row-when">{distanceOfDue(today, due.on)}</span>
      <span className="due-row-day">{dayInWords(due.on)}</span>
      <span className="due-row-kind">{capital(dueWords[due.kind])}</span>
      <span className="due-row-tooth">
        <span className="unseen">tooth </span>
        {tooth}
      </span>
      <span>{due.pseudonym}</span>
      <span className="due-row-mark">mark {due.mark}</span>
      <span>{due.demo && <span className="due-row-demo">Demo: invented</span>}</span>
    </Link>
  );
}
