/** Working lengths of case B in mm, about 0.5 short of the foramen, with the cusp that each was read from. */
export const lengths = {
  MB: { workingLengthMm: 20.5, locatorMm: 21, reference: "mesiobuccal cusp" },
  ML: { workingLengthMm: 20.5, locatorMm: 21, reference: "mesiolingual cusp" },
  DB: { workingLengthMm: 19.5, locatorMm: 20, reference: "distobuccal cusp" },
  DL: { workingLengthMm: 19.5, locatorMm: 20, reference: "distolingual cusp" },
} as const;
