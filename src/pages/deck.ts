import type { CaseSource } from "./case-source.ts";
import type { Page, PageModel } from "./page-model.ts";
import { recallPages } from "./sections/after.ts";
import { anatomyPages } from "./sections/anatomy.ts";
import { claimPages } from "./sections/claims.ts";
import { consentPages } from "./sections/consent.ts";
import { spacePages } from "./sections/course-in-space.ts";
import { diagnosisPages } from "./sections/diagnosis.ts";
import { difficultyPages } from "./sections/difficulty.ts";
import { filmPages } from "./sections/films.ts";
import { findingsPages } from "./sections/findings.ts";
import { handbackPages } from "./sections/handback.ts";
import { mishapPages } from "./sections/mishap.ts";
import { planPages } from "./sections/plan.ts";
import { presentingPages } from "./sections/presenting.ts";
import { removalPages } from "./sections/removal.ts";
import { reviewPages } from "./sections/reviews.ts";
import { sourcePages } from "./sections/sources.ts";
import { hiddenCanalPages, strengthPages } from "./sections/strength.ts";
import { comparisonPages } from "./sections/two-dates.ts";
import { visitPages } from "./sections/visits.ts";
import { titleOf } from "./title-of.ts";

/** Sections in the order in which a day's pages stand. */
const told: readonly ((source: CaseSource) => Page[])[] = [
  ...[presentingPages, findingsPages, strengthPages, filmPages, spacePages, diagnosisPages, anatomyPages],
  ...[hiddenCanalPages, difficultyPages, planPages],
  ...[consentPages, visitPages, mishapPages, removalPages, handbackPages, recallPages, comparisonPages, reviewPages],
];

/** A case as a deck: its pages day by day, as it happened, the claims and the sources last. */
export function deck(source: CaseSource): PageModel {
  const pages = told.flatMap((section) => section(source)).sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  return {
    as: "deck",
    ...titleOf(source),
    pages: [...pages, ...claimPages(source), ...sourcePages(source, pages, "inFull")],
  };
}
