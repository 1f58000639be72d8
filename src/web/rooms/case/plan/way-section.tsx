import { useId, useMemo } from "react";
import { outcomeFigure } from "../../../../pages/outcome-figure.ts";
import { wayWords } from "../../../../record/words/case-words.ts";
import { Button } from "../../../parts/button.tsx";
import { useField, Within } from "../../../parts/fields/editing.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { FigureView } from "../../../parts/figure-view.tsx";
import { countOf } from "../../../parts/figures-in-words.ts";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { sentenceInWords } from "../../../words/value-words.ts";
import { SourceMark } from "./source-mark.tsx";
import { Conflicts, Factors, MustBeTrue, Reasons } from "./way-facts.tsx";
import { WayRisks } from "./way-risks.tsx";
import { outcomesByNearness, type WayShown } from "./ways-shown.ts";

interface WaySectionOptions {
  readonly way: WayShown;
  readonly isChosen: boolean;
  readonly isOpen: boolean;
  readonly turn: () => void;
  /** Absent where the case is only looked at. */
  readonly choose: (() => void) | undefined;
  readonly weigh: (() => void) | undefined;
  readonly showEntry: () => void;
}

const standingShapes = { open: "●", "needs an answer first": "◇", "does not fit": "–" } as const;

/** One way: where it stands and why, and when opened all that is known of it for this case. */
export function WaySection({ way, isChosen, isOpen, turn, choose, weigh, showEntry }: WaySectionOptions) {
  const inside = useId();
  const name = sentenceInWords(wayWords[way.way]);
  return (
    <section className="way" data-chosen={isChosen} aria-label={name}>
      <header className="way-head">
        <button type="button" className="way-name" aria-expanded={isOpen} aria-controls={inside} onClick={turn}>
          {name}
        </button>
        <span className="way-standing">
          {standingShapes[way.standing]} {way.standing}
        </span>
        <span className="quiet">{visitsInWords(way)}</span>
        {isChosen && <strong className="way-chosen">✓ chosen</strong>}
        {choose && !isChosen && (
          <Button onClick={choose} aria-keyshortcuts={way.key}>
            Choose<span className="unseen"> {wayWords[way.way]}</span>
            {way.key !== undefined && <KeyHint keys={way.key} />}
          </Button>
        )}
      </header>
      <Reasons of={way.why} />
      {isOpen && (
        <div className="way-inside" id={inside}>
          <MustBeTrue of={way.mustBeTrueFirst} />
          <Outcomes way={way} showEntry={showEntry} />
          <Factors of={way.factors} />
          <WayRisks of={way.risks} />
          <Steps way={way} />
          <ForAndAgainst way={way.way} weigh={weigh} />
        </div>
      )}
    </section>
  );
}

const visitsInWords = ({ visits }: WayShown): string =>
  visits.most === 0
    ? ""
    : /^\d+( (or|to) \d+)?$/.test(visits.usual)
      ? `${visits.usual} ${visits.most === 1 ? "visit" : "visits"}`
      : `visits: ${visits.usual}`;

/** The series of groups like this case; the others stand folded below. */
function Outcomes({ way, showEntry }: Pick<WaySectionOptions, "way" | "showEntry">) {
  const { alike, other } = useMemo(() => outcomesByNearness(way.outcomes), [way.outcomes]);
  if (way.outcomes.length === 0)
    return (
      <section className="way-part">
        <h3>Published outcomes</h3>
        <p className="quiet">No published figure is kept for this way.</p>
      </section>
    );
  return (
    <section className="way-part">
      <h3>Published outcomes</h3>
      <Series outcomes={alike} />
      {other.length > 0 && (
        <details>
          <summary>{countOf(other.length, "more series", "more series")} of wider or other groups</summary>
          <Series outcomes={other} />
        </details>
      )}
      <p className="quiet plan-note">
        Filled: the group nearest to this case. * recalled, not read. Series stand beside each other; none is pooled.{" "}
        <Button weight="bare" onClick={showEntry}>
          Where these numbers come from
        </Button>
      </p>
      <Conflicts of={way.conflicts} />
    </section>
  );
}

function Series({ outcomes }: Pick<WayShown, "outcomes">) {
  const figure = useMemo(() => outcomeFigure({ outcomes }, { theme: "paper", widthPx: 686 }), [outcomes]);
  return figure === undefined ? null : <FigureView figure={figure} />;
}

const Steps = ({ way: { steps, visits } }: Pick<WaySectionOptions, "way">) => (
  <section className="way-part">
    <h3>Steps and visits</h3>
    {steps.length > 0 && (
      <ol className="way-steps">
        {steps.map((step) => (
          <li key={step}>{sentenceInWords(step)}</li>
        ))}
      </ol>
    )}
    <p className="quiet plan-note">
      {sentenceInWords(visits.why)} <SourceMark {...visits} />
    </p>
  </section>
);

/** What the person says for and against the way, in the row of it. */
function ForAndAgainst({ way, weigh }: { readonly way: string; readonly weigh: (() => void) | undefined }) {
  const options = useField("options", "Ways that were weighed").value;
  const rows: readonly unknown[] = Array.isArray(options) ? options : [];
  const at = rows.findIndex((row) => typeof row === "object" && row !== null && Reflect.get(row, "way") === way);
  if (at === -1)
    return weigh ? (
      <Button weight="bare" onClick={weigh}>
        Say what speaks for and against it
      </Button>
    ) : null;
  return (
    <Within at={`options.${at}`} of={wayWords[way as keyof typeof wayWords] ?? way}>
      <div className="fields way-words">
        <TextField at="forIt" label="For it" wraps />
        <TextField at="againstIt" label="Against it" wraps />
      </div>
    </Within>
  );
}
