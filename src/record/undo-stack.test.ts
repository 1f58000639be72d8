import { expect, test } from "vitest";
import { undoStack } from "./undo-stack.ts";

/** Changes 1, 2, 3 .. from what each takes back. */
const chain = (...inverts: (number | undefined)[]) =>
  inverts.map((one, index) => ({ sequence: index + 1, ...(one === undefined ? {} : { inverts: one }) }));

test.each([
  ["nothing yet", chain(), undefined, undefined],
  ["the first change, which made the case, is never taken back", chain(undefined), undefined, undefined],
  ["the last change", chain(undefined, undefined), 2, undefined],
  ["after an undo: the change before, and that undo", chain(undefined, undefined, undefined, 3), 2, 4],
  ["after all is undone", chain(undefined, undefined, undefined, 3, 2), undefined, 5],
  ["after a redo: the redo itself", chain(undefined, undefined, undefined, 3, 4), 5, undefined],
  ["a new change forgets what could be redone", chain(undefined, undefined, 2, undefined), 4, undefined],
  ["an undo of a redo can be redone", chain(undefined, undefined, 2, 3, 4), undefined, 5],
] as const)("%s", (_, changes, undo, redo) => {
  expect(undoStack(changes)).toEqual({ undo, redo });
});

test("a history that begins empty gives its first change back too", () => {
  expect(undoStack(chain(undefined), "goes")).toEqual({ undo: 1, redo: undefined });
  expect(undoStack(chain(undefined, 1), "goes")).toEqual({ undo: undefined, redo: 2 });
});
