import type { FilmsPlan } from "../film-recipe.ts";
import { days } from "./days.ts";

const filledBefore = { canals: ["MB1", "DB", "P"], from: "orifice", polarity: "bright" } as const;

/** The films of case A and what was marked on each. */
export const filmsPlan: FilmsPlan = {
  listedAs: "A",
  firstDay: days.presented,
  renamed: {},
  recipes: {
    "a-day-0-straight": {
      ...{
        id: "film-straight",
        time: "09:30",
        words: "Diagnostic film read: three filled canals traced, lesion outlined",
      },
      caption: "Old fillings of MB1, DB and P, short and with voids; lucency at the mesiobuccal root",
      traces: filledBefore,
      apices: true,
      lesionAt: "MB1",
    },
    "a-day-0-mesial-20": {
      ...{
        id: "film-angled",
        time: "09:36",
        words: "Angled film read: filling lies off the middle of the mesiobuccal root",
      },
      caption: "Tube 20° to mesial: the old filling lies off the middle of the mesiobuccal root",
      traces: filledBefore,
      apices: true,
    },
    "a-visit-1-length": {
      ...{
        id: "film-length",
        time: "09:44",
        words: "Film for length: instrument in P as known length, four courses from the stop",
      },
      caption: "Instruments in MB1, MB2, DB and P, courses followed from the stop to the foramen",
      visit: "visit-1",
      traces: { canals: ["MB1", "MB2", "DB", "P"], from: "stop", polarity: "bright" },
      known: ["P"],
    },
    "a-visit-1-fragment": {
      ...{ id: "film-fragment", time: "10:12", words: "Film of the fragment, its length marked" },
      caption: "Fragment in MB1 beyond the bend, temporary filling in place",
      visit: "visit-1",
      stretch: { what: "fragment", canal: "MB1", fromMm: 4.1, toMm: 1.1 },
    },
    "a-visit-2-final": {
      ...{ id: "film-final", time: "10:34", words: "Final film: four fillings traced" },
      caption: "Four canals filled, the fragment beside the filling of MB1",
      visit: "visit-2",
      traces: { canals: ["MB1", "MB2", "DB", "P"], from: "orifice", polarity: "bright" },
    },
    "a-recall-6-months": {
      ...{ id: "film-6-months", time: "08:58", words: "Recall film at six months, lesion outlined" },
      caption: "Six months: lucency smaller",
      lesionAt: "MB1",
    },
    "a-recall-12-months": {
      ...{ id: "film-12-months", time: "09:12", words: "Recall film at twelve months, lesion outlined" },
      caption: "Twelve months: lucency smaller again",
      lesionAt: "MB1",
    },
    "a-recall-24-months": {
      ...{ id: "film-24-months", time: "09:06", words: "Recall film at twenty-four months" },
      caption: "Twenty-four months: lamina dura round all roots",
    },
  },
};
