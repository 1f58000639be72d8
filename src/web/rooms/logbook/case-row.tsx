import type { MouseEvent } from "react";
import { Link, useLocation } from "wouter";
import { apicalWords, patientInWords, pulpalWords, treatmentWords, wordFor } from "../../../record/words/case-words.ts";
import { dayInWords, daysBetween, distanceInWords, spanInWords, today } from "../../parts/days-in-words.ts";
import { numberInWords } from "../../parts/figures-in-words.ts";
import type { LogbookRow } from "./logbook-filter.ts";

interface CaseRowOptions {
  readonly row: LogbookRow;
  /** Its place in the whole table, heads counted. */
  readonly index: number;
}

/** One case in the logbook; the whole row opens it. */
export function CaseRow({ row, index }: CaseRowOptions) {
  const [, go] = useLocation();
  const address = `/case/${row.caseId}`;
  const open = (event: MouseEvent) => {
    if (event.target instanceof HTMLElement && event.target.closest("a") === null) go(address);
  };
  const diagnosis = [row.pulpal && wordFor(pulpalWords, row.pulpal), row.apical && wordFor(apicalWords, row.apical)];
  return (
    <tr onClick={open} aria-rowindex={index}>
      <th scope="row">
        <Link href={address} title={row.toothView?.name}>
          <strong>{row.written}</strong>
          <span className="unseen">
            {row.toothView?.name}, {row.pseudonym}
          </span>
        </Link>
      </th>
      <td>
        <span className="case-row-who">
          {row.pseudonym} <span className="quiet">{patientInWords(row, row.presentedOn)}</span>
        </span>
        {row.demo && <span className="case-row-demo">Demo: invented</span>}
      </td>
      <td>{wordFor(treatmentWords, row.treatment)}</td>
      <td className="case-row-long" data-room="wide">
        {[...new Set(diagnosis)].filter((text) => text !== null).join(" · ") || <Nothing says="no diagnosis" />}
      </td>
      <td>{dayInWords(row.presentedOn)}</td>
      <td data-figure="true" data-room="some">
        {row.fillingEndMm === null ? <Nothing says="not filled" /> : numberInWords(row.fillingEndMm, 1)}
      </td>
      <td>{row.mishaps === 0 ? <Nothing says="none" /> : <Mishaps count={row.mishaps} />}</td>
      <td data-figure="true" data-spare="true">
        {row.lastScore ?? <Nothing says="no reading" />}
      </td>
      <td>{row.nextOn === null ? <Nothing says="nothing planned" /> : <Next on={row.nextOn} state={row.recall} />}</td>
    </tr>
  );
}

const Nothing = ({ says }: { readonly says: string }) => (
  <span className="quiet">
    <span aria-hidden="true">–</span>
    <span className="unseen">{says}</span>
  </span>
);

const Mishaps = ({ count }: { readonly count: number }) => (
  <span className="case-row-mishap">
    <span aria-hidden="true">◇ </span>
    {count}
  </span>
);

const Next = ({ on, state }: { readonly on: string; readonly state: LogbookRow["recall"] }) => (
  <span className="case-row-next" data-state={state}>
    {state === "overdue" ? `overdue by ${spanInWords(daysBetween(on, today()))}` : distanceInWords(today(), on)}
  </span>
);
