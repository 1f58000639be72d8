import type { ReactNode } from "react";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { Part } from "../../../../record/parts.ts";
import type { Moment } from "../spine/spine-moments.ts";
import { entrySubject, partsBehind } from "./entry-subject.ts";
import { LedgerEntryView } from "./ledger-entry-view.tsx";
import "./ledger-panel.css";

interface LedgerPanelOptions {
  readonly caseId: string;
  readonly ledger: readonly LedgerEntry[];
  readonly parts: readonly Part[];
  readonly moment: Moment | undefined;
  /** The case is shown as it stood; the ledger is the one of now and would mislead. */
  readonly readOnly: boolean;
}

/** Every number that was computed from the case; those that rest on the moment in view come first. */
export function LedgerPanel({ caseId, ledger, parts, moment, readOnly }: LedgerPanelOptions) {
  if (readOnly) return <LedgerOfNow />;
  const all = ledger.filter(({ topic }) => topic !== "tooth");
  const told = all.filter(({ refused }) => refused === undefined);
  const refused = all.filter((entry) => entry.refused !== undefined);
  const here = told.filter((entry) => moment !== undefined && restsOn(entry, moment, parts));
  const elsewhere = told.filter((entry) => !here.includes(entry));
  const list = (entries: readonly LedgerEntry[]) =>
    byCanal(entries, parts).map((entry) => <LedgerEntryView key={entry.id} {...{ caseId, entry, parts }} />);
  return (
    <aside className="ledger" aria-label="Ledger">
      <h2>Ledger</h2>
      {here.length > 0 && <h3 className="ledger-group">From this moment</h3>}
      {here.length === 0 && moment !== undefined && told.length > 0 && (
        <p className="ledger-group">Nothing is computed from this moment.</p>
      )}
      {list(here)}
      <Rest name="From the rest of the case" entries={elsewhere} list={list} open={elsewhere.length < 8} />
      <Rest name="Could not be computed; each says why" entries={refused} list={list} open={refused.length < 4} />
      <WouldFill told={told} />
    </aside>
  );
}

interface RestOptions {
  readonly name: string;
  readonly entries: readonly LedgerEntry[];
  readonly list: (entries: readonly LedgerEntry[]) => ReactNode;
  readonly open: boolean;
}

/** A group that stands back behind what belongs to the moment in view. */
const Rest = ({ name, entries, list, open }: RestOptions) =>
  entries.length === 0 ? null : (
    <details className="ledger-rest" open={open}>
      <summary>
        {name} ({entries.length})
      </summary>
      {list(entries)}
    </details>
  );

const LedgerOfNow = () => (
  <aside className="ledger" aria-label="Ledger">
    <h2>Ledger</h2>
    <p className="ledger-empty">Its numbers hold for the case of now and are not shown beside the past.</p>
  </aside>
);

/** What is about no canal first, then canal by canal, in the order in which they come. */
function byCanal(entries: readonly LedgerEntry[], parts: readonly Part[]): readonly LedgerEntry[] {
  const canalOf = new Map(entries.map((entry) => [entry, entrySubject(entry, parts).canal]));
  const canals = ["", ...new Set(canalOf.values())];
  const place = (entry: LedgerEntry) => canals.indexOf(canalOf.get(entry) ?? "");
  return [...entries].sort((a, b) => place(a) - place(b));
}

function restsOn(entry: LedgerEntry, moment: Moment, parts: readonly Part[]): boolean {
  const films: readonly string[] = moment.films.map(({ id }) => id);
  const subject = entry.subject.split(" of ").at(-1) ?? "";
  return [...partsBehind(entry, parts), ...parts.filter(({ id }) => id === subject)].some(
    (part) =>
      part.id === moment.id || films.includes(part.id) || (part.kind === "mark" && films.includes(part.body.film)),
  );
}

interface WouldFillOptions {
  readonly told: readonly LedgerEntry[];
}

/** What the ledger waits for: each line goes once its number stands. */
function WouldFill({ told }: WouldFillOptions) {
  const has = (topic: string) => told.some((entry) => entry.topic === topic);
  const missing = [
    ...(has("canals") ? [] : ["roots and canals give the code of the tooth's form"]),
    ...(has("calibrate") ? [] : ["a film with a mark of known length gives its scale"]),
    ...(has("curvature") ? [] : ["a canal traced on a film gives its length and its bend"]),
    ...(has("workingLength") ? [] : ["a locator's reading stands beside the length from the film"]),
  ];
  if (missing.length === 0) return null;
  return (
    <div className="ledger-empty">
      <p>{told.length === 0 ? "Nothing is computed yet. A number appears by itself:" : "What would add to it:"}</p>
      <ul>
        {missing.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
