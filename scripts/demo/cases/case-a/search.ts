import type { BodyOf } from "../../../../src/record/parts.ts";
import { write } from "../case-of-moments.ts";
import { days } from "./days.ts";

type Look = BodyOf<"search">["looks"][number];

/** Where no figure is published for a look. */
const from = "own estimate, invented for the demo";

const onFilms: readonly Look[] = [
  {
    ...{ on: days.presented, kind: "straightFilm", result: "notSeen" },
    note: "The old filling of the mesiobuccal root hides what lies behind it",
  },
  {
    ...{ on: days.presented, kind: "offCentreInstrument", result: "yes", sensitivity: 0.7, specificity: 0.85, from },
    note: "Tube 20° from mesial: the old filling lies to the buccal of the root's middle",
  },
  { on: days.presented, kind: "lesionOnOneRoot", result: "yes", note: "Round the mesiobuccal root alone" },
];
const onFloor: Look = {
  ...{ on: days.firstVisit, kind: "microscope", result: "seen", sensitivity: 0.7, specificity: 0.9, from },
  note: "A line on the floor from the MB1 orifice to the palatal one, 2 mm long",
};
const troughed: Look = {
  ...{ on: days.firstVisit, kind: "troughing", result: "seen", depthMm: 1 },
  note: "A size 08 dropped in, in the groove towards the palatal orifice",
};

const search = (looks: readonly Look[], found: { readonly foundAs?: string } = {}) =>
  write("search", "search-1", { feature: "secondMesiobuccal", looks: [...looks], ...found });

/** The second mesiobuccal canal as it was looked for before treatment: not seen on one film, suspected on the other. */
export const searchBegun = search(onFilms);

/** And as it was found, in a groove of the floor. */
export const searchEnded = search([...onFilms, onFloor, troughed], { foundAs: "MB2" });
