/** The working length of case C in mm, to the end of the shorter wall, with the cusp that it was read from. */
export const lengths = {
  R: { workingLengthMm: 18, locatorMm: 18.5, reference: "buccal cusp" },
} as const;
