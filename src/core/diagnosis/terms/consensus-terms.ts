/** The pulpal terms of the 2009 consensus, as a clinician gives them; one at a date. */
export const pulpalTerms = [
  "normalPulp",
  "reversiblePulpitis",
  "symptomaticIrreversiblePulpitis",
  "asymptomaticIrreversiblePulpitis",
  "pulpNecrosis",
  "previouslyTreated",
  "previouslyInitiatedTherapy",
  "notDetermined",
] as const;
/** The apical terms of the 2009 consensus, as a clinician gives them; one at a date. */
export const apicalTerms = [
  "normalApicalTissues",
  "symptomaticApicalPeriodontitis",
  "asymptomaticApicalPeriodontitis",
  "acuteApicalAbscess",
  "chronicApicalAbscess",
  "condensingOsteitis",
  "notDetermined",
] as const;
