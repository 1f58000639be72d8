import type { CaseFile } from "../../../../src/record/case-file.ts";
import { caseOfMoments } from "../case-of-moments.ts";
import type { FilmOnList } from "../film-list.ts";
import { filmsOfCase } from "../films-of-case.ts";
import { afterTreatment } from "./after-treatment.ts";
import { beforeTreatment } from "./before-treatment.ts";
import { days } from "./days.ts";
import { visits } from "./visits.ts";

/** Case C: apical barrier in a lower premolar with an open apex after its tubercle broke off, followed until now. */
export function caseC(list: readonly FilmOnList[]): CaseFile {
  const visitsOn = [days.firstVisit, days.secondVisit, days.thirdVisit];
  const films = filmsOfCase("demo-c", list, { firstDay: days.presented, visitsOn });
  return caseOfMoments("demo-c", [
    ...beforeTreatment,
    ...films.moments,
    ...visits(films.on),
    ...afterTreatment(films.on),
  ]);
}
