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
        words: "Diagnostic film read: three filled canals traced, ends of the fillings, lesion outlined",
      },
      caption: "Old fillings of MB1, DB and P, short and with voids; lucency at the mesiobuccal root",
      traces: filledBefore,
      apices: true,
      fillingEnds: { MB1: 2.2, DB: 1.6, P: 1.2 },
      lesionAt: "MB1",
    },
    "a-day-0-mesial-20": {
      ...{
        id: "film-angled",
        time: "09:36",
        words: "Angled film read: filling lies off the middle of the mesiobuccal root",
      },
      caption: "Tube 20° from mesial: the old filling lies off the middle of the mesiobuccal root",
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
      ...{
        id: "film-fragment",
        time: "10:12",
        words: "Film of the fragment: drawn in its canal, wall and crown to root read",
      },
      caption: "Fragment in the bend of MB1, temporary filling in place",
      visit: "visit-1",
      traces: { canals: ["MB1"], from: "orifice", polarity: "dark" },
      apices: true,
      fragment: { canal: "MB1", fromMm: 4.1, toMm: 1.1 },
      levels: [{ what: "wall read here", canal: "MB1", beforeMm: 5.2 }],
      wall: { canal: "MB1", side: "distal", outer: [422.8, 350.7], edge: [404.5, 350.7] },
      crownRoot: { root: "MB", canal: "MB1", cusp: [417.7, 697.8], boneCrest: [362.4, 486.5] },
      drawn: { MB1: ["pruett", "schneider"] },
    },
    "a-visit-2-final": {
      ...{ id: "film-final", time: "10:34", words: "Final film: four filled canals traced, ends of their fillings" },
      caption: "Four canals filled, the fragment beside the filling of MB1",
      visit: "visit-2",
      traces: { canals: ["MB1", "MB2", "DB", "P"], from: "orifice", polarity: "bright" },
      fillingEnds: { MB1: 0.4, MB2: 0.4, DB: 0.4, P: 0.5 },
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
