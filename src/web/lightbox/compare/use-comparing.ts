import { useQuery, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import type { Job } from "../../../server/api.ts";
import { ask, Refused } from "../../record/api.ts";
import { caseKey } from "../../record/case-access.tsx";

/** A comparison that is asked for, under way, or refused. */
export interface Comparing {
  readonly start: () => void;
  readonly stop: () => void;
  readonly busy: boolean;
  readonly job: Job | undefined;
  readonly refused: Refused | undefined;
}

/** Starts the comparison of a part and follows it until its entry is in the ledger. */
export function useComparing(caseId: string, partId: string): Comparing {
  const client = useQueryClient();
  const [jobId, setJobId] = useState<string>();
  const [refused, setRefused] = useState<Refused>();
  const { data: job, error } = useQuery<Job, Refused>({
    queryKey: ["job", jobId],
    queryFn: async () => {
      const now = await ask<Job>(`/jobs/${jobId}`);
      if (now.state !== "running") await client.invalidateQueries({ queryKey: caseKey(caseId) });
      return now;
    },
    enabled: jobId !== undefined,
    refetchInterval: ({ state }) => (state.data === undefined || state.data.state === "running" ? 250 : false),
  });
  const busy = jobId !== undefined && !error && (job === undefined || job.state === "running");
  const start = () => {
    if (busy) return;
    setRefused(undefined);
    ask<Job>(`/cases/${caseId}/comparisons/${partId}`, { method: "POST" }).then(
      ({ id }) => setJobId(id),
      (thrown: unknown) => thrown instanceof Refused && setRefused(thrown),
    );
  };
  const stop = () => {
    if (jobId !== undefined) void ask<Job>(`/jobs/${jobId}`, { method: "DELETE" }).catch(() => undefined);
  };
  return { start, stop, busy, job, refused: refused ?? error ?? refusalOf(job) };
}

function refusalOf(job: Job | undefined): Refused | undefined {
  if (job?.refusal === undefined) return undefined;
  const { code, message, facts, faults } = job.refusal;
  return new Refused(code, message, facts, faults);
}
