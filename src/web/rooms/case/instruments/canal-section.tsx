import { type ReactNode, useId, useMemo, useState } from "react";
import { Link } from "wouter";
import { instrumentToScale } from "../../../../figures/instrument-to-scale.ts";
import {
  type CanalAtVisit,
  type InstrumentsOfCanal,
  type InstrumentUsed,
  mostBent,
} from "../../../../ledger/instruments-of-canals.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { Part } from "../../../../record/parts.ts";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import { BentInstrument } from "./bent-instrument.tsx";
import { gapsOfSeveral } from "./gaps-of-canal.ts";
import { UsedTable } from "./used-table.tsx";

interface CanalSectionOptions {
  readonly caseId: string;
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
  readonly of: InstrumentsOfCanal;
}

/** One canal: what went into it visit by visit, and under its visit the one that is looked at. */
export function CanalSection({ of, caseId, parts, ledger }: CanalSectionOptions) {
  const [wanted, want] = useState<string>();
  const heading = useId();
  const all = of.visits.flatMap(({ instruments }) => instruments);
  const several = useMemo(() => gapsOfSeveral(of), [of]);
  const shown = all.find(({ key }) => key === wanted) ?? mostBent(of);
  return (
    <section className="instruments-canal" aria-labelledby={heading}>
      <h3 id={heading}>{of.canal}</h3>
      {several.map(({ of: what, why, names }) => (
        <p key={what + why} className="look">
          ◇ {what} is not told of {names.length} instruments, for the same reason: {why}.{" "}
          <span className="quiet">{[...new Set(names)].join(", ")}</span>
        </p>
      ))}
      {of.visits.map((at) => (
        <AtVisit
          key={at.visit.id}
          {...{ at, caseId }}
          group={`${heading} choice`}
          canal={of.canal}
          shown={shown}
          show={want}
        >
          {shown && (
            <BentInstrument
              key={shown.key}
              {...{ caseId, parts, ledger }}
              used={shown}
              toldOfSeveral={several}
              title={`${shown.name} in ${of.canal}, ${dayInWords(at.visit.body.on)}`}
            />
          )}
        </AtVisit>
      ))}
    </section>
  );
}

interface AtVisitOptions {
  readonly at: CanalAtVisit;
  readonly canal: string;
  readonly caseId: string;
  readonly group: string;
  readonly shown: InstrumentUsed | undefined;
  readonly show: (key: string) => void;
  /** The instrument that is looked at; it stands under the visit that it was used at. */
  readonly children: ReactNode;
}

function AtVisit({ at, canal, caseId, group, shown, show, children }: AtVisitOptions) {
  const { visit, lengthMm, instruments } = at;
  const figure = useMemo(() => {
    const drawn = instruments.flatMap(({ key, drawn: one }) => (one ? [{ ...one, isMarked: key === shown?.key }] : []));
    const beside = lengthMm === undefined ? {} : { canal: { name: `${canal}, working length`, lengthMm } };
    return drawn.length === 0
      ? undefined
      : instrumentToScale({ instruments: drawn, ...beside, theme: "paper", widthPx: 640 });
  }, [instruments, lengthMm, canal, shown]);
  return (
    <div className="instruments-visit">
      <h4>
        <Link href={`/case/${caseId}/${visit.id}`}>Visit of {dayInWords(visit.body.on)}</Link>
      </h4>
      <UsedTable
        {...{ instruments, group, show }}
        shown={shown?.key}
        label={`Instruments in ${canal}, ${dayInWords(visit.body.on)}`}
      />
      {figure && <FigureView figure={figure} />}
      {instruments.some(({ key }) => key === shown?.key) && children}
    </div>
  );
}
