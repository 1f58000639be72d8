/** The kinds of moment that a person can add, in the order of the menu. */
export const addable = [
  ...(["visit", "recall", "mishap", "findings", "diagnosis", "plan"] as const),
  ...(["consent", "medicalHistory", "handback", "review"] as const),
] as const;
/** See {@link addable}. */
export type Addable = (typeof addable)[number];
