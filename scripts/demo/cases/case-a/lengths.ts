/** Working lengths of case A in mm, 0.5 short of the foramen, with the cusp that each was read from. */
export const lengths = {
  MB1: { workingLengthMm: 20, locatorMm: 20.5, reference: "mesiobuccal cusp" },
  MB2: { workingLengthMm: 19.5, locatorMm: 20, reference: "mesiobuccal cusp" },
  DB: { workingLengthMm: 18.5, locatorMm: 19, reference: "distobuccal cusp" },
  P: { workingLengthMm: 21, locatorMm: 21.5, reference: "mesiopalatal cusp" },
} as const;
