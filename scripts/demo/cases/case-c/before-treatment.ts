import { type Moment, write } from "../case-of-moments.ts";
import { published } from "../published.ts";
import { denied, probing, testedTooth } from "../usual-bodies.ts";
import { days } from "./days.ts";

const presenting: Moment = {
  day: days.presented,
  time: "15:00",
  words: "Presenting recorded",
  writes: [
    write("case", "case-1", {
      pseudonym: "P-0233",
      birthYear: 2013,
      sex: "female",
      tooth: "35",
      treatment: "apicalBarrier",
      presentedOn: days.presented,
      complaint:
        "There is a pimple on the gum below the tooth. It comes and goes and tastes salty. It doesn't really hurt. (The girl; her mother adds: since before the holidays.)",
      referredFor: "35 does not reply to cold and has a sinus tract; root not finished. Treatment of the open apex.",
      background:
        "No caries, no filling, no fall. In the middle of the chewing surface of 35 a round, flat facet of dentine with a dark point; 45 on the other side still has a small cone there (dens evaginatus). The cone of 35 has broken off or worn down, most likely soon after the tooth came through, and left a way into the pulp.",
      demo: true,
    }),
  ],
};

const history: Moment = {
  day: days.presented,
  time: "15:06",
  words: "Medical history taken",
  writes: [
    write("medicalHistory", "history-1", {
      takenOn: days.presented,
      nothingToNote: true,
      flags: [],
      medicines: [],
      physicalStatusClass: 1,
      bodyMassKg: 47,
      note: "Told by the mother. Vaccinations complete. First treatment with a local anaesthetic.",
    }),
  ],
};

const findings: Moment = {
  day: days.presented,
  time: "15:30",
  words: "Findings of 35 with three controls, tract traced",
  writes: [
    write("findings", "findings-1", {
      takenOn: days.presented,
      history: denied,
      teeth: [
        testedTooth({
          tooth: "35",
          role: "tooth",
          cold: { reply: "none" },
          electric: "none",
          percussion: "slight",
          palpation: "slight",
          probingMm: probing([2, 2, 2, 2, 2, 3]),
        }),
        testedTooth({
          tooth: "34",
          role: "control",
          cold: { reply: "normal", lingersSeconds: 1 },
          electric: 44,
          probingMm: probing([2, 2, 2, 2, 2, 2]),
        }),
        testedTooth({
          tooth: "36",
          role: "control",
          cold: { reply: "normal", lingersSeconds: 2 },
          electric: 37,
          probingMm: probing([3, 2, 3, 3, 2, 3]),
        }),
        testedTooth({
          tooth: "45",
          role: "control",
          cold: { reply: "normal", lingersSeconds: 2 },
          electric: 52,
          probingMm: probing([2, 2, 2, 2, 2, 2]),
        }),
      ],
      seen: {
        swelling: "none",
        sinusTract: "traced",
        tracedTo: "35",
        caries: "none",
        crack: "none",
        restoration: "none; facet of dentine with a dark point where the tubercle was",
        fever: "no",
        post: "no",
        rotationDeg: 0,
        tiltDeg: 0,
        mouthOpeningMm: 41,
        gag: "yes",
        ferruleHeightMm: 4,
        ferruleWidthMm: 1.9,
      },
      onFilm: {
        ligament: "widened",
        lamina: "lost",
        lucency: "apical",
        lucencyMm: 5,
        sclerosis: "no",
        resorption: "none",
        apex: "open",
        calcified: "no",
        earlierFilling: "none",
      },
      prior: { events: 31, n: 72, dependence: 0.5, from: "Invented: teeth opened in this clinic in a year" },
      note: "Gutta-percha point in the tract leads to the apex of 35. Root about three quarters of its length, walls thin and diverging, opening about 2.5 mm on the film. Electric test is weak evidence in a tooth with an open apex; cold, tract and film together carry the diagnosis. 45 has its cone and a normal reply: to be protected before it breaks.",
    }),
  ],
};

const diagnosis: Moment = {
  day: days.presented,
  time: "15:38",
  words: "Diagnosis made",
  writes: [
    write("diagnosis", "diagnosis-1", {
      madeOn: days.presented,
      taxonomy: "consensus2009",
      pulpal: "pulpNecrosis",
      apical: "chronicApicalAbscess",
      because:
        "No reply to cold where 34, 36 and 45 reply; lucency at an open apex; a sinus tract that a point traces to 35; hardly any pain. The broken tubercle is the way in: no caries, no filling, no trauma. A split is unlikely in this tooth, and no deep isolated probing was found.",
    }),
  ],
};

const plan: Moment = {
  day: days.presented,
  time: "15:55",
  words: "Options weighed with girl and mother, apical barrier chosen",
  writes: [
    write("plan", "plan-1", {
      madeOn: days.presented,
      crowned: "no",
      options: [
        {
          way: "regeneration",
          forIt: "Root may grow longer and its walls thicker",
          againstIt:
            "Needs bleeding into the canal and several returns; growth is not certain with a long infection; colour; barrier stays possible after it",
        },
        {
          way: "apicalBarrier",
          forIt: "Predictable end to the filling in two or three visits, crown closed for good soon after",
          againstIt: "Root stays short and thin-walled; may break at the neck",
        },
        {
          way: "extraction",
          forIt: "Gap could be closed by moving teeth, if that were planned anyway",
          againstIt: "No other reason to move teeth; loses a tooth that can be kept",
        },
        { way: "watch", forIt: "Nothing today", againstIt: "Infection goes on and the root will not grow" },
      ],
      chosen: "apicalBarrier",
      because:
        "The infection has stood for months and the family lives far from the clinic and can't come often. Root length is three quarters, crown to root still above one. Both ways were explained as of equal standing; mother and girl chose the one with fewer visits.",
      saidPlainly:
        "The infection has been there for months. You live far away and can't come often. Both ways are good. You and your mother chose the one with fewer visits.",
      visitsExpected: 3,
      risksNamed: [
        "The thin root may break, now or in years",
        "The plug may be pushed past the end",
        "Disease that stays or comes back, and more treatment",
        "The tooth may get a little darker",
      ],
    }),
  ],
};

const consent: Moment = {
  day: days.presented,
  time: "16:02",
  words: "Mother agreed, girl assented",
  writes: [
    write("consent", "consent-1", {
      on: days.presented,
      to: "Disinfection of 35 and apical barrier in two or three visits; protection of the cone of 45",
      explainedBy: "supervisor",
      answeredBy: "parentOrGuardian",
      answer: "agreed",
      capacity: "minor",
      imagesFor: ["treatment", "teaching"],
      note: "The girl was asked for herself, with the film before her: she wants the pimple gone and no front tooth dark. She may stop the visit at any time by raising her hand.",
    }),
  ],
};

const evidence: Moment = {
  day: days.presented,
  time: "20:30",
  words: "Evidence for the choice gathered",
  writes: [
    write("reference", "ref-guideline-2023", published.guideline2023),
    write("reference", "ref-mainkar-2018", published.mainkar2018),
    write("claim", "claim-barrier", {
      about: "plan-1",
      says: "An apical barrier and a regenerative procedure are both accepted for a necrotic tooth with an open apex.",
      speaks: "for",
      references: ["ref-guideline-2023"],
      state: "opinionOnly",
      verdict:
        "Chapter still to be read in full before the panel: which of the two does the guideline put first, and on what evidence?",
    }),
    write("claim", "claim-electric", {
      about: "diagnosis-1",
      says: "No reply to the electric test alone would not call this pulp dead.",
      speaks: "against",
      references: ["ref-mainkar-2018"],
      state: "supported",
      verdict: "Pooled accuracy comes from finished teeth. Cold, tract and film were needed.",
    }),
  ],
};

/** The first day of case C: why she came, what was found, what it is, what was chosen and agreed. */
export const beforeTreatment: readonly Moment[] = [presenting, history, findings, diagnosis, plan, consent, evidence];
