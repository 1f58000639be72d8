/** Beginnings of words of the trade that a patient need not know; what follows in the same word counts as well. */
const stems = [
  ...["pulp", "periapic", "periradic", "apical", "apex", "apices", "apic", "periodont", "endodont", "orthograde"],
  ...["retrograde", "obturat", "retreat", "gutta", "debrid", "irrig", "hypochlor", "calcium hydrox", "sealer"],
  ...["lesion", "radiograph", "radioluc", "lucen", "necro", "abscess", "perforat", "ferrul", "restorab", "restoration"],
  ...["mesial", "mesio", "distal", "disto", "buccal", "lingual", "palatal", "occlus", "coronal", "cervical", "furca"],
  ...["anaesth", "anesth", "antiresorp", "bisphosph", "prognos", "asympt", "symptomat", "percuss", "palpat"],
  ...["resorp", "ligament", "sinus tract", "calcif", "scleros", "dentin", "incisor", "premolar", "molar", "cusp"],
  ...["cbct", "odds", "cohort", "confidence interval", "osteonec", "paraesth", "paresth", "flare", "analges"],
  ...["prophyla", "contraind", "extru", "haemorr", "hemorr", "replant", "revascul", "regenerat", "apexific"],
  ...["extract", "implant-supported", "prosthe", "mandib", "maxill", "alveol", "etiolog", "aetiolog", "patholog"],
  ...["vertucci", "schneider", "size .0", "taper", "nickel", "file fract", "separated instr", "iatrogen", "curettage"],
] as const;

const asWord = stems.map((stem) => ({ stem, found: new RegExp(`(?<![\\p{L}])${stem}[\\p{L}-]*`, "giu") }));

/**
 * The words of the trade that stand in a text for a patient.
 * Takes any text.
 * Gives each such word once as it stands, in small letters; empty where there is none.
 */
export function jargonIn(text: string): readonly string[] {
  const words = asWord.flatMap(({ found }) => text.match(found) ?? []);
  return [...new Set(words.map((word) => word.toLowerCase()))];
}
