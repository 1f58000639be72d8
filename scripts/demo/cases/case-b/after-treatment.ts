import { type Moment, write } from "../case-of-moments.ts";
import { published } from "../published.ts";
import { recall } from "../usual-bodies.ts";
import { days } from "./days.ts";

/** Hand-back, the supervisor's reading and the recall of case B; takes the ids of the films taken on a day. */
export const afterTreatment = (filmsOn: (day: string) => readonly string[]): readonly Moment[] => {
  const [film] = filmsOn(days.twelveMonths);
  return [
    {
      day: days.secondVisit,
      time: "10:44",
      words: "Tooth handed back to the restoring dentist",
      writes: [
        write("handback", "handback-1", {
          on: days.secondVisit,
          restoreWith:
            "Composite that covers all cusps, indirect later if it wears; distal margin is 1 mm above the bone, in composite",
          restoreBy: days.cuspsCovered,
          orificesMarkedBy: "tinted flowable composite over each of four orifices",
          warnings:
            "Third root on the lingual side: a post in the distal root must go into DB only. DL is slender and turns sharply to buccal 3 mm from its end.",
          prognosis:
            "Favourable if the cusps are covered in time: vital pulp, hardly a lesion, all canals filled to length.",
        }),
        write("reference", "ref-gillen-2011", published.gillen2011),
        write("claim", "claim-cover", {
          about: "handback-1",
          says: "The restoration counts as much as the filling of the canals.",
          speaks: "for",
          references: ["ref-gillen-2011"],
          state: "supported",
          verdict:
            "Pooled observational studies: good filling and good restoration together heal more often than either alone.",
        }),
      ],
    },
    {
      day: days.secondVisit,
      time: "18:20",
      who: "Supervisor",
      words: "Case read and signed by the supervisor",
      writes: [
        write("review", "review-1", {
          on: days.secondVisit,
          by: "supervisor",
          of: "visit-2",
          says: "A third root found on film before the drill: this is how it should be. Show the two films side by side at the seminar, and say how sure the side is: which way did the tube go?",
          signed: true,
          answer:
            "Tube from mesial. The slender root moved to mesial with it, against the distobuccal one: it lies on the lingual side.",
        }),
      ],
    },
    {
      day: days.twelveMonths,
      time: "08:50",
      words: "Recall at twelve months",
      writes: [
        write(
          "recall",
          "recall-1",
          recall({
            on: days.twelveMonths,
            ...(film === undefined ? { imaging: "none" as const, onFilm: "notTaken" as const } : { film }),
            probingDeepestMm: 3,
            readings:
              film === undefined
                ? []
                : [
                    { reader: "resident", score: 1, blind: true },
                    { reader: "supervisor", score: 1, blind: true },
                  ],
            nextOn: days.next,
            note:
              film === undefined
                ? "No complaint, tests as the controls. Composite over all cusps, margins closed. Film put off at the patient's wish; due in a year."
                : "No complaint, tests as the controls. Composite over all cusps, margins closed. Ligament of even width round all three roots.",
          }),
        ),
      ],
    },
  ];
};
