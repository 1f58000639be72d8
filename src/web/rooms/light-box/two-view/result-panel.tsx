import { besideNumbers } from "../../../lightbox/kernels/ledger-reading.ts";
import { Cautions } from "../../../parts/cautions.tsx";
import "../../../lightbox/view/measure-panel.css";
import { BendGraph } from "./bend-graph.tsx";
import { CourseNumbers } from "./course-numbers.tsx";
import { FilmsSection } from "./films-section.tsx";
import { GuideSection } from "./guide-section.tsx";
import { HiddenHeadline, NextStep } from "./hidden-headline.tsx";
import { LandmarksSection } from "./landmarks-section.tsx";
import { LevelsSection } from "./levels-section.tsx";
import { NotTold } from "./not-told.tsx";
import { SpaceView } from "./space-view.tsx";
import { useTwoView } from "./two-view-work.ts";

/** What the films give together: the drawing in space, the one number that matters, and all that stands beside it. */
export function ResultPanel() {
  const { canal, course, entry, measuring, films } = useTwoView();
  return (
    <aside className="measure-panel two-view-panel" aria-label={`${canal} in space`}>
      <section className="in-space" aria-busy={measuring} aria-label="Result">
        {course === undefined ? <NotTold /> : <HiddenHeadline />}
        {course !== undefined && <SpaceView course={course} />}
        {course !== undefined && <NextStep />}
        <Cautions topic="twoView" cautions={besideNumbers(entry).cautions} />
        {course !== undefined && <CourseNumbers />}
        {course !== undefined && course.turn.length > 1 && <BendGraph course={course} />}
      </section>
      <GuideSection />
      {films.length > 1 && <LevelsSection />}
      {films.length > 1 && <LandmarksSection />}
      <FilmsSection />
    </aside>
  );
}
