import { Link } from "wouter";
import { diagnosisTold } from "../../../../ledger/diagnosis-told.ts";
import { Button } from "../../../parts/button.tsx";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { useLedgerEntry } from "../../../record/readings.ts";
import { useCaseNow } from "../case-now.ts";
import { NotTold } from "./not-told.tsx";
import type { OwnDiagnosis } from "./use-own-diagnosis.ts";

interface BesideOptions {
  readonly own: OwnDiagnosis;
}

/** Which findings stand beside the diagnosis, and how their terms are taken over. */
export function BesideFindings({ own }: BesideOptions) {
  const { caseId } = useCaseNow();
  const { sheet, sheets, entry, told, take, isTaken } = own;
  useShortcut("t", "Case", "Take the findings' terms as your own", () => take?.());
  if (sheet === undefined) return <NoFindings own={own} />;
  return (
    <div className="beside-findings">
      <p>
        Beside the{" "}
        {sheets.length > 1 && (
          <label>
            <span className="unseen">Findings that stand beside it</span>
            <select className="field-select" value={sheet.id} onChange={({ target }) => own.showSheet(target.value)}>
              {sheets.map(({ id, body }) => (
                <option key={id} value={id}>
                  findings of {dayInWords(body.takenOn)}
                </option>
              ))}
            </select>
          </label>
        )}{" "}
        <Link href={`/case/${caseId}/${sheet.id}`}>
          {sheets.length > 1 ? "open them" : `findings of ${dayInWords(sheet.body.takenOn)}`}
        </Link>
      </p>
      {told === undefined && <NotTold entry={entry} sheet={sheet} link />}
      {take && !isTaken && (
        <Button weight="strong" hint="t" onClick={take}>
          Take both terms as your own
        </Button>
      )}
      {isTaken && <p className="quiet">Your terms are those of the findings.</p>}
      <MadeBeside own={own} />
    </div>
  );
}

/** Nothing to go by: what is missing, and how to come to it. */
function NoFindings({ own: { body } }: BesideOptions) {
  const { parts, add } = useCaseNow();
  const later = parts.some(({ kind }) => kind === "findings");
  return (
    <div className="not-told">
      <p>
        {later
          ? `No findings were recorded on or before ${dayInWords(body.madeOn)}; those of the case are later.`
          : "No findings are recorded yet. Tests, history and film say which terms are possible."}
      </p>
      {add && (
        <p>
          <Button onClick={() => add("findings")}>Add findings</Button> <span className="quiet">or</span>{" "}
          <KeyHint keys="a" /> <span className="quiet">from any page of the case</span>
        </p>
      )}
    </div>
  );
}

/** What the findings said when the diagnosis was made, where they say something else now. */
function MadeBeside({ own: { body, entry } }: BesideOptions) {
  const then = useLedgerEntry(body.suggestion === entry?.id ? undefined : body.suggestion).data;
  const said = diagnosisTold(then);
  if (said === undefined || entry === undefined) return null;
  return (
    <p className="made-beside">
      <span className="look">◇</span> It was made when the findings said: {said.pulpal.term} ({said.pulpal.status}),{" "}
      {said.apical.term} ({said.apical.status}). Other findings stand here, or they or the table have changed since.
    </p>
  );
}
