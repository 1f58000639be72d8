import { dayAfter } from "../calendar.ts";

const presented = "2024-02-20";

/** The days of case A, the first visit to the last recall. */
export const days = {
  presented,
  firstVisit: dayAfter(presented, 14),
  secondVisit: dayAfter(presented, 28),
  crown: dayAfter(presented, 49),
  sixMonths: dayAfter(presented, 28 + 184),
  twelveMonths: dayAfter(presented, 28 + 366),
  twentyFourMonths: dayAfter(presented, 28 + 733),
  next: dayAfter(presented, 28 + 1463),
} as const;
