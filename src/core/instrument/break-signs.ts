/** What is seen on a piece or on what is left of its instrument by eye or under a stereomicroscope from the side. */
export const signsOfFlutes = ["flutesUnwound", "flutesWoundTighter", "bent", "noneVisible"] as const;

/** What a microscope of the fracture face shows. */
export const signsOfFace = ["striations", "dimples", "circularAbrasion", "severalOrigins", "inclusionOrPore"] as const;

/** What was seen on a piece or on what is left of its instrument; the last five need a microscope. */
export const breakSigns = [...signsOfFlutes, ...signsOfFace] as const;

/** One of {@link breakSigns}. */
export type BreakSign = (typeof breakSigns)[number];
