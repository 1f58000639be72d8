import { type QueryClient, useQueryClient } from "@tanstack/react-query";
import { useCallback } from "react";
import { useAnnounce } from "../parts/announcer.tsx";
import { ask } from "./api.ts";
import type { SaveQueue } from "./save-queue.ts";

/** What can be taken back: where it is asked for, what it is called among readings, and which readings follow it. */
export interface TakenBack {
  /** As `/cases/demo-a`. */
  readonly path: string;
  readonly key: readonly string[];
  readonly alsoRenews: readonly (readonly string[])[];
}

interface Lines {
  readonly undo?: { readonly words: string };
  readonly redo?: { readonly words: string };
}

/** What is being taken back: a second press waits for the first, whose answer says what there is to do again. */
const underWay = new WeakMap<QueryClient, Promise<void>>();

/** Takes back the change at the top, or does again what was taken back, and says which. Values given must stay the same ones. */
export function useTakeBack(of: TakenBack, queue: Pick<SaveQueue, "busy" | "settled">, way: "undo" | "redo") {
  const client = useQueryClient();
  const announce = useAnnounce();
  const act = useCallback(async () => {
    // What was just done is on its way to the record, and is what the person means.
    await queue.settled();
    if (queue.busy) return announce("What you did last is not saved yet, so nothing can be taken back");
    const line = client.getQueryData<Lines>(of.key)?.[way];
    if (line === undefined) return announce(way === "undo" ? "Nothing to undo" : "Nothing to redo");
    try {
      client.setQueryData(of.key, await ask<Lines>(`${of.path}/${way}`, { method: "POST" }));
      for (const queryKey of of.alsoRenews) void client.invalidateQueries({ queryKey });
      announce(`${way === "undo" ? "Undone" : "Done again"}: ${line.words.replace(/^(Undo|Redo): /, "")}`);
    } catch (error) {
      announce(error instanceof Error ? error.message : String(error));
    }
  }, [announce, client, of, queue, way]);
  return useCallback(() => {
    const turn = (underWay.get(client) ?? Promise.resolve()).then(act);
    underWay.set(client, turn);
    return turn;
  }, [act, client]);
}
