import { dayAfter } from "../calendar.ts";

const presented = "2025-09-02";

/** The days of case B, the first visit to the recall. */
export const days = {
  presented,
  firstVisit: presented,
  secondVisit: dayAfter(presented, 14),
  cuspsCovered: dayAfter(presented, 42),
  twelveMonths: dayAfter(presented, 14 + 364),
  next: dayAfter(presented, 14 + 731),
} as const;
