import { randomUUID } from "node:crypto";
import { Refusal } from "../core/refusal.ts";
import type { Job } from "./api.ts";
import { replyOf } from "./reply-of.ts";

/** Tells how far a long piece of work is: a fraction of 1 and a line of words. */
export type Progress = (fraction: number, says: string) => void;

/** Long work that goes on while the window asks how far it is. */
export interface Jobs {
  readonly start: (says: string, work: (progress: Progress) => Promise<Pick<Job, "documentId">>) => Job;
  /** @throws Refusal `record.notFound` */
  readonly read: (id: string) => Job;
}

/** Jobs kept in memory; the last hundred can be asked for. */
export function makeJobs(): Jobs {
  const jobs = new Map<string, Job>();
  const put = (job: Job): Job => {
    jobs.set(job.id, job);
    return job;
  };
  return {
    start: (says, work) => {
      const job = put({ id: randomUUID(), state: "running", fraction: 0, says });
      forget(jobs, 100);
      const progress: Progress = (fraction, now) => put({ ...job, fraction, says: now });
      work(progress)
        .then((result) => put({ ...job, ...result, state: "done", fraction: 1, says: "Done" }))
        .catch((thrown: unknown) => put({ ...job, state: "failed", says: "Failed", refusal: replyOf(thrown).view }));
      return job;
    },
    read: (id) => {
      const job = jobs.get(id);
      if (job === undefined) throw new Refusal("record.notFound", "Cannot tell how far this work is: it is not known");
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
