import type { FilmsPlan } from "../film-recipe.ts";
import { days } from "./days.ts";

/** The films of case C and what was marked on each. */
export const filmsPlan: FilmsPlan = {
  listedAs: "C",
  firstDay: days.presented,
  renamed: {},
  recipes: {
    "c-day-0-straight": {
      ...{ id: "film-straight", time: "15:18", words: "Diagnostic film read: course traced, lesion outlined" },
      caption: "Open apex, canal wide to its end, lucency around it",
      traces: { canals: ["R"], from: "orifice", polarity: "dark" },
      apices: true,
      lesionAt: "R",
    },
    "c-visit-2-barrier": {
      ...{ id: "film-barrier", time: "16:24", words: "Film of the barrier, its thickness marked" },
      caption: "Barrier at the end of the root, temporary filling",
      visit: "visit-2",
      stretch: { what: "barrier", canal: "R", fromMm: 4, toMm: 0.1 },
    },
    "c-recall-6-months": {
      ...{ id: "film-6-months", time: "15:32", words: "Film at six months, lesion outlined" },
      caption: "Six months: filled over the barrier, lucency smaller",
      lesionAt: "R",
    },
  },
};
