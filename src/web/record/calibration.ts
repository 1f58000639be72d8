import { type QueryClient, useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useCallback, useEffect, useMemo, useState, useSyncExternalStore } from "react";
import type { CalibrationView, ExerciseView, Job } from "../../server/api.ts";
import { ask, type Refused } from "./api.ts";
import { type ExerciseAct, ExerciseQueue, type ExerciseSaving } from "./exercise-queue.ts";

const roomKey = ["calibration"] as const;
const exerciseKey = (id: string) => ["exercise", id] as const;
const base = "/calibration/exercises";

/** The calibration room: what was done in it, and the click error that sums use now. */
export const useCalibration = () =>
  useQuery<CalibrationView, Refused>({ queryKey: roomKey, queryFn: () => ask<CalibrationView>("/calibration") });

/** Begins an exercise. */
export function useBeginExercise() {
  const client = useQueryClient();
  return useMutation<ExerciseView, Refused>({
    mutationFn: () => ask<ExerciseView>(base, { method: "POST" }),
    onSuccess: (view) => takeExercise(client, view),
  });
}

/** Removes an exercise that is under way. */
export function useRemoveExercise() {
  const client = useQueryClient();
  return useMutation<CalibrationView, Refused, string>({
    mutationFn: (id) => ask<CalibrationView>(`${base}/${id}`, { method: "DELETE" }),
    onSuccess: (room, id) => {
      queues.delete(id);
      client.removeQueries({ queryKey: exerciseKey(id) });
      client.setQueryData(roomKey, room);
    },
  });
}

function takeExercise(client: QueryClient, view: ExerciseView): void {
  client.setQueryData(exerciseKey(view.id), view);
  void client.invalidateQueries({ queryKey: roomKey });
}

const queues = new Map<string, ExerciseQueue>();

/** The queue of an exercise; one for the whole window, so that what is on its way outlives the page. */
function useQueue(id: string): ExerciseQueue {
  const client = useQueryClient();
  return useMemo(() => {
    const queue =
      queues.get(id) ??
      new ExerciseQueue({
        send: (act, number) =>
          act.do === "mark"
            ? ask<ExerciseView>(`${base}/${id}/marks`, { method: "POST", body: { ...act.mark, number } })
            : ask<ExerciseView>(`${base}/${id}/take-back`, { method: "POST", body: { number } }),
        take: (view) => takeExercise(client, view),
      });
    queues.set(id, queue);
    return queue;
  }, [client, id]);
}

/** An exercise with what this window did laid over it. */
export interface ExerciseUse {
  readonly view: ExerciseView | undefined;
  readonly error: Refused | null;
  readonly saving: ExerciseSaving;
  readonly act: (act: ExerciseAct) => void;
  readonly retry: () => void;
}

/** See {@link ExerciseUse}. */
export function useExercise(id: string): ExerciseUse {
  const queue = useQueue(id);
  const saving = useSyncExternalStore(queue.watch, queue.now);
  const { data, error, refetch } = useQuery<ExerciseView, Refused>({
    queryKey: exerciseKey(id),
    queryFn: () => ask<ExerciseView>(`${base}/${id}`),
    refetchOnWindowFocus: () => queue.now().is === "quiet",
  });
  const isDropped = saving.is === "failed" && !saving.retries;
  useEffect(() => {
    if (isDropped) void refetch();
  }, [isDropped, refetch]);
  useLeaveWarning(saving.is === "saving" || (saving.is === "failed" && saving.retries));
  const view = useMemo(() => {
    void saving; // what lies over the marks changes whenever the queue tells
    return data && { ...data, marks: queue.over(data.marks) };
  }, [data, queue, saving]);
  const marked = data?.marks.length ?? 0;
  return {
    ...{ view, error, saving },
    act: (act) => queue.put(act, marked),
    retry: () => queue.retry(marked),
  };
}

/** Warns who closes the window while a mark has not reached the record. */
function useLeaveWarning(isWaiting: boolean): void {
  useEffect(() => {
    if (!isWaiting) return undefined;
    const leave = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener("beforeunload", leave);
    return () => window.removeEventListener("beforeunload", leave);
  }, [isWaiting]);
}

/** Works an exercise out; it stays as it is from then on. */
export function useFinishExercise(id: string) {
  const client = useQueryClient();
  return useMutation<ExerciseView, Refused>({
    mutationFn: () => ask<ExerciseView>(`${base}/${id}/finish`, { method: "POST" }),
    onSuccess: (view) => takeExercise(client, view),
  });
}

/** Which error of an exercise is used: that of all pairs, or that without those that are out of line. */
export type Which = "all" | "without";

/** Lets all sums use the error of an exercise from now on, and follows the cases that are worked out anew. */
export function useUseOfExercise(id: string) {
  const client = useQueryClient();
  const [jobId, setJobId] = useState<string>();
  const start = useMutation<Job, Refused, Which>({
    mutationFn: (which) => ask<Job>(`${base}/${id}/use`, { method: "POST", body: { which } }),
    onSuccess: (job) => setJobId(job.id),
  });
  const job = useQuery<Job, Refused>({
    queryKey: ["job", jobId],
    queryFn: () => ask<Job>(`/jobs/${jobId}`),
    enabled: jobId !== undefined,
    refetchInterval: ({ state }) => (state.data === undefined || state.data.state === "running" ? 300 : false),
  });
  const state = job.data?.state;
  const renew = useCallback(() => {
    for (const key of [["settings"], ["case"], ["cases"], roomKey]) void client.invalidateQueries({ queryKey: key });
  }, [client]);
  useEffect(() => {
    if (state !== undefined && state !== "running") renew();
  }, [state, renew]);
  return { use: start.mutate, busy: start.isPending || state === "running", job: job.data, error: start.error };
}
