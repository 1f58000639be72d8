import { dayAfter } from "../calendar.ts";

const presented = "2025-09-02";

/** The days of case B, the first visit to the recall. */
export const days = {
  presented,
  firstVisit: presented,
  secondVisit: dayAfter(presented, 7),
  cuspsCovered: dayAfter(presented, 35),
  twelveMonths: dayAfter(presented, 7 + 365),
  next: dayAfter(presented, 7 + 728),
} as const;
