import { dayAfter } from "../calendar.ts";

const presented = "2024-02-20";

/** The days of case A, the first visit to the last recall. */
export const days = {
  presented,
  firstVisit: dayAfter(presented, 14),
  secondVisit: dayAfter(presented, 28),
  crown: dayAfter(presented, 49),
  sixMonths: dayAfter(presented, 28 + 182),
  twelveMonths: dayAfter(presented, 28 + 365),
  twentyFourMonths: dayAfter(presented, 28 + 730),
  next: dayAfter(presented, 28 + 1457),
} as const;
