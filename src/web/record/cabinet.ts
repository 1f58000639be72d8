import { type QueryClient, useQuery, useQueryClient } from "@tanstack/react-query";
import { useMemo, useSyncExternalStore } from "react";
import type { Gesture } from "../../record/change.ts";
import type { CabinetView } from "../../server/api.ts";
import { useAnnounce } from "../parts/announcer.tsx";
import { ask, type Refused } from "./api.ts";
import { DraftBook } from "./draft-book.ts";
import { notOvertaken } from "./not-overtaken.ts";
import { SaveQueue, type SaveState } from "./save-queue.ts";
import { useTakeBack } from "./take-back.ts";

const takenBack = { path: "/cabinet", key: ["cabinet"], alsoRenews: [] } as const;
const cabinetKey = takenBack.key;

/** The one queue and the one book of drafts of the cabinet; they outlive the room. */
interface Desk {
  readonly queue: SaveQueue<CabinetView>;
  readonly book: DraftBook;
}
const desks = new Map<QueryClient, Desk>();

/** See {@link Desk}. */
export function useCabinetDesk(): Desk {
  const client = useQueryClient();
  const known = desks.get(client);
  if (known) return known;
  const queue = new SaveQueue<CabinetView>({
    send: (words, operations) => ask<CabinetView>("/cabinet/gestures", { method: "POST", body: { words, operations } }),
    take: (view) => client.setQueryData(cabinetKey, view),
    heldIn: ({ items }) => items,
    now: () => new Date(),
    later: (work, milliseconds) => setTimeout(work, milliseconds),
  });
  const desk = { queue, book: new DraftBook(queue) };
  desks.set(client, desk);
  return desk;
}

/** The cabinet as it stands, with what this window did and the record has not taken yet laid over it. */
export interface CabinetUse {
  readonly view: CabinetView | undefined;
  /** As the record last said it. */
  readonly recorded: CabinetView | undefined;
  readonly error: Refused | null;
  readonly again: () => void;
  readonly save: SaveState;
}

/** See {@link CabinetUse}. */
export function useCabinet(): CabinetUse {
  const client = useQueryClient();
  const { queue } = useCabinetDesk();
  const { data, error, refetch } = useQuery<CabinetView, Refused>({
    queryKey: cabinetKey,
    queryFn: () => notOvertaken(client, cabinetKey, () => ask<CabinetView>("/cabinet")),
    refetchOnWindowFocus: () => !queue.busy,
  });
  const saveNow = () => queue.state;
  const save = useSyncExternalStore(queue.watch, saveNow, saveNow);
  const view = useMemo(() => {
    void save; // the overlay changes whenever the queue tells
    return data && { ...data, items: queue.over(data.items) };
  }, [data, queue, save]);
  return { view, recorded: data, error, again: () => void refetch(), save };
}

/** Records a gesture on the cabinet and says so, or says why it could not. */
export function useCabinetRecording(): (gesture: Gesture) => Promise<void> {
  const announce = useAnnounce();
  const { queue } = useCabinetDesk();
  return ({ words, operations }) =>
    queue.put(words, operations).then(
      () => announce(`Saved: ${words}`),
      (error: unknown) => announce(error instanceof Error ? error.message : String(error)),
    );
}

/** Undo or redo of the cabinet. */
export const useCabinetTakeBack = (way: "undo" | "redo") => useTakeBack(takenBack, useCabinetDesk().queue, way);
