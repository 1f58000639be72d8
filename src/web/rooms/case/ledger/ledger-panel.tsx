import { Fragment } from "react";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { Part } from "../../../../record/parts.ts";
import type { Moment } from "../spine/spine-moments.ts";
import { partsBehind } from "./entry-subject.ts";
import { LedgerEntryView } from "./ledger-entry-view.tsx";
import { ledgerGroups } from "./ledger-groups.ts";
import { lengthsOnFilms } from "./ledger-lines.ts";
import "./ledger-panel.css";

interface LedgerPanelOptions {
  readonly caseId: string;
  readonly ledger: readonly LedgerEntry[];
  readonly parts: readonly Part[];
  readonly moment: Moment | undefined;
  /** The case is shown as it stood, and so is the ledger. */
  readonly readOnly: boolean;
}

/** Every number that was computed from the case; those that rest on the moment in view come first. */
export function LedgerPanel({ caseId, ledger, parts, moment, readOnly }: LedgerPanelOptions) {
  const all = ledger.filter(({ topic }) => topic !== "tooth");
  const told = all.filter(({ refused }) => refused === undefined);
  const refused = all.filter((entry) => entry.refused !== undefined);
  const here = told.filter((entry) => moment !== undefined && restsOn(entry, moment, parts));
  const elsewhere = told.filter((entry) => !here.includes(entry));
  const lists = { caseId, ledger, parts };
  return (
    <aside className="ledger" aria-label="Ledger">
      <h2>{readOnly ? "Ledger as it stood" : "Ledger"}</h2>
      {readOnly && <AsItStood />}
      {here.length > 0 && <h3 className="ledger-group">From this moment</h3>}
      {here.length === 0 && moment !== undefined && told.length > 0 && (
        <p className="ledger-group">Nothing is computed from this moment.</p>
      )}
      <Unfolded {...lists} entries={here} />
      {elsewhere.length > 0 && <h3 className="ledger-group">From the rest of the case</h3>}
      <Folded {...lists} entries={elsewhere} />
      {refused.length > 0 && (
        <details className="ledger-rest" open={refused.length < 4}>
          <summary>
            <span className="look">◇</span> Could not be computed; each says why ({refused.length})
          </summary>
          <Entries {...lists} entries={refused} />
        </details>
      )}
      {!readOnly && <WouldFill told={told} />}
    </aside>
  );
}

interface EntriesOptions extends Pick<LedgerPanelOptions, "caseId" | "ledger" | "parts"> {
  readonly entries: readonly LedgerEntry[];
  readonly underFilm?: boolean;
}

const Entries = ({ entries, ledger, ...others }: EntriesOptions) =>
  entries.map((entry) => (
    <LedgerEntryView key={entry.id} entry={entry} beside={lengthsOnFilms(entry, ledger)} {...others} />
  ));

/** What belongs to the moment in view: all in sight, film by film. */
const Unfolded = ({ entries, ...others }: EntriesOptions) =>
  ledgerGroups(entries, others.parts).map((group) => (
    <Fragment key={group.name}>
      {group.name !== "" && <h4 className="ledger-film">{group.name}</h4>}
      <Entries {...others} entries={group.entries} underFilm={group.name !== ""} />
    </Fragment>
  ));

/** What stands back behind the moment in view: film by film, each opened with one press. */
const Folded = ({ entries, ...others }: EntriesOptions) =>
  ledgerGroups(entries, others.parts).map((group) =>
    group.name === "" ? (
      <Entries key={group.name} {...others} entries={group.entries} />
    ) : (
      <details key={group.name} className="ledger-rest">
        <summary>
          {group.name} <span className="ledger-count">{group.entries.length}</span>
        </summary>
        <Entries {...others} entries={group.entries} underFilm />
      </details>
    ),
  );

const AsItStood = () => (
  <p className="ledger-empty">
    What the parts of that time gave: the sums that were kept, and where none was, worked out from those parts.
  </p>
);

function restsOn(entry: LedgerEntry, moment: Moment, parts: readonly Part[]): boolean {
  const films: readonly string[] = moment.films.map(({ id }) => id);
  const subject = entry.subject.split(" of ").at(-1) ?? "";
  if (moment.part?.kind === "diagnosis" && moment.part.body.suggestion === entry.id) return true;
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
    ...(has("diagnosis") ? [] : ["findings say which pulpal and apical terms they speak for"]),
    ...(has("canals") ? [] : ["roots and canals give the code of the tooth's form"]),
    ...(has("calibrate") ? [] : ["a film with a mark of known length gives its scale"]),
    ...(has("curvature") ? [] : ["a canal traced on a film gives its length and its bend"]),
    ...(has("workingLength")
      ? []
      : ["traced from the reference point it gives a working length, a locator's reading beside it"]),
    ...(has("twoView") ? [] : ["traced on two films under known tube angles it gives what one film hides"]),
    ...(has("bend") ? [] : ["an instrument with its depth in a traced canal gives how much it was bent there"]),
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
