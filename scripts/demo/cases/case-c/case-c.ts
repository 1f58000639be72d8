import type { CaseFile } from "../../../../src/record/case-file.ts";
import { caseOfMoments } from "../case-of-moments.ts";
import type { FilmOnList } from "../film-list.ts";
import { filmsOfCase } from "../films-of-case.ts";
import { afterTreatment } from "./after-treatment.ts";
import { beforeTreatment } from "./before-treatment.ts";
import { filmsPlan } from "./films.ts";
import { visits } from "./visits.ts";

/** Case C: apical barrier in a lower premolar with an open apex after its tubercle broke off, followed until now. */
export function caseC(list: readonly FilmOnList[]): CaseFile {
  const films = filmsOfCase(filmsPlan, list);
  return caseOfMoments("demo-c", [
    ...beforeTreatment,
    ...films.moments,
    ...visits(films.on),
    ...afterTreatment(films.on),
  ]);
}
