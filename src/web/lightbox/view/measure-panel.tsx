import "./measure-panel.css";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { Button } from "../../parts/button.tsx";
import { startWords, usualStart } from "../kernels/course-start.ts";
import { readingOf } from "../kernels/drawn-readings.ts";
import { AboutFilm } from "./about-film.tsx";
import { CourseSection } from "./course-section.tsx";
import { DrawnSection } from "./drawn-section.tsx";
import type { LightBox } from "./light-box.ts";
import { MarksList } from "./marks-list.tsx";
import { ScaleSection } from "./scale-section.tsx";
import { StrainSection } from "./strain-section.tsx";

interface MeasurePanelOptions {
  readonly box: LightBox;
  readonly ledger: readonly LedgerEntry[];
  readonly canals: readonly string[];
  readonly measuring: boolean;
}

/** What the film measures: the chosen course first, then the scale, the marks, and the film itself. */
export function MeasurePanel({ box, ledger, canals, measuring }: MeasurePanelOptions) {
  const chosen = box.marks.find(({ id }) => id === box.chosen?.markId);
  const courses = box.marks.filter(({ body }) => body.shape === "trace");
  const course = chosen?.body.shape === "trace" ? chosen : courses.length === 1 ? courses[0] : undefined;
  const reading = chosen && readingOf(chosen.body);
  return (
    <aside className="measure-panel" aria-label="Measures">
      {chosen && reading ? (
        <DrawnSection key={chosen.id} {...{ box, reading, ledger, measuring }} mark={chosen} />
      ) : course === undefined ? (
        <NoCourse box={box} hasCourses={courses.length > 0} />
      ) : (
        <CourseSection box={box} mark={course} ledger={ledger} measuring={measuring} />
      )}
      <StrainSection box={box} ledger={ledger} />
      <ScaleSection box={box} ledger={ledger} />
      <MarksList {...{ box, canals, ledger }} />
      <AboutFilm box={box} />
    </aside>
  );
}

function NoCourse({ box, hasCourses }: { box: LightBox; hasCourses: boolean }) {
  const trace = () => {
    box.take("trace");
    box.pane.element.current?.focus({ preventScroll: true });
  };
  return (
    <section className="course" aria-label="Course">
      <h2>{hasCourses ? "Choose a course" : "No canal is traced"}</h2>
      <p className="quiet">
        {hasCourses
          ? "Press a course on the film, or its line below, to read its measures."
          : `Mark ${startWords[usualStart(box.film)]}, follow the canal, end at the apex: the line keeps to the canal by itself, and every point can be moved afterwards.`}
      </p>
      <Button weight={hasCourses ? "plain" : "strong"} hint="T" onClick={trace}>
        Trace a canal
      </Button>
    </section>
  );
}
