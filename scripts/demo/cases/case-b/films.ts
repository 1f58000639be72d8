import type { FilmsPlan } from "../film-recipe.ts";
import { days } from "./days.ts";

/** The films of case B and what was marked on each. */
export const filmsPlan: FilmsPlan = {
  listedAs: "B",
  firstDay: days.presented,
  renamed: { D: "DB" },
  recipes: {
    "b-day-0-straight": {
      ...{ id: "film-straight", time: "13:14", words: "Diagnostic film read: three courses traced" },
      caption: "Deep caries on the distal side; a second outline behind the distal root",
      traces: { canals: ["MB", "DB", "DL"], from: "orifice", polarity: "dark" },
      apices: true,
      lesionAt: "MB",
    },
    "b-day-0-mesial-25": {
      ...{ id: "film-angled", time: "13:19", words: "Angled film read: third root stands apart, four courses traced" },
      caption: "Tube 25° from mesial: a third root stands apart from the distal one",
      traces: { canals: ["MB", "ML", "DB", "DL"], from: "orifice", polarity: "dark" },
      apices: true,
    },
    "b-visit-1-length": {
      ...{
        id: "film-length",
        time: "14:48",
        words: "Film for length: instrument in DB as known length, four courses from the stop",
      },
      caption: "Instruments in MB, ML, DB and DL, courses followed from the stop to the foramen",
      visit: "visit-1",
      traces: { canals: ["MB", "ML", "DB", "DL"], from: "stop", polarity: "bright" },
      known: ["DB"],
    },
    "b-visit-2-final": {
      ...{ id: "film-final", time: "10:24", words: "Final film: four fillings traced" },
      caption: "Four canals filled",
      visit: "visit-2",
      traces: { canals: ["MB", "ML", "DB", "DL"], from: "orifice", polarity: "bright" },
    },
    "b-recall-12-months": {
      ...{ id: "film-12-months", time: "08:42", words: "Recall film at twelve months" },
      caption: "Twelve months: ligament of even width round every root",
    },
  },
};
