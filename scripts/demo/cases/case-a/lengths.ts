/** Working lengths of case A in mm, about 0.5 short of the foramen, with the cusp that each was read from. */
export const lengths = {
  MB1: { workingLengthMm: 20.5, locatorMm: 21, reference: "mesiobuccal cusp" },
  MB2: { workingLengthMm: 20, locatorMm: 20.5, reference: "mesiobuccal cusp" },
  DB: { workingLengthMm: 19, locatorMm: 19.5, reference: "distobuccal cusp" },
  P: { workingLengthMm: 20.5, locatorMm: 21, reference: "mesiopalatal cusp" },
} as const;
