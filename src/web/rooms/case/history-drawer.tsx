import type { ChangeLine } from "../../../server/api.ts";
import { Button } from "../../parts/button.tsx";
import { momentInWords } from "../../parts/days-in-words.ts";
import { Dialog } from "../../parts/dialog.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useChanges } from "../../record/readings.ts";
import "./history-drawer.css";

interface HistoryDrawerOptions {
  readonly caseId: string;
  readonly shown: number | undefined;
  readonly show: (change: ChangeLine) => void;
  readonly close: () => void;
}

/** Every change of the case in words, last first; any of them can be looked at. */
export function HistoryDrawer({ caseId, shown, show, close }: HistoryDrawerOptions) {
  const changes = useChanges(caseId);
  const lines = [...(changes.data ?? [])].reverse();
  return (
    <Dialog title="History" close={close} place="side">
      <p className="quiet">Nothing is ever lost: an undo is a change of its own.</p>
      {changes.error && <SayRefusal of={changes.error} retry={() => void changes.refetch()} />}
      {changes.isPending && <p className="quiet">Reading the changes</p>}
      <ol className="history">
        {lines.map((change) => {
          const { sequence, at, who, words, inverts } = change;
          return (
            <li key={sequence} data-inverts={inverts !== undefined} data-shown={sequence === shown}>
              <span className="history-number">{sequence}</span>
              <span className="history-words">
                {inverts === undefined ? words : `${words} (takes back ${inverts})`}
              </span>
              <span className="quiet history-who">
                {momentInWords(at)} · {who}
              </span>
              <Button weight="bare" onClick={() => show(change)}>
                As it stood
                <span className="unseen"> after change {sequence}</span>
              </Button>
            </li>
          );
        })}
      </ol>
    </Dialog>
  );
}
