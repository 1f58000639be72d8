import { type Moment, write } from "../case-of-moments.ts";
import { published } from "../published.ts";
import { recall } from "../usual-bodies.ts";
import { days } from "./days.ts";

/** Hand-back, follow-up and the supervisor's reading of case C; takes the ids of the films taken on a day. */
export const afterTreatment = (filmsOn: (day: string) => readonly string[]): readonly Moment[] => {
  const seenOnFilm = (day: string) => {
    const [film] = filmsOn(day);
    return film === undefined ? {} : { film };
  };
  return [
    {
      day: days.thirdVisit,
      time: "16:20",
      words: "Tooth handed back to the restoring dentist",
      writes: [
        write("handback", "handback-1", {
          on: days.thirdVisit,
          restoreWith: "Composite is final; no crown, no post",
          orificesMarkedBy: "composite from 3 mm below the neck, white",
          warnings:
            "Walls at the neck are under 1.5 mm: nothing may be cut there again. The cone of 45 is covered with composite; renew it when worn. Keep 35 in mind if teeth are ever moved.",
          prognosis: "Favourable for healing, guarded for the root: short and thin-walled.",
        }),
      ],
    },
    {
      day: days.thirdVisit,
      time: "18:00",
      who: "Supervisor",
      words: "Case read and signed by the supervisor, with a question",
      writes: [
        write("review", "review-1", {
          on: days.thirdVisit,
          by: "supervisor",
          of: "plan-1",
          says: "Good and careful work. The family was told that both ways stand equal: what do you rest that on? The claim in your list says opinion only.",
          signed: true,
          answer:
            "On the seminar, not yet on the guideline's own chapter. I read it before the next follow-up and change the claim or the sentence.",
        }),
      ],
    },
    {
      day: days.threeMonths,
      time: "16:05",
      words: "Follow-up at three months",
      writes: [
        write(
          "recall",
          "recall-1",
          recall({
            on: days.threeMonths,
            probingDeepestMm: 3,
            onFilm: "notTaken",
            imaging: "none",
            nextOn: days.sixMonths,
            note: "No pimple, no pain. 45 replies to cold, its cone covered. No film today: it would change nothing so early.",
          }),
        ),
      ],
    },
    {
      day: days.sixMonths,
      time: "15:40",
      words: "Follow-up at six months",
      writes: [
        write(
          "recall",
          "recall-2",
          recall({
            on: days.sixMonths,
            ...seenOnFilm(days.sixMonths),
            probingDeepestMm: 3,
            onFilm: "smaller",
            readings: [
              { reader: "resident", score: 3, blind: true },
              { reader: "supervisor", score: 3, blind: true },
            ],
            lesionMm: 2.8,
            nextOn: days.next,
            note: "No complaint. Bone comes in from the mesial side, barrier unchanged. Root has not grown, as expected. Next at one year.",
          }),
        ),
        write("reference", "ref-orstavik-1996", published.orstavik1996),
        write("claim", "claim-early", {
          about: "recall-2",
          says: "Six months are too early for a verdict on healing.",
          speaks: "for",
          references: ["ref-orstavik-1996"],
          state: "supported",
          verdict: "Signs of healing were most frequent at one year.",
        }),
      ],
    },
  ];
};
