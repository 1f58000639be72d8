import { dayAfter } from "../calendar.ts";

const presented = "2026-01-13";

/** The days of case C, the first visit to the latest follow-up. */
export const days = {
  presented,
  firstVisit: dayAfter(presented, 2),
  secondVisit: dayAfter(presented, 21),
  thirdVisit: dayAfter(presented, 22),
  threeMonths: dayAfter(presented, 22 + 91),
  sixMonths: dayAfter(presented, 203),
  next: dayAfter(presented, 22 + 364),
} as const;
