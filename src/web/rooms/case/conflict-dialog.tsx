import { useState } from "react";
import type { Operation } from "../../../record/change.ts";
import { Button } from "../../parts/button.tsx";
import { Dialog } from "../../parts/dialog.tsx";
import type { Held, TwoVersions } from "../../record/save-queue.ts";
import "./conflict-dialog.css";
import { conflictFields, type FieldConflict, mergedBody } from "./conflict-fields.ts";
import { conflictLabels } from "./conflict-labels.ts";
import { titles as momentTitles } from "./spine/spine-moments.ts";

interface ConflictDialogOptions {
  readonly words: string;
  readonly conflicts: readonly TwoVersions[];
  /** The parts or items as this window saw them before both changes. */
  readonly seen: readonly Held[];
  /** What kinds are called; those of a case's moments where absent. */
  readonly titles?: Readonly<Record<string, string>>;
  /** The operations to record instead; null lets the other version stand. */
  readonly settle: (operations: readonly Operation[] | null) => void;
}

/** Both versions of what was changed in two places, side by side; nothing is lost before the person has chosen. */
export function ConflictDialog({ words, conflicts, seen, titles = momentTitles, settle }: ConflictDialogOptions) {
  const [theirs, setTheirs] = useState<ReadonlySet<string>>(
    () => new Set(conflicts.flatMap((conflict) => untouched(conflict, seen))),
  );
  const choose = (key: string, other: boolean) => {
    const next = new Set(theirs);
    if (other) next.add(key);
    else next.delete(key);
    setTheirs(next);
  };
  return (
    <Dialog title="This was changed in another window as well" wide>
      <p>
        Your change “{words}” met another one that was saved in the meantime. Both are shown; choose for each field, or
        for all of them at once. The version that you don't keep stays in the history.
      </p>
      {conflicts.map((conflict) => (
        <ConflictTable
          key={conflict.id}
          title={titles[conflict.kind] ?? conflict.kind}
          {...{ conflict, theirs, choose }}
        />
      ))}
      <footer className="dialog-feet">
        <Button weight="strong" onClick={() => settle(conflicts.map((conflict) => chosen(conflict, theirs)))}>
          Keep what is chosen
        </Button>
        <Button onClick={() => settle(conflicts.map((conflict) => chosen(conflict, new Set())))}>Keep mine</Button>
        <Button onClick={() => settle(null)}>Keep theirs</Button>
      </footer>
    </Dialog>
  );
}

interface ConflictTableOptions {
  readonly title: string;
  readonly conflict: TwoVersions;
  readonly theirs: ReadonlySet<string>;
  readonly choose: (key: string, other: boolean) => void;
}

function ConflictTable({ title, conflict, theirs, choose }: ConflictTableOptions) {
  const fields = conflictFields(conflict.yours, conflict.theirs?.body ?? null, conflictLabels[conflict.kind]);
  if (conflict.theirs === null) return <p>{title}: the other window took it away. Keeping yours brings it back.</p>;
  if (conflict.yours === null) return <p>{title}: you took it away, the other window changed it.</p>;
  return (
    <table className="conflict-table">
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col">Field</th>
          <th scope="col">Mine</th>
          <th scope="col">Theirs, saved</th>
        </tr>
      </thead>
      <tbody>
        {fields.map((field) => (
          <ConflictRow key={field.name} {...{ field, theirs, choose }} id={`${conflict.id}/${field.name}`} />
        ))}
      </tbody>
    </table>
  );
}

interface ConflictRowOptions extends Omit<ConflictTableOptions, "conflict" | "title"> {
  readonly field: FieldConflict;
  readonly id: string;
}

const ConflictRow = ({ field, id, theirs, choose }: ConflictRowOptions) => (
  <tr>
    <th scope="row">{field.label}</th>
    {[false, true].map((other) => (
      <td key={String(other)}>
        <label className="conflict-choice">
          <input type="radio" name={id} checked={theirs.has(id) === other} onChange={() => choose(id, other)} />
          <span>
            {(other ? field.theirs : field.mine).map((line) => (
              <span key={line}>{line}</span>
            ))}
            {(other ? field.theirs : field.mine).length === 0 && <span className="quiet">nothing</span>}
          </span>
        </label>
      </td>
    ))}
  </tr>
);

/** The fields that this window did not change itself: there the other version is the natural choice. */
function untouched({ id, yours, theirs }: TwoVersions, seen: readonly Held[]): readonly string[] {
  const before = seen.find((part) => part.id === id && part.revision !== theirs?.revision);
  if (before === undefined || yours === null || theirs === null) return [];
  const mine = new Set(conflictFields(yours, before.body).map(({ name }) => name));
  return conflictFields(yours, theirs.body).flatMap(({ name }) => (mine.has(name) ? [] : [`${id}/${name}`]));
}

function chosen({ id, kind, yours, theirs }: TwoVersions, keepTheirs: ReadonlySet<string>): Operation {
  const baseRevision = theirs?.revision ?? 0;
  if (yours === null) return { op: "remove", id, kind, baseRevision };
  const names = new Set([...keepTheirs].flatMap((key) => (key.startsWith(`${id}/`) ? [key.slice(id.length + 1)] : [])));
  return { op: "put", id, kind, baseRevision, body: mergedBody(yours, theirs?.body ?? null, names) };
}
