import { useQuery, useQueryClient } from "@tanstack/react-query";
import { useCallback, useMemo, useSyncExternalStore } from "react";
import type { Operation } from "../../record/change.ts";
import type { CaseView } from "../../server/api.ts";
import { ask, type Refused } from "./api.ts";
import { DraftBook } from "./draft-book.ts";
import { notOvertaken } from "./not-overtaken.ts";
import { SaveQueue, type SaveState } from "./save-queue.ts";
import { useTakeBack } from "./take-back.ts";

const queues = new Map<string, SaveQueue>();

/** Names a case in the cache of readings. */
export const caseKey = (caseId: string) => ["case", caseId] as const;

/** The queue of a case; one for the whole window. */
export function useSaveQueue(caseId: string): SaveQueue {
  const client = useQueryClient();
  const known = queues.get(caseId);
  if (known) return known;
  const queue = new SaveQueue<CaseView>({
    send: (words, operations) =>
      ask<CaseView>(`/cases/${caseId}/gestures`, { method: "POST", body: { words, operations } }),
    take: (view) => {
      client.setQueryData(caseKey(caseId), view);
      void client.invalidateQueries({ queryKey: ["changes", caseId] });
      void client.invalidateQueries({ queryKey: ["cases"] });
      void client.invalidateQueries({ queryKey: ["cabinet"] });
    },
    heldIn: ({ parts }) => parts,
    now: () => new Date(),
    later: (work, milliseconds) => setTimeout(work, milliseconds),
  });
  queues.set(caseId, queue);
  return queue;
}

/** A case as it stands, with what this window did and the record has not taken yet laid over it. */
export function useCase(caseId: string): {
  readonly view: CaseView | undefined;
  /** As the record last said it, without what is on its way. */
  readonly recorded: CaseView | undefined;
  readonly error: Refused | null;
  readonly save: SaveState;
} {
  const client = useQueryClient();
  const queue = useSaveQueue(caseId);
  const { data, error } = useQuery<CaseView, Refused>({
    queryKey: caseKey(caseId),
    queryFn: () => notOvertaken(client, caseKey(caseId), () => ask<CaseView>(`/cases/${caseId}`)),
    refetchOnWindowFocus: () => !queue.busy,
  });
  const save = useSyncExternalStore(queue.watch, () => queue.state);
  const view = useMemo(() => {
    void save; // the overlay changes whenever the queue tells
    return data && { ...data, parts: queue.over(data.parts) };
  }, [data, queue, save]);
  return { view, recorded: data, error, save };
}

/** Records a finished gesture, named in words; the parts change on the screen at once. Fails with {@link Refused}. */
export function useRecord(caseId: string): (words: string, operations: readonly Operation[]) => Promise<CaseView> {
  const queue = useSaveQueue(caseId);
  return useCallback((words, operations) => queue.put(words, operations), [queue]);
}

const books = new Map<string, DraftBook>();

/** The drafts of a case; one book for the whole window, so that what was typed outlives the page. */
export function useDraftBook(caseId: string): DraftBook {
  const queue = useSaveQueue(caseId);
  const book = books.get(caseId) ?? new DraftBook(queue);
  books.set(caseId, book);
  return book;
}

function useTakeBackOfCase(caseId: string, way: "undo" | "redo") {
  const of = useMemo(
    () => ({ path: `/cases/${caseId}`, key: caseKey(caseId), alsoRenews: [["changes", caseId], ["cabinet"]] }),
    [caseId],
  );
  return useTakeBack(of, useSaveQueue(caseId), way);
}

/** Takes back the change at the top of the history, and says which. */
export const useUndo = (caseId: string) => useTakeBackOfCase(caseId, "undo");
/** Does again what was last taken back, and says which. */
export const useRedo = (caseId: string) => useTakeBackOfCase(caseId, "redo");
