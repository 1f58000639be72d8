/** What can go otherwise than meant, in the order in which it is offered. */
export const mishapKinds = [
  "separatedInstrument",
  "ledge",
  "perforation",
  "block",
  "transportation",
  "irrigantExtrusion",
  "fillingExtrusion",
  "missedCanal",
  "wrongTooth",
  "swallowedOrInhaled",
  "other",
] as const;
