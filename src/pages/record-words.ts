/** The record's terms as people read them. */
const terms: Readonly<Record<string, string>> = {
  normalPulp: "normal pulp",
  reversiblePulpitis: "reversible pulpitis",
  symptomaticIrreversiblePulpitis: "symptomatic irreversible pulpitis",
  asymptomaticIrreversiblePulpitis: "asymptomatic irreversible pulpitis",
  pulpNecrosis: "pulp necrosis",
  previouslyTreated: "previously treated",
  previouslyInitiatedTherapy: "previously initiated therapy",
  notDetermined: "not determined",
  normalApicalTissues: "normal apical tissues",
  symptomaticApicalPeriodontitis: "symptomatic apical periodontitis",
  asymptomaticApicalPeriodontitis: "asymptomatic apical periodontitis",
  acuteApicalAbscess: "acute apical abscess",
  chronicApicalAbscess: "chronic apical abscess",
  condensingOsteitis: "condensing osteitis",
  firstTreatment: "first treatment",
  apicalBarrier: "apical barrier",
  vitalPulp: "vital pulp treatment",
  notDone: "not done",
  notAsked: "not asked",
  notRecorded: "not recorded",
  notTried: "not tried",
  notPatent: "not patent",
  notTaken: "not taken",
  notFound: "not found",
  notComparable: "not comparable",
  separatedInstrument: "separated instrument",
  irrigantExtrusion: "extrusion of irrigant",
  fillingExtrusion: "extrusion of filling",
  missedCanal: "missed canal",
  wrongTooth: "wrong tooth",
  swallowedOrInhaled: "swallowed or inhaled object",
  stainlessSteel: "stainless steel",
  nickelTitanium: "nickel-titanium",
  heatTreatedNickelTitanium: "heat-treated nickel-titanium",
  calciumHydroxide: "calcium hydroxide",
  chlorhexidineGel: "chlorhexidine gel",
  antibioticPaste: "antibiotic paste",
  corticosteroidPaste: "corticosteroid paste",
  indirectCapping: "indirect capping",
  directCapping: "direct capping",
  partialPulpotomy: "partial pulpotomy",
  fullPulpotomy: "full pulpotomy",
  workingLength: "working length",
  masterCone: "cone fit",
  pulpalOrApical: "of pulpal or apical origin",
  unplannedCall: "unplanned call",
  flareUp: "flare-up",
  notYet: "not yet told",
};

/** A term of the record in words; one that is a word already stays as it is. */
export const inWords = (term: string): string => terms[term] ?? term;

/** A sentence from words: first letter large. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Days from the first day of the case, as `day 23`; documents name no calendar date. */
export function dayWords(on: string, first: string): string {
  const days = Math.round((Date.parse(on) - Date.parse(first)) / 86_400_000);
  return days < 120 ? `day ${days}` : `${Math.round(days / 30.4375)} months`;
}
