/** What every sum of this room ends with. */
export const standingCaution =
  "This supports, and never replaces, the product's labelling, local rules and the judgement of the licensed clinician.";
