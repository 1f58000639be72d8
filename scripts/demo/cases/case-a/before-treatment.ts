import { type Moment, write } from "../case-of-moments.ts";
import { published } from "../published.ts";
import { denied, probing, testedTooth } from "../usual-bodies.ts";
import { days } from "./days.ts";
import { searchBegun } from "./search.ts";

const presenting: Moment = {
  day: days.presented,
  time: "09:10",
  words: "Presenting recorded",
  writes: [
    write("case", "case-1", {
      pseudonym: "P-0417",
      birthYear: 1967,
      sex: "female",
      tooth: "26",
      treatment: "retreatment",
      presentedOn: days.presented,
      complaint:
        "I can't chew on the upper left any more. It is a dull ache, worse after meat or nuts, and it never quite goes away. It does not wake me at night.",
      referredFor:
        "Assessment and retreatment of 26 if it can be kept. A film taken for a check-up showed a dark area at the mesiobuccal root.",
      background:
        "Root canal treatment nine years ago elsewhere, in one visit as the patient remembers it; no record and no film of it could be had. An amalgam filling over a base was placed soon after and is still there; the cusps were never covered. No complaint until about four months ago.\n26 carries the left side: 27 is sound, 36 and 37 are present and meet it.",
      demo: true,
    }),
  ],
};

const history: Moment = {
  day: days.presented,
  time: "09:18",
  words: "Medical history taken",
  writes: [
    write("medicalHistory", "history-1", {
      takenOn: days.presented,
      nothingToNote: false,
      flags: [
        { flag: "highBloodPressure", detail: "Treated for six years, 134/82 today" },
        { flag: "antiresorptive", detail: "Alendronic acid by mouth, three years, for osteoporosis" },
      ],
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
        "pregnancy",
        "anticoagulant",
      ],
      medicines: ["amlodipine 5 mg daily", "alendronic acid 70 mg weekly", "colecalciferol"],
      physicalStatusClass: 2,
      bodyMassKg: 68,
      note: "No allergy known. Never smoked. The antiresorptive speaks for keeping the tooth: an extraction would be the larger wound.",
    }),
  ],
};

const findings: Moment = {
  day: days.presented,
  time: "09:46",
  words: "Findings of 26 with three controls",
  writes: [
    write("findings", "findings-1", {
      takenOn: days.presented,
      history: { ...denied, painOnBiting: "yes", spontaneousPain: "no", recentOnset: "no" },
      teeth: [
        testedTooth({
          tooth: "26",
          role: "tooth",
          cold: { reply: "none" },
          electric: "notDone",
          percussion: "painful",
          palpation: "slight",
          bite: "painful",
          probingMm: probing([3, 2, 3, 3, 2, 3]),
        }),
        testedTooth({
          tooth: "25",
          role: "control",
          cold: { reply: "normal", lingersSeconds: 2 },
          electric: 34,
          probingMm: probing([2, 2, 3, 2, 2, 2]),
        }),
        testedTooth({
          tooth: "27",
          role: "control",
          cold: { reply: "normal", lingersSeconds: 2 },
          electric: 38,
          probingMm: probing([3, 2, 3, 3, 3, 3]),
        }),
        testedTooth({
          tooth: "16",
          role: "control",
          cold: { reply: "normal", lingersSeconds: 3 },
          electric: 36,
          probingMm: probing([2, 2, 3, 3, 2, 3]),
        }),
      ],
      seen: {
        swelling: "none",
        sinusTract: "none",
        caries: "none",
        crack: "none",
        restoration: "amalgam, mesial and occlusal, worn at the margin; no crown",
        fever: "no",
        post: "no",
        rotationDeg: 0,
        tiltDeg: 10,
        mouthOpeningMm: 38,
        gag: "no",
        ferruleHeightMm: 2.5,
        ferruleWidthMm: 1.6,
      },
      onFilm: {
        ligament: "widened",
        lamina: "lost",
        lucency: "apical",
        lucencyMm: 4.5,
        sclerosis: "no",
        resorption: "none",
        apex: "closed",
        calcified: "no",
        earlierFilling: "present",
        earlierFillingEndMm: 2.5,
      },
      note: "The filling of the mesiobuccal root lies to the buccal of the root's middle on the angled film: room for a second canal on the palatal side. Fillings of the distobuccal and palatal roots end 2 mm short and have voids, but their ligament is normal. No isolated deep probing, so no sign of a split root. Bite test with a stick on each cusp: pain on the mesiobuccal cusp on closing, not on release.",
    }),
  ],
};

const diagnosis: Moment = {
  day: days.presented,
  time: "10:02",
  words: "Diagnosis made, search for a second mesiobuccal canal begun",
  writes: [
    searchBegun,
    write("diagnosis", "diagnosis-1", {
      madeOn: days.presented,
      taxonomy: "consensus2009",
      pulpal: "previouslyTreated",
      apical: "symptomaticApicalPeriodontitis",
      because:
        "Root-filled tooth, painful to percussion and on biting, with a lucency at the mesiobuccal root. Controls 25, 27 and 16 reply to cold and percussion as healthy teeth, so the pain is not referred from a neighbour. No sinus tract and no swelling, so no abscess. Cold on 26 itself says nothing: it has no pulp.\nThe filling of this root lies off its middle on the angled film; a second mesiobuccal canal that was never treated is the likeliest cause.",
    }),
  ],
};

const plan: Moment = {
  day: days.presented,
  time: "10:20",
  words: "Options weighed with the patient, retreatment chosen",
  writes: [
    write("plan", "plan-1", {
      madeOn: days.presented,
      altered: "respected",
      crowned: "no",
      options: [
        {
          way: "watch",
          forIt: "No intervention today",
          againstIt: "Pain on chewing, and a lesion with a cause that will not go by itself",
        },
        {
          way: "retreat",
          forIt: "Reaches the missed canal; the old filling must be renewed anyway and the cusps covered",
          againstIt: "Two visits; instruments may break or ledge in a canal shaped before",
        },
        {
          way: "surgery",
          forIt: "Short, one visit",
          againstIt:
            "Leaves the untreated canal infected above the cut; sinus near; antiresorptive; second choice if retreatment fails",
        },
        {
          way: "extraction",
          forIt: "Ends the infection",
          againstIt: "Loses the tooth that carries this side; wound in a jaw under an antiresorptive",
        },
      ],
      chosen: "retreat",
      because:
        "The likely cause is an untreated canal, and only retreatment reaches it. After retreatment of teeth with a lesion about four in five heal, and nearly all are still in place after four years. Surgery stays open afterwards; extraction does not come back. The patient wants to keep the tooth and accepts that its cusps must be covered afterwards.",
      saidPlainly:
        "One part of the root was not found the first time. Only this way gets to it. You want to keep the tooth, and you will have it covered after. If it does not heal, there is still one more way.",
      visitsExpected: 2,
      risksNamed: [
        "Pain, swelling or a flare-up after the visit",
        "Disease that stays or comes back, and more treatment",
        "A hole may be made in the side of the root",
        "Fracture of the tooth, above all without cover of the cusps",
        "An instrument may break in a canal",
      ],
    }),
  ],
};

const consent: Moment = {
  day: days.presented,
  time: "10:28",
  words: "Consent to retreatment, and to images for teaching",
  writes: [
    write("consent", "consent-1", {
      on: days.presented,
      to: "Retreatment of 26 in two visits, with a solvent, under rubber dam",
      explainedBy: "resident",
      answeredBy: "patient",
      answer: "agreed",
      capacity: "has",
      imagesFor: ["treatment", "teaching"],
      note: "All four ways were explained with their outlook. Asked whether the tooth then needs a crown: yes, or another restoration over all its cusps. Given the written sheet, took it home, signed at the first visit.",
    }),
  ],
};

const evidence: Moment = {
  day: days.presented,
  time: "20:40",
  words: "Evidence for retreatment gathered",
  writes: [
    write("reference", "ref-martins-2018", published.martins2018),
    write("reference", "ref-baruwa-2020", published.baruwa2020),
    write("reference", "ref-farzaneh-2004", published.farzaneh2004),
    write("reference", "ref-ng-2011-survival", published.ng2011survival),
    write("claim", "claim-missed", {
      about: "diagnosis-1",
      says: "An untreated second mesiobuccal canal is a likely cause of the lesion.",
      speaks: "for",
      references: ["ref-martins-2018", "ref-baruwa-2020"],
      state: "supported",
      verdict:
        "Cross-sectional: the canal is common, and a lesion is about three times as common where it was missed. Not shown to be the cause in this tooth until it is found.",
    }),
    write("claim", "claim-retreat", {
      about: "plan-1",
      says: "Retreatment of a tooth with a lesion heals about four times in five.",
      speaks: "for",
      references: ["ref-farzaneh-2004", "ref-ng-2011-survival"],
      state: "supported",
      verdict:
        "Cohorts from teaching clinics; 78 % with a lesion before in one of them. Survival is not healing and stands apart.",
    }),
  ],
};

/** The first day of case A: why she came, what was found, what it is, what was chosen and agreed. */
export const beforeTreatment: readonly Moment[] = [presenting, history, findings, diagnosis, plan, consent, evidence];
