import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import type { CaseFacts } from "../../record/facts.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { Settings } from "../../record/settings.ts";
import type { CaseView, ChangeLine, DocumentView, HiddenView, SessionView, TopicView } from "../../server/api.ts";
import { ask, type Refused } from "./api.ts";

/** One tooth in the three notations, as the server names it. */
export interface ToothView {
  readonly twoDigit: string;
  readonly universal: string;
  readonly quadrant: string;
  readonly dentition: "permanent" | "primary";
  readonly arch: "upper" | "lower";
  readonly side: "right" | "left";
  readonly type: "incisor" | "canine" | "premolar" | "molar";
  readonly name: string;
}

const forGood = Number.POSITIVE_INFINITY;
const reading = <Answer>(key: readonly unknown[], path: string, staleTime = 0) => ({
  queryKey: key,
  queryFn: ({ signal }: { signal: AbortSignal }) => ask<Answer>(path, { signal }),
  staleTime,
});

/** What a window needs to know at its start. */
export const useSession = () => useQuery<SessionView, Refused>(reading<SessionView>(["session"], "/session", 5_000));
/** The person's settings. */
export const useSettings = () => useQuery<Settings, Refused>(reading<Settings>(["settings"], "/settings", forGood));
/** Reads the settings anew: another window may have saved some since they were last read here. */
export function useSettingsAnew(): () => Promise<Settings> {
  const client = useQueryClient();
  return () => client.fetchQuery<Settings, Refused>(reading<Settings>(["settings"], "/settings"));
}
/** One row a case. */
export const useCases = () => useQuery<CaseFacts[], Refused>(reading<CaseFacts[]>(["cases"], "/cases"));
/** The 52 teeth in every notation. */
export const useTeeth = () => useQuery<ToothView[], Refused>(reading<ToothView[]>(["teeth"], "/teeth", forGood));
/** What may hide in a tooth and was counted somewhere; nothing is read while the tooth is not known. */
export const useHidden = (tooth: string) =>
  useQuery<HiddenView, Refused>({
    ...reading<HiddenView>(["hidden", tooth], `/teeth/${tooth}/hidden`, forGood),
    enabled: tooth !== "",
  });
/** The computations with their method pages. */
export const useTopics = () => useQuery<TopicView[], Refused>(reading<TopicView[]>(["topics"], "/topics", forGood));

/** All changes of a case in words, first change first. */
export const useChanges = (caseId: string, wanted = true) =>
  useQuery<ChangeLine[], Refused>({
    ...reading<ChangeLine[]>(["changes", caseId], `/cases/${caseId}/changes`),
    enabled: wanted,
  });

/** A case as it stood at one of its changes; nothing is read while no change is named. */
export const useCaseAt = (caseId: string, sequence: number | undefined) =>
  useQuery<CaseView, Refused>({
    ...reading<CaseView>(["case", caseId, "at", sequence], `/cases/${caseId}/at/${sequence}`, forGood),
    enabled: sequence !== undefined,
  });

/** The documents that were made of a case. */
export const useDocuments = (caseId: string) =>
  useQuery<DocumentView[], Refused>(reading<DocumentView[]>(["documents", caseId], `/cases/${caseId}/documents`));

/** One entry of the ledger, whether it still holds or not. */
export const useLedgerEntry = (entryId: string | undefined) =>
  useQuery<LedgerEntry, Refused>({
    ...reading<LedgerEntry>(["ledger", entryId], `/ledger/${entryId}`, forGood),
    enabled: entryId !== undefined,
  });

/** Keeps the person's settings. */
export function useKeepSettings() {
  const client = useQueryClient();
  return useMutation<Settings, Refused, Settings>({
    mutationFn: async (settings) => (await ask<Settings>("/settings", { method: "PUT", body: settings })) ?? settings,
    onSuccess: (settings) => {
      client.setQueryData(["settings"], settings);
      void client.invalidateQueries({ queryKey: ["case"] });
    },
  });
}
