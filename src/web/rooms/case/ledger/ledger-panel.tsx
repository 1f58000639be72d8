import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { Part } from "../../../../record/parts.ts";
import type { Moment } from "../spine/spine-moments.ts";
import { partsBehind } from "./entry-subject.ts";
import { LedgerEntryView } from "./ledger-entry-view.tsx";
import "./ledger-panel.css";

interface LedgerPanelOptions {
  readonly caseId: string;
  readonly ledger: readonly LedgerEntry[];
  readonly parts: readonly Part[];
  readonly moment: Moment | undefined;
  readonly hasLightBox: boolean;
}

/** Every number that was computed from the case; those that rest on the moment in view come first. */
export function LedgerPanel({ caseId, ledger, parts, moment, hasLightBox }: LedgerPanelOptions) {
  const told = ledger.filter(({ topic }) => topic !== "tooth");
  const here = told.filter((entry) => moment !== undefined && restsOn(entry, moment, parts));
  const elsewhere = told.filter((entry) => !here.includes(entry));
  const list = (entries: readonly LedgerEntry[]) =>
    entries.map((entry) => <LedgerEntryView key={entry.id} {...{ caseId, entry, parts }} />);
  return (
    <aside className="ledger" aria-label="Ledger">
      <h2>Ledger</h2>
      {told.length === 0 && <EmptyLedger hasLightBox={hasLightBox} />}
      {here.length > 0 && <h3 className="ledger-group">From this moment</h3>}
      {list(here)}
      {here.length > 0 && elsewhere.length > 0 && <h3 className="ledger-group">From the rest of the case</h3>}
      {list(elsewhere)}
    </aside>
  );
}

function restsOn(entry: LedgerEntry, moment: Moment, parts: readonly Part[]): boolean {
  const films = moment.films.map(({ id }) => id);
  const subject = entry.subject.split(" of ").at(-1) ?? "";
  return [...partsBehind(entry, parts), ...parts.filter(({ id }) => id === subject)].some(
    (part) =>
      part.id === moment.id || films.includes(part.id) || (part.kind === "mark" && films.includes(part.body.film)),
  );
}

const EmptyLedger = ({ hasLightBox }: { readonly hasLightBox: boolean }) => (
  <div className="ledger-empty">
    <p>Nothing is computed yet. A number appears here by itself as soon as its inputs stand:</p>
    <ul>
      <li>roots and canals give the code of the tooth's form;</li>
      {hasLightBox && <li>a film with a mark of known length gives its scale;</li>}
      {hasLightBox && <li>a canal traced on that film gives its length and its bend;</li>}
      <li>a locator's reading stands beside the length from the film.</li>
    </ul>
  </div>
);
