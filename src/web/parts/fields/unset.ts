/** Whether a value says that nothing was asked, done or tried: a silence that is shown as one. */
export const isUnset = (value: unknown): boolean =>
  value === undefined || ["notDone", "notAsked", "notTried", "notRecorded"].some((one) => one === value);
