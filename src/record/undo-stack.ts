import type { Change } from "./change.ts";

/** What can be undone and redone next: sequence numbers of changes, or undefined. */
export interface UndoStack {
  /** The change that an undo would take back. */
  readonly undo: number | undefined;
  /** The undo that a redo would take back. */
  readonly redo: number | undefined;
}

/**
 * What stands at the top of a case's history. Takes the changes in order; an undo names the change it takes back, a redo
 * names the undo it takes back, and any other change forgets what could be redone. The first change made the case and is
 * never taken back: a case is removed whole, not undone. A history that begins empty, as the cabinet's, keeps no first one.
 */
export function undoStack(
  changes: readonly Pick<Change, "sequence" | "inverts">[],
  first: "stays" | "goes" = "stays",
): UndoStack {
  const done: number[] = [];
  const undone: number[] = [];
  for (const { sequence, inverts } of changes) {
    if (inverts === undefined) {
      done.push(sequence);
      undone.length = 0;
    } else if (done.at(-1) === inverts) {
      done.pop();
      undone.push(sequence);
    } else {
      undone.pop();
      done.push(sequence);
    }
  }
  const last = done.at(-1);
  return { undo: last === 1 && first === "stays" ? undefined : last, redo: undone.at(-1) };
}
