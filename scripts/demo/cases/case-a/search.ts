import type { BodyOf } from "../../../../src/record/parts.ts";
import { write } from "../case-of-moments.ts";
import { days } from "./days.ts";

type Look = BodyOf<"search">["looks"][number];

const onFilms: readonly Look[] = [
  {
    ...{ on: days.presented, kind: "straightFilm", result: "notSeen" },
    note: "The old filling of the mesiobuccal root hides what lies behind it",
  },
  { on: days.presented, kind: "lesionOnOneRoot", result: "yes", note: "Round the mesiobuccal root alone" },
];
const troughed: Look = {
  ...{ on: days.firstVisit, kind: "troughing", result: "seen", depthMm: 1 },
  note: "A size 08 dropped in, in the groove towards the palatal orifice",
};

const search = (looks: readonly Look[], found: { readonly foundAs?: string } = {}) =>
  write("search", "search-1", { feature: "secondMesiobuccal", looks: [...looks], ...found });

/** The second mesiobuccal canal as it was looked for before treatment: not seen on the film. */
export const searchBegun = search(onFilms);

/** And as it was found, in a groove of the floor. */
export const searchEnded = search([...onFilms, troughed], { foundAs: "MB2" });
