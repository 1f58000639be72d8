import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { Part } from "../../../../record/parts.ts";
import { type ComparedLook, waysToLook } from "../../../lightbox/compare/compared-look.ts";
import { ComparisonResult } from "../../../lightbox/compare/comparison-result.tsx";
import { HardPartList } from "../../../lightbox/compare/hard-part-list.tsx";
import { LandmarkList } from "../../../lightbox/compare/landmark-list.tsx";
import type { Comparing } from "../../../lightbox/compare/use-comparing.ts";
import type { HardPartUse } from "../../../lightbox/compare/use-hard-parts.ts";
import type { LandmarkUse } from "../../../lightbox/compare/use-landmarks.ts";
import { Button } from "../../../parts/button.tsx";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import { capital } from "../../../words/capital.ts";
import "../../../lightbox/view/measure-panel.css";

interface PanelOptions {
  readonly entry: LedgerEntry | undefined;
  readonly parts: readonly Part[];
  readonly comparing: Comparing;
  readonly use: LandmarkUse;
  readonly hard: HardPartUse;
  readonly outline: () => void;
  readonly name: (index: number, name: string) => void;
  readonly takeAway: () => void;
}

/** What the comparison came to, and the landmarks that it rests on. */
export function ComparePanel({ entry, parts, comparing, use, hard, outline, name, takeAway }: PanelOptions) {
  return (
    <aside className="measure-panel compare-panel" aria-label="Comparison">
      <Compare entry={entry} comparing={comparing} />
      {entry?.output !== undefined && <ComparisonResult entry={entry} parts={parts} />}
      <LandmarkList use={use} name={name} />
      <HardPartList use={hard} outline={outline} />
      <Button weight="bare" onClick={takeAway}>
        Take this comparison away
      </Button>
    </aside>
  );
}

/** The one press that compares; what is missing before it, and how far it is. */
function Compare({ entry, comparing }: Pick<PanelOptions, "entry" | "comparing">) {
  const { job, busy, refused } = comparing;
  const isKnown = entry?.output !== undefined;
  if (isKnown && !busy && refused === undefined) return null;
  const waits = entry?.refused?.[0]?.startsWith("not compared yet") ?? false;
  return (
    <section className="compare-press" aria-label="Compare">
      {!isKnown && <h2>{waits ? "Not compared yet" : "Nothing to compare yet"}</h2>}
      {!isKnown && !waits && entry?.refused !== undefined && <p>{sentenceOf(entry.refused)}</p>}
      {waits && !busy && (
        <p className="quiet">
          The later film is brought onto the earlier one, from the landmarks on. It takes a few seconds; a landmark that
          is moved afterwards asks for it again.
        </p>
      )}
      {waits && (
        <Button weight="strong" hint="C" disabled={busy} onClick={comparing.start}>
          Compare
        </Button>
      )}
      <div role="status">
        {busy && (
          <p className="compare-progress">
            <progress max={1} value={job?.fraction ?? 0} aria-label="Progress of the comparison" />
            <span>{job?.says ?? "Waiting"}</span>
            <Button weight="bare" onClick={comparing.stop}>
              Stop
            </Button>
          </p>
        )}
        {job?.state === "stopped" && waits && <p className="quiet">Stopped; nothing was kept.</p>}
      </div>
      {refused && <SayRefusal of={refused} />}
    </section>
  );
}

const sentenceOf = (lines: readonly string[]): string => `${capital(lines.join("; "))}.`;

interface WaysOptions {
  readonly look: ComparedLook;
  /** Whether one film lies on the other, and whether they compare. */
  readonly isCompared: boolean;
  readonly comparable: boolean;
  readonly take: (as: ComparedLook["as"]) => void;
}

/** The ways to look at both films. */
export const WaysToLook = ({ look, isCompared, comparable, take }: WaysOptions) => (
  <fieldset className="ways-to-look">
    <legend className="unseen">How to look at both films</legend>
    {waysToLook.map(({ as, keys, name, says }) => (
      <Button
        key={as}
        hint={keys}
        title={says}
        aria-pressed={look.as === as}
        disabled={(as !== "landmarks" && !isCompared) || (as === "difference" && !comparable)}
        onClick={() => take(as)}
      >
        {name}
      </Button>
    ))}
  </fieldset>
);
