import { type Moment, write } from "../case-of-moments.ts";
import { published } from "../published.ts";
import { probing, recall } from "../usual-bodies.ts";
import { days } from "./days.ts";

/** The recalls of case A; takes the id of the film taken on a day, where there is one. */
export const recalls = (filmOn: (day: string) => string | undefined): readonly Moment[] => {
  const withFilm = (day: string) => {
    const film = filmOn(day);
    return film === undefined ? {} : { film };
  };
  return [
    {
      day: days.sixMonths,
      time: "09:05",
      words: "Recall at six months",
      writes: [
        write(
          "recall",
          "recall-1",
          recall({
            on: days.sixMonths,
            ...withFilm(days.sixMonths),
            percussion: "slight",
            probingDeepestMm: 3,
            onFilm: "smaller",
            readings: [
              { reader: "resident", score: 4, blind: true },
              { reader: "supervisor", score: 3, blind: true },
            ],
            lesionMm: 3.6,
            nextOn: days.twelveMonths,
            note: "Chews on the left again since about the second month. Percussion slightly different from 25 and 27, not painful. Lucency at the mesiobuccal root smaller, edge less sharp; bone pattern coming in from the distal side. Crown and filling sound.",
          }),
        ),
      ],
    },
    {
      day: days.twelveMonths,
      time: "09:20",
      words: "Recall at twelve months",
      writes: [
        write(
          "recall",
          "recall-2",
          recall({
            on: days.twelveMonths,
            ...withFilm(days.twelveMonths),
            probingDeepestMm: 3,
            onFilm: "smaller",
            readings: [
              { reader: "resident", score: 3, blind: true },
              { reader: "supervisor", score: 3, blind: true },
            ],
            lesionMm: 2.1,
            nextOn: days.twentyFourMonths,
            note: "No complaint. Tests as the controls. Lamina dura comes back along the distal side of the mesiobuccal root; still a widened ligament at its tip.",
          }),
        ),
        write("reference", "ref-orstavik-1996", published.orstavik1996),
        write("claim", "claim-wait", {
          about: "recall-2",
          says: "A lesion that shrinks at one year is more likely healing than not, and no further treatment is due.",
          speaks: "for",
          references: ["ref-orstavik-1996"],
          state: "supported",
          verdict: "Signs of healing were most frequent at one year in a cohort followed yearly for four years.",
        }),
      ],
    },
    {
      day: days.twentyFourMonths,
      time: "09:15",
      words: "Recall at twenty-four months",
      writes: [
        write(
          "recall",
          "recall-3",
          recall({
            on: days.twentyFourMonths,
            ...withFilm(days.twentyFourMonths),
            probingDeepestMm: 3,
            onFilm: "normal",
            readings: [
              { reader: "resident", score: 2, blind: true },
              { reader: "supervisor", score: 2, blind: true },
            ],
            nextOn: days.next,
            note: "No complaint in two years. Lamina dura can be followed round all three roots, a slightly wide ligament at the tip of the mesiobuccal one. Crown sound, no chip. Next film at four years from the filling unless something changes.",
          }),
        ),
        write("findings", "findings-2", {
          takenOn: days.twentyFourMonths,
          history: {
            ...{ spontaneousPain: "no", painToCold: "no", painToHeat: "no", relievedByCold: "no" },
            ...{ painOnBiting: "no", trauma: "no", recentOnset: "no" },
          },
          teeth: [
            {
              ...{
                tooth: "26",
                role: "tooth",
                cold: { reply: "none" },
                heat: { reply: "notDone" },
                electric: "notDone",
              },
              ...{
                percussion: "none",
                palpation: "none",
                bite: "none",
                mobility: 0,
                probingMm: probing([3, 2, 3, 3, 2, 3]),
              },
            },
            {
              ...{
                tooth: "25",
                role: "control",
                cold: { reply: "normal" },
                heat: { reply: "notDone" },
                electric: "notDone",
              },
              ...{
                percussion: "none",
                palpation: "none",
                bite: "none",
                mobility: 0,
                probingMm: probing([2, 2, 3, 2, 2, 2]),
              },
            },
            {
              ...{
                tooth: "27",
                role: "control",
                cold: { reply: "normal" },
                heat: { reply: "notDone" },
                electric: "notDone",
              },
              ...{
                percussion: "none",
                palpation: "none",
                bite: "none",
                mobility: 0,
                probingMm: probing([3, 2, 3, 3, 3, 3]),
              },
            },
          ],
          seen: {
            ...{ swelling: "none", sinusTract: "none", caries: "none", crack: "none", fever: "no" },
            restoration: "full crown, composite in the access, both closed",
          },
          onFilm: {
            ...{ ligament: "widened", lamina: "intact", lucency: "none", sclerosis: "no", resorption: "none" },
            ...{ apex: "closed", calcified: "no", earlierFilling: "present", earlierFillingEndMm: 0.6 },
          },
          note: "",
        }),
      ],
    },
    {
      day: days.twentyFourMonths,
      time: "16:40",
      who: "Supervisor",
      words: "Two-year result read and signed by the supervisor",
      writes: [
        write("review", "review-2", {
          on: days.twentyFourMonths,
          by: "supervisor",
          of: "recall-3",
          says: "I read the three recalls blind and in another order: 3, 3, 2. Agreed. Ready for the panel; be prepared to be asked why the fragment was left.",
          signed: true,
          answer: "",
        }),
      ],
    },
  ];
};
