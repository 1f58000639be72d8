import type { BodyOf } from "../../../src/record/parts.ts";

type Reference = BodyOf<"reference">;

const paper = (own: Partial<Reference> & Pick<Reference, "title" | "authors" | "journal" | "year">): Reference => ({
  volume: "",
  pages: "",
  doi: "",
  design: "notRecorded",
  takeaway: "",
  ...own,
});

/** The papers that the invented cases cite. They are real; each figure in a takeaway was read in the paper's abstract or in a paper that quotes it. */
export const published = {
  ng2011health: paper({
    title:
      "A prospective study of the factors affecting outcomes of non-surgical root canal treatment: part 1: periapical health",
    authors: ["Ng Y-L", "Mann V", "Gulabivala K"],
    journal: "Int Endod J",
    year: 2011,
    volume: "44(7)",
    pages: "583-609",
    design: "cohort",
    takeaway:
      "No apical periodontitis at 2 to 4 years in 83 % of roots after first treatment and 80 % after retreatment.",
  }),
  ng2011survival: paper({
    title:
      "A prospective study of the factors affecting outcomes of non-surgical root canal treatment: part 2: tooth survival",
    authors: ["Ng Y-L", "Mann V", "Gulabivala K"],
    journal: "Int Endod J",
    year: 2011,
    volume: "44(7)",
    pages: "610-625",
    design: "cohort",
    takeaway: "95.4 % of teeth stand four years after first treatment, 95.3 % after retreatment.",
  }),
  farzaneh2004: paper({
    title: "Treatment outcome in endodontics: the Toronto Study. Phases I and II: orthograde retreatment",
    authors: ["Farzaneh M", "Abitbol S", "Friedman S"],
    journal: "J Endod",
    year: 2004,
    volume: "30(9)",
    pages: "627-633",
    design: "cohort",
    takeaway: "After retreatment 81 % healed: 97 % without and 78 % with a lesion before.",
  }),
  martins2018: paper({
    title:
      "Worldwide analyses of maxillary first molar second mesiobuccal prevalence: a multicenter cone-beam computed tomographic study",
    authors: ["Martins JNR", "Alkhawas MBAM", "Altaki Z", "Bellardini G", "Berti L", "Boveda C", "and others"],
    journal: "J Endod",
    year: 2018,
    volume: "44(11)",
    pages: "1641-1649",
    design: "crossSectional",
    takeaway: "A second mesiobuccal canal in 73.8 % of 5250 upper first molars, 48.0 to 97.6 % by region.",
  }),
  baruwa2020: paper({
    title:
      "The influence of missed canals on the prevalence of periapical lesions in endodontically treated teeth: a cross-sectional study",
    authors: [
      ...["Baruwa AO", "Martins JNR", "Meirinhos J", "Pereira B"],
      ...["Gouveia J", "Quaresma SA", "Monroe A", "Ginjeira A"],
    ],
    journal: "J Endod",
    year: 2020,
    volume: "46(1)",
    pages: "34-39.e1",
    design: "crossSectional",
    takeaway:
      "The mesiobuccal root of the upper first molar had a missed canal in 62.8 % and then a lesion in 75.2 %: 3.1 times the risk.",
  }),
  spili2005: paper({
    title: "The impact of instrument fracture on outcome of endodontic treatment",
    authors: ["Spili P", "Parashos P", "Messer HH"],
    journal: "J Endod",
    year: 2005,
    volume: "31(12)",
    pages: "845-850",
    design: "caseControl",
    takeaway:
      "146 teeth with a retained fragment against 146 matched: 91.8 and 94.5 % healed; with a lesion before, 86.7 and 92.9 %, not significant.",
  }),
  panitvisai2010: paper({
    title: "Impact of a retained instrument on treatment outcome: a systematic review and meta-analysis",
    authors: ["Panitvisai P", "Parunnit P", "Sathorn C", "Messer HH"],
    journal: "J Endod",
    year: 2010,
    volume: "36(5)",
    pages: "775-780",
    design: "review",
    takeaway: "Two studies, 199 cases: 80.7 % healed with a lesion and 92.4 % without.",
  }),
  souter2005: paper({
    title: "Complications associated with fractured file removal using an ultrasonic technique",
    authors: ["Souter NJ", "Messer HH"],
    journal: "J Endod",
    year: 2005,
    volume: "31",
    pages: "450-452",
    design: "bench",
    takeaway: "Perforation and failure occurred only with fragments in the apical third; root strength fell.",
  }),
  hulsmann1999: paper({
    title:
      "Influence of several factors on the success or failure of removal of fractured instruments from the root canal",
    authors: ["Hulsmann M", "Schinkel I"],
    journal: "Endod Dent Traumatol",
    year: 1999,
    volume: "15",
    pages: "252-258",
    design: "caseSeries",
    takeaway: "Neither removed nor bypassed: 2 of 18 before the bend, 13 of 31 in it, 15 of 33 beyond it.",
  }),
  chutich1998: paper({
    title: "Risk assessment of the toxicity of solvents of gutta-percha used in endodontic retreatment",
    authors: ["Chutich MJ", "Kaminski EJ", "Miller DA", "Lautenschlager EP"],
    journal: "J Endod",
    year: 1998,
    volume: "24",
    pages: "213-216",
    design: "bench",
    takeaway: "0.32 mg of chloroform left the apex on average while gutta-percha was removed from canals of size 40.",
  }),
  mainkar2018: paper({
    title: "Diagnostic accuracy of 5 dental pulp tests: a systematic review and meta-analysis",
    authors: ["Mainkar A", "Kim SG"],
    journal: "J Endod",
    year: 2018,
    volume: "44(5)",
    pages: "694-702",
    design: "review",
    takeaway: "Cold and electric tests are read together; neither alone settles the state of the pulp.",
  }),
  martins2022: paper({
    title:
      "Worldwide assessment of the mandibular first molar second distal root and root canal: a cross-sectional study with meta-analysis",
    authors: ["Martins JNR", "Nole C", "Ounsi HF", "Parashos P", "Plotino G", "and others"],
    journal: "J Endod",
    year: 2022,
    volume: "48(2)",
    pages: "223-233",
    design: "crossSectional",
    takeaway: "A third, distolingual root in 5.6 % of lower first molars, 0.9 to 22.4 % by region.",
  }),
  gu2011: paper({
    title:
      "Root canal morphology of permanent three-rooted mandibular first molars: part III - an odontometric analysis",
    authors: ["Gu Y", "Zhou P", "Ding Y", "Wang P", "Ni L"],
    journal: "J Endod",
    year: 2011,
    volume: "37(4)",
    pages: "485-490",
    design: "bench",
    takeaway: "The distolingual canal is rounder and smaller than the distobuccal one.",
  }),
  guideline2023: paper({
    title:
      "Treatment of pulpal and apical disease: the European Society of Endodontology (ESE) S3-level clinical practice guideline",
    authors: ["Duncan HF", "Kirkevang L-L", "Peters OA", "and others"],
    journal: "Int Endod J",
    year: 2023,
    volume: "56(S3)",
    pages: "238-295",
    doi: "10.1111/iej.13974",
    design: "guideline",
    takeaway: "Current guidance of the society on the treatment of pulpal and apical disease.",
  }),
  gillen2011: paper({
    title:
      "Impact of the quality of coronal restoration versus the quality of root canal fillings on success of root canal treatment: a systematic review and meta-analysis",
    authors: ["Gillen BM", "Looney SW", "Gu L-S", "Loushine BA", "Weller RN", "Loushine RJ", "Pashley DH", "Tay FR"],
    journal: "J Endod",
    year: 2011,
    volume: "37(7)",
    pages: "895-902",
    design: "review",
    takeaway: "Good filling and good restoration together heal more often than either with the other poor.",
  }),
  orstavik1996: paper({
    title: "Time-course and risk analyses of the development and healing of chronic apical periodontitis in man",
    authors: ["Orstavik D"],
    journal: "Int Endod J",
    year: 1996,
    volume: "29",
    pages: "150-155",
    design: "cohort",
    takeaway: "111 of 126 diseased roots (88 %) showed healing; signs of it were most frequent at one year.",
  }),
} as const;
