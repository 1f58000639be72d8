import { filmsOfCaseA } from "./case-a.ts";
import { filmsOfCaseB } from "./case-b.ts";
import { filmsOfCaseC } from "./case-c.ts";
import type { DemoFilm } from "./demo-film.ts";

/** Every film of the demo's three cases, in order of case and day. All invented. */
export const demoFilms: readonly DemoFilm[] = [...filmsOfCaseA, ...filmsOfCaseB, ...filmsOfCaseC];
