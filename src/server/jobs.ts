import { randomUUID } from "node:crypto";
import { Refusal } from "../core/refusal.ts";
import type { Job } from "./api.ts";
import { replyOf } from "./reply-of.ts";

/** Tells how far a long piece of work is: a fraction of 1 and a line of words. */
export type Progress = (fraction: number, says: string) => void;

/** Long work that goes on while the window asks how far it is. */
export interface Jobs {
  readonly start: (says: string, work: (progress: Progress, stopped: AbortSignal) => Promise<JobResult>) => Job;
  /** @throws Refusal `record.notFound` */
  readonly read: (id: string) => Job;
  /** Asks work to end early; work that can't be stopped goes on. @throws Refusal `record.notFound` */
  readonly stop: (id: string) => Job;
}

/** What came of a job. */
type JobResult = Pick<Job, "documentId" | "entryId">;

/** Jobs kept in memory; the last hundred can be asked for. */
export function makeJobs(): Jobs {
  const jobs = new Map<string, Job>();
  const stops = new Map<string, AbortController>();
  const put = (job: Job): Job => {
    jobs.set(job.id, job);
    return job;
  };
  const read = (id: string): Job => {
    const job = jobs.get(id);
    if (job === undefined) throw new Refusal("record.notFound", "Cannot tell how far this work is: it is not known");
    return job;
  };
  return {
    start: (says, work) => {
      const job = put({ id: randomUUID(), state: "running", fraction: 0, says });
      const stop = new AbortController();
      stops.set(job.id, stop);
      forget(jobs, 100);
      const progress: Progress = (fraction, now) => put({ ...job, fraction, says: now });
      work(progress, stop.signal)
        .then((result) => put({ ...job, ...result, state: "done", fraction: 1, says: "Done" }))
        .catch((thrown: unknown) =>
          stop.signal.aborted
            ? put({ ...job, state: "stopped", says: "Stopped" })
            : put({ ...job, state: "failed", says: "Failed", refusal: replyOf(thrown).view }),
        )
        .finally(() => stops.delete(job.id));
      return job;
    },
    read,
    stop: (id) => {
      const job = read(id);
      stops.get(id)?.abort(new Refusal("record.conflict", "Stopped before it was done; nothing was kept"));
      return job;
    },
  };
}

function forget(jobs: Map<string, Job>, keep: number): void {
  for (const [id, job] of jobs) {
    if (jobs.size <= keep) return;
    if (job.state !== "running") jobs.delete(id);
  }
}
