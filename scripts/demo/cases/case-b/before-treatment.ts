import { type Moment, write } from "../case-of-moments.ts";
import { published } from "../published.ts";
import { denied, probing, testedTooth } from "../usual-bodies.ts";
import { days } from "./days.ts";
import { searchBegun } from "./search.ts";

const presenting: Moment = {
  day: days.presented,
  time: "13:05",
  words: "Presenting recorded",
  writes: [
    write("case", "case-1", {
      pseudonym: "P-0188",
      birthYear: 1994,
      sex: "male",
      tooth: "46",
      treatment: "firstTreatment",
      presentedOn: days.presented,
      complaint:
        "Cold water on the lower right goes through my head and stays for a minute. For three days it has also started by itself, mostly in the evening. I can point to the tooth.",
      referredFor: "Root canal treatment of 46. Deep caries on the distal side.",
      background:
        "No filling and no earlier treatment of this tooth, no trauma. Cold had been short and sharp for some months; for two weeks it has stayed.",
      demo: true,
    }),
  ],
};

const history: Moment = {
  day: days.presented,
  time: "13:09",
  words: "Medical history taken",
  writes: [
    write("medicalHistory", "history-1", {
      takenOn: days.presented,
      nothingToNote: false,
      flags: [{ flag: "allergyLatex", detail: "Hives from gloves as a student; dam and gloves without latex" }],
      denied: [
        "cardiacRisk",
        "unselectiveBetaBlocker",
        "tricyclic",
        "cocaineWithinADay",
        "thyroidUncontrolled",
        "methaemoglobinRisk",
        "liverFailure",
        "allergySulphite",
        "allergyIodine",
        "allergyHypochlorite",
        "allergyAnaesthetic",
        "highBloodPressure",
        "anticoagulant",
      ],
      medicines: [],
      physicalStatusClass: 1,
      bodyMassKg: 82,
      note: "Ibuprofen 400 mg last night and this morning at seven: the tests may read lower than the pulp is.",
    }),
  ],
};

const findings: Moment = {
  day: days.presented,
  time: "13:28",
  words: "Findings of 46 with three controls",
  writes: [
    write("findings", "findings-1", {
      takenOn: days.presented,
      history: { ...denied, spontaneousPain: "yes", painToCold: "yes", painToHeat: "yes", recentOnset: "yes" },
      teeth: [
        testedTooth({
          tooth: "46",
          role: "tooth",
          cold: { reply: "heightened", lingersSeconds: 45 },
          heat: { reply: "heightened", lingersSeconds: 30 },
          electric: 18,
          percussion: "slight",
          bite: "slight",
          probingMm: probing([3, 2, 3, 3, 2, 3]),
        }),
        testedTooth({
          tooth: "45",
          role: "control",
          cold: { reply: "normal", lingersSeconds: 2 },
          electric: 31,
          probingMm: probing([2, 2, 2, 2, 2, 3]),
        }),
        testedTooth({
          tooth: "47",
          role: "control",
          cold: { reply: "normal", lingersSeconds: 3 },
          electric: 35,
          probingMm: probing([3, 2, 3, 3, 3, 3]),
        }),
        testedTooth({
          tooth: "36",
          role: "control",
          cold: { reply: "normal", lingersSeconds: 2 },
          electric: 33,
          probingMm: probing([3, 2, 3, 3, 2, 3]),
        }),
      ],
      seen: {
        swelling: "none",
        sinusTract: "none",
        caries: "deep",
        crack: "none",
        restoration: "none",
        fever: "no",
        post: "no",
        rotationDeg: 0,
        tiltDeg: 0,
        mouthOpeningMm: 47,
        gag: "no",
        ferruleHeightMm: 1.8,
        ferruleWidthMm: 1.5,
      },
      onFilm: {
        ligament: "widened",
        lamina: "lost",
        lucency: "apical",
        lucencyMm: 1.5,
        sclerosis: "no",
        resorption: "none",
        apex: "closed",
        calcified: "no",
        earlierFilling: "none",
      },
      prior: { events: 31, n: 72, dependence: 0.5, from: "Invented: teeth opened in this clinic in a year" },
      note: "Straight film: a first small lucency at the mesial root; two roots at first sight, but the distal one shows two outlines and its canal fades at half its length. A second film with the tube 25° from mesial parts a slender third root from it, which goes with the tube and so lies on the lingual side.",
    }),
  ],
};

/** The two films of the first day give the third root's canal; later films show it filled. */
const inSpace: Moment = {
  day: days.presented,
  time: "13:21",
  words: "DL read from the straight and the angled film of this day",
  writes: [write("pairing", "pairing-dl", { canal: "DL", films: ["film-straight", "film-angled"] })],
};

const anatomyExpected: Moment = {
  day: days.presented,
  time: "13:40",
  words: "Third root on the lingual side recorded before access, as two films told of it",
  writes: [
    write("anatomy", "anatomy-1", {
      roots: [
        { name: "M", levels: [2], orifices: ["MB", "ML"] },
        { name: "DB", side: "buccal", levels: [1] },
        { name: "DL", side: "lingual", levels: [1] },
      ],
      foundBy: ["angledFilm"],
      unusualBecause: "Third root seen apart from the distobuccal one on the film with the tube 25° from mesial",
    }),
    searchBegun,
  ],
};

const diagnosis: Moment = {
  day: days.presented,
  time: "13:46",
  words: "Diagnosis made",
  writes: [
    write("diagnosis", "diagnosis-1", {
      madeOn: days.presented,
      taxonomy: "consensus2009",
      pulpal: "symptomaticIrreversiblePulpitis",
      apical: "symptomaticApicalPeriodontitis",
      because:
        "Pain by itself, and a reply to cold and heat that outlasts the stimulus by half a minute and more, against two to three seconds in 45, 47 and 36: the pulp will not recover. Slight pain to percussion and on biting, a widened ligament and a first small lucency at the mesial root: the inflammation has reached the apical tissues. Ibuprofen may have lowered the replies, it can't have raised them.",
    }),
  ],
};

const plan: Moment = {
  day: days.presented,
  time: "13:55",
  words: "Options weighed with the patient, treatment chosen",
  writes: [
    write("plan", "plan-1", {
      madeOn: days.presented,
      crowned: "no",
      options: [
        {
          way: "fullPulpotomy",
          forIt: "Less dentine lost, one visit; now offered in such pulps",
          againstIt:
            "Distal wall is 2 mm below the gum and needs the chamber for hold; apical signs; patient wants the surer way",
        },
        {
          way: "treat",
          forIt: "Ends the pain; long record; the third root is known before the access is cut",
          againstIt: "Distolingual root bends sharply to buccal: risk of a ledge or a broken instrument",
        },
        { way: "extraction", forIt: "One short visit", againstIt: "Loses a sound tooth at 31; gap needs treatment" },
      ],
      chosen: "treat",
      because:
        "Irreversible inflammation with apical signs, and a cavity that can only be built up with the chamber. The tooth can be restored with covered cusps. The distolingual canal is treated last and by hand first.",
      saidPlainly:
        "The nerve is too sick to get well. The tooth is strong if it is covered in time. One root is bent, so we clean that one last and with care.",
      visitsExpected: 2,
      risksNamed: [
        "Pain, swelling or a flare-up after the visit",
        "Fracture of the tooth, above all without cover of the cusps",
        "An instrument may break, above all in the third root",
      ],
    }),
  ],
};

const consent: Moment = {
  day: days.presented,
  time: "14:00",
  words: "Consent to root canal treatment",
  writes: [
    write("consent", "consent-1", {
      on: days.presented,
      to: "Root canal treatment of 46 in two visits, begun today",
      explainedBy: "resident",
      answeredBy: "patient",
      answer: "agreed",
      capacity: "has",
      imagesFor: ["treatment", "teaching", "publication"],
      note: "Pulpotomy was offered and explained; he asked twice which is the surer way for this tooth.",
    }),
  ],
};

const evidence: Moment = {
  day: days.presented,
  time: "21:05",
  words: "Evidence on the third root and the tests gathered",
  writes: [
    write("reference", "ref-martins-2022", published.martins2022),
    write("reference", "ref-gu-2011", published.gu2011),
    write("reference", "ref-mainkar-2018", published.mainkar2018),
    write("reference", "ref-guideline-2023", published.guideline2023),
    write("claim", "claim-third-root", {
      about: "anatomy-1",
      says: "A third root on the lingual side is common enough to be looked for in every lower first molar.",
      speaks: "for",
      references: ["ref-martins-2022", "ref-gu-2011"],
      state: "supported",
      verdict: "5.6 % worldwide, 0.9 to 22.4 % by region: where it is common one film straight on is not enough.",
    }),
    write("claim", "claim-tests", {
      about: "diagnosis-1",
      says: "Cold and electric tests agree that the pulp is alive; the lingering reply, not the tests, calls it irreversible.",
      speaks: "for",
      references: ["ref-mainkar-2018", "ref-guideline-2023"],
      state: "supported",
      verdict: "The tests tell a living from a dead pulp. How inflamed a living one is rests on history and on time.",
    }),
  ],
};

/** The first hour of case B: why he came, what was found, which root the straight film hid, what was chosen. */
export const beforeTreatment: readonly Moment[] = [
  ...[presenting, history, findings, inSpace, anatomyExpected],
  ...[diagnosis, plan, consent, evidence],
];
