import type { CaseFile } from "../../../../src/record/case-file.ts";
import { caseOfMoments } from "../case-of-moments.ts";
import type { FilmOnList } from "../film-list.ts";
import { filmsOfCase } from "../films-of-case.ts";
import { afterTreatment } from "./after-treatment.ts";
import { beforeTreatment } from "./before-treatment.ts";
import { filmsPlan } from "./films.ts";
import { visits } from "./visits.ts";

/** Case B: first treatment of a lower first molar whose third root only an angled film shows. */
export function caseB(list: readonly FilmOnList[]): CaseFile {
  const films = filmsOfCase(filmsPlan, list);
  return caseOfMoments("demo-b", [
    ...beforeTreatment,
    ...films.moments,
    ...visits(films.on),
    ...afterTreatment(films.on),
  ]);
}
