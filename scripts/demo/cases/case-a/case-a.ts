import type { CaseFile } from "../../../../src/record/case-file.ts";
import { caseOfMoments } from "../case-of-moments.ts";
import type { FilmOnList } from "../film-list.ts";
import { filmsOfCase } from "../films-of-case.ts";
import { beforeTreatment } from "./before-treatment.ts";
import { comparisons } from "./comparisons.ts";
import { days } from "./days.ts";
import { filmsPlan } from "./films.ts";
import { firstVisit } from "./first-visit.ts";
import { recalls } from "./recalls.ts";
import { secondVisit } from "./second-visit.ts";

/** Case A: retreatment of an upper first molar with a missed canal, an instrument that parts, and two years of recalls. */
export function caseA(list: readonly FilmOnList[]): CaseFile {
  const films = filmsOfCase(filmsPlan, list);
  return caseOfMoments("demo-a", [
    ...beforeTreatment,
    ...films.moments,
    ...firstVisit(films.on(days.firstVisit)),
    ...secondVisit(films.on(days.secondVisit)),
    ...recalls((day) => films.on(day)[0]),
    comparisons,
  ]);
}
