import { dayAfter } from "../calendar.ts";

const presented = "2026-01-13";

/** The days of case C, the first visit to the latest follow-up. */
export const days = {
  presented,
  firstVisit: dayAfter(presented, 2),
  secondVisit: dayAfter(presented, 23),
  thirdVisit: dayAfter(presented, 24),
  threeMonths: dayAfter(presented, 24 + 92),
  sixMonths: dayAfter(presented, 24 + 184),
  next: dayAfter(presented, 24 + 366),
} as const;
