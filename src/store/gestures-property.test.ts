import fc from "fast-check";
import { expect, test } from "vitest";
import { consentBody, newCase, put, recording, remove, revisionIn } from "../../test/samples/gestures.ts";
import { temporaryFolder } from "../../test/samples/home.ts";
import { stateHash } from "../record/change.ts";
import { openStore } from "./open-store.ts";

const step = fc.record({
  what: fc.constantFrom("put", "put", "put", "remove", "undo", "redo"),
  part: fc.integer({ min: 1, max: 4 }),
  note: fc.string({ unit: "binary", maxLength: 12 }),
});

test("after any gestures: replay gives the state, undoing all gives the beginning, redoing all gives the end", async () => {
  const { store } = await openStore(temporaryFolder());
  let number = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 14 }), async (steps) => {
      number += 1;
      const caseId = `case-${number}`;
      let state = await store.createCase(caseId, newCase(), recording);
      const beginning = stateHash(state.parts);
      const now = async (work: Promise<typeof state>) => {
        state = await work.catch((error: { code?: string }) => {
          if (error.code === "record.nothingToUndo") return state;
          throw error;
        });
      };
      for (const { what, part, note } of steps) {
        const id = `consent-${part}`;
        const revision = revisionIn(state, id);
        if (what === "put")
          await now(store.record(caseId, put(id, "consent", revision, consentBody("2026-02-11", note)), recording));
        else if (what === "undo") await now(store.undo(caseId, recording));
        else if (what === "redo") await now(store.redo(caseId, recording));
        else if (revision > 0) await now(store.record(caseId, remove(id, "consent", revision), recording));
      }
      expect(await store.readCaseAt(caseId, state.sequence)).toEqual(state);
      expect(await store.readCase(caseId)).toEqual(state);
      while ((await store.redo(caseId, recording).catch(() => undefined)) !== undefined);
      const end = stateHash((await store.readCase(caseId)).parts);
      let undone = 0;
      while ((await store.undo(caseId, recording).catch(() => undefined)) !== undefined) undone += 1;
      expect(stateHash((await store.readCase(caseId)).parts)).toBe(beginning);
      for (let index = 0; index < undone; index += 1) await store.redo(caseId, recording);
      expect(stateHash((await store.readCase(caseId)).parts)).toBe(end);
    }),
    { numRuns: 40 },
  );
  expect(await store.verify()).toEqual([]);
  await store.close();
});
