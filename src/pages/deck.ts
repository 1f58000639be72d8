import type { CaseSource } from "./case-source.ts";
import type { Page, PageModel } from "./page-model.ts";
import { mishapPages, recallPages } from "./sections/after.ts";
import { anatomyPages } from "./sections/anatomy.ts";
import { diagnosisPages, handbackPages, planPages } from "./sections/decisions.ts";
import { filmPages } from "./sections/films.ts";
import { findingsPages } from "./sections/findings.ts";
import { presentingPages } from "./sections/presenting.ts";
import { sourcePages } from "./sections/sources.ts";
import { visitPages } from "./sections/visits.ts";
import { titleOf } from "./title-of.ts";

/** A case as a deck: one page a moment, in the order in which it happened, sources last. */
export function deck(source: CaseSource): PageModel {
  const sections: ((source: CaseSource) => Page[])[] = [
    ...[presentingPages, findingsPages, diagnosisPages, anatomyPages, planPages],
    ...[filmPages, visitPages, mishapPages, handbackPages, recallPages, sourcePages],
  ];
  return { as: "deck", ...titleOf(source), pages: sections.flatMap((section) => section(source)) };
}
