import type { BodyOf } from "../../../../src/record/parts.ts";
import { write } from "../case-of-moments.ts";
import { days } from "./days.ts";

type Look = BodyOf<"search">["looks"][number];

/** No figure is published for these looks at a third root. */
const from = "own estimate, invented for the demo";

const onFilms: readonly Look[] = [
  {
    ...{ on: days.presented, kind: "straightFilm", result: "notSeen", sensitivity: 0.35, specificity: 0.97, from },
    note: "Two roots at first sight; a second outline behind the distal one",
  },
  {
    ...{ on: days.presented, kind: "angledFilm", result: "seen", sensitivity: 0.8, specificity: 0.96, from },
    note: "Tube 25° from mesial: a slender root stands apart from the distal one",
  },
];
const onFloor: Look = {
  ...{ on: days.firstVisit, kind: "microscope", result: "seen", sensitivity: 0.9, specificity: 0.99, from },
  note: "Its orifice 3 mm to lingual of the distobuccal one, under a ridge of dentine",
};

/** Where a third root is common, so that one straight film is not enough. */
const search = (looks: readonly Look[], found: { readonly foundAs?: string } = {}) =>
  write("search", "search-1", { feature: "thirdRoot", population: "China", looks: [...looks], ...found });

/** The third root of case B as two films told of it before access. */
export const searchBegun = search(onFilms);

/** And as its orifice was found on the floor. */
export const searchEnded = search([...onFilms, onFloor], { foundAs: "DL" });
