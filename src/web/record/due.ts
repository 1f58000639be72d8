import { useQuery } from "@tanstack/react-query";
import type { DueView } from "../../server/api.ts";
import { ask, type Refused } from "./api.ts";

/** What is due in all cases, seen from a day; up to an end where one is given. */
export const useDue = (today: string, until?: string) =>
  useQuery<DueView[], Refused>({
    queryKey: ["due", today, until],
    queryFn: ({ signal }) =>
      ask<DueView[]>(`/due?today=${today}${until === undefined ? "" : `&until=${until}`}`, { signal }),
    staleTime: 0,
  });
