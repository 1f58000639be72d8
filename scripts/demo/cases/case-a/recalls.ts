import type { BodyOf } from "../../../../src/record/parts.ts";
import { type Moment, write } from "../case-of-moments.ts";
import { published } from "../published.ts";
import { denied, probing, recall, testedTooth } from "../usual-bodies.ts";
import { days } from "./days.ts";

/** Takes a day, gives the id of the film taken on it. */
type FilmOn = (day: string) => string | undefined;

const withFilm = (filmOn: FilmOn, day: string) => {
  const film = filmOn(day);
  return film === undefined ? {} : { film };
};

/** Two readers, blind to each other and to the date. */
const readBy = (resident: number, supervisor: number): BodyOf<"recall">["readings"] => [
  { reader: "resident", score: resident, blind: true },
  { reader: "supervisor", score: supervisor, blind: true },
];

const sixMonths = (filmOn: FilmOn): Moment => ({
  day: days.sixMonths,
  time: "09:05",
  words: "Recall at six months",
  writes: [
    write(
      "recall",
      "recall-1",
      recall({
        on: days.sixMonths,
        ...withFilm(filmOn, days.sixMonths),
        percussion: "slight",
        probingDeepestMm: 3,
        onFilm: "smaller",
        readings: readBy(4, 3),
        lesionMm: 3.2,
        nextOn: days.twelveMonths,
        note: "Chews on the left again since about the second month. Percussion slightly different from 25 and 27, not painful. Lucency at the mesiobuccal root smaller, edge less sharp; bone pattern coming in from the distal side. Composite over all cusps since the seventh week, margins closed.",
      }),
    ),
  ],
});

const twelveMonths = (filmOn: FilmOn): Moment => ({
  day: days.twelveMonths,
  time: "09:20",
  words: "Recall at twelve months",
  writes: [
    write(
      "recall",
      "recall-2",
      recall({
        on: days.twelveMonths,
        ...withFilm(filmOn, days.twelveMonths),
        probingDeepestMm: 3,
        onFilm: "smaller",
        readings: readBy(3, 3),
        lesionMm: 1.8,
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
});

/** The tooth beside its neighbours, two years on. */
const sheet: BodyOf<"findings"> = {
  takenOn: days.twentyFourMonths,
  history: denied,
  teeth: [
    testedTooth({ tooth: "26", role: "tooth", cold: { reply: "none" }, probingMm: probing([3, 2, 3, 3, 2, 3]) }),
    testedTooth({ tooth: "25", role: "control", probingMm: probing([2, 2, 3, 2, 2, 2]) }),
    testedTooth({ tooth: "27", role: "control", probingMm: probing([3, 2, 3, 3, 3, 3]) }),
  ],
  seen: {
    ...{ swelling: "none", sinusTract: "none", caries: "none", crack: "none", fever: "no" },
    restoration: "composite over all cusps, margins closed",
  },
  onFilm: {
    ...{ ligament: "widened", lamina: "intact", lucency: "none", sclerosis: "no", resorption: "none" },
    ...{ apex: "closed", calcified: "no", earlierFilling: "present", earlierFillingEndMm: 0.8 },
  },
  note: "",
};

const twentyFourMonths = (filmOn: FilmOn): Moment => ({
  day: days.twentyFourMonths,
  time: "09:15",
  words: "Recall at twenty-four months",
  writes: [
    write(
      "recall",
      "recall-3",
      recall({
        on: days.twentyFourMonths,
        ...withFilm(filmOn, days.twentyFourMonths),
        probingDeepestMm: 3,
        onFilm: "normal",
        readings: readBy(2, 2),
        nextOn: days.next,
        note: "No complaint in two years. Lamina dura can be followed round all three roots, a slightly wide ligament at the tip of the mesiobuccal one. Restoration sound. Next film at four years from the filling unless something changes.",
      }),
    ),
    write("findings", "findings-2", sheet),
  ],
});

const signed: Moment = {
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
};

/** The recalls of case A; takes the id of the film taken on a day, where there is one. */
export const recalls = (filmOn: FilmOn): readonly Moment[] => [
  sixMonths(filmOn),
  twelveMonths(filmOn),
  twentyFourMonths(filmOn),
  signed,
];
