import { z } from "zod";
import { definePart } from "../part.ts";
import { day, words } from "../values.ts";

/** The pulpal terms of the 2009 consensus, one at a date. */
const pulpalTerms = [
  "normalPulp",
  "reversiblePulpitis",
  "symptomaticIrreversiblePulpitis",
  "asymptomaticIrreversiblePulpitis",
  "pulpNecrosis",
  "previouslyTreated",
  "previouslyInitiatedTherapy",
  "notDetermined",
] as const;
/** The apical terms of the 2009 consensus, one at a date. */
const apicalTerms = [
  "normalApicalTissues",
  "symptomaticApicalPeriodontitis",
  "asymptomaticApicalPeriodontitis",
  "acuteApicalAbscess",
  "chronicApicalAbscess",
  "condensingOsteitis",
  "notDetermined",
] as const;

/** The clinician's own diagnosis on one day, in the terms of the named list, with the reason. */
export const diagnosisPart = definePart({
  kind: "diagnosis",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    madeOn: day,
    taxonomy: z.literal("consensus2009").describe("AAE/ABE consensus wording, 2009."),
    pulpal: z.enum(pulpalTerms),
    apical: z.enum(apicalTerms),
    because: words,
  }),
});
