import type { ConstructionName } from "../../../pages/on-film/construction-measure.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { Cautions } from "../../parts/cautions.tsx";
import { intervalInWords, numberInWords, withUnit } from "../../parts/figures-in-words.ts";
import { lowered } from "../../words/capital.ts";
import { sourceInWords } from "../../words/value-words.ts";
import { type CourseStart, startOfCourse, startWords } from "../kernels/course-start.ts";
import type { Film } from "../kernels/film-name.ts";
import { besideNumbers, entryOf, measuredCourse, numberOf, whyAbsent } from "../kernels/ledger-reading.ts";
import { type Mark, markName } from "../kernels/mark-shape.ts";
import { ConstructionToggle } from "./construction-toggle.tsx";
import { CourseStartField } from "./course-start-field.tsx";
import { CurvatureGraph } from "./curvature-graph.tsx";
import { SaidOfIt } from "./drawn-section.tsx";
import { HiddenPart } from "./hidden-part.tsx";
import { LedgerFigure } from "./ledger-figure.tsx";
import type { LightBox } from "./light-box.ts";
import { ToTwoViews } from "./to-two-views.tsx";

interface CourseSectionOptions {
  readonly box: LightBox;
  readonly mark: Mark;
  readonly ledger: readonly LedgerEntry[];
  /** A gesture is on its way; its numbers are not there yet. */
  readonly measuring: boolean;
}

/** What the chosen course measures: its length in one sentence, then every published measure, then the graph. */
export function CourseSection({ box, mark, ledger, measuring }: CourseSectionOptions) {
  const entry = entryOf(ledger, "curvature", mark.id);
  const course = measuredCourse(entry);
  const start = mark.body.shape === "trace" ? startOfCourse(mark.body, box.film) : "orifice";
  return (
    <section className="course" aria-label={`Course of ${markName(mark.body)}`} aria-busy={measuring}>
      <h2>{markName(mark.body)}</h2>
      <Length entry={entry} measuring={measuring} start={start} />
      <CourseStartField box={box} mark={mark} />
      <SaidOfIt box={box} mark={mark} />
      {course !== undefined && (
        <Stop entry={entryOf(ledger, "workingLength", mark.id)} way={wayToStop(mark, box.film)} />
      )}
      <HiddenPart {...{ ledger, mark }} tooth={box.tooth ?? ""} />
      <ToTwoViews mark={mark} />
      {entry !== undefined && course !== undefined && (
        <>
          {course.profile.length > 0 && <CurvatureGraph box={box} markId={mark.id} course={course} start={start} />}
          <Cautions topic="curvature" cautions={besideNumbers(entry).cautions} />
          <Measures {...{ box, mark, entry, start }} />
          <Absent entry={entry} />
          <Bends bends={course.bends} />
          <Severity course={course} />
        </>
      )}
    </section>
  );
}

interface LengthOptions {
  readonly entry: LedgerEntry | undefined;
  readonly measuring: boolean;
  readonly start: CourseStart;
}

function Length({ entry, measuring, start }: LengthOptions) {
  const length = numberOf(entry, "lengthMm");
  if (measuring) return <p className="headline headline-waiting">measuring</p>;
  if (entry === undefined || length === undefined)
    return <p className="absent">No length: {whyAbsent(entry, "lengthMm") ?? "it was not measured"}.</p>;
  return (
    <p className="headline">
      <LedgerFigure entry={entry} number={length} unit="mm" says={`Length from ${startWords[start]} to the apex`} />
      <span>
        from {startWords[start]} to the apex
        {length.interval && <span className="quiet">, {intervalInWords(length.interval)}</span>}
      </span>
    </p>
  );
}

/** How a working length is come by where the record does not give one yet; nothing on films taken after it was used. */
function wayToStop({ body }: Mark, film: Film): string | undefined {
  if (body.shape !== "trace" || film.body.purpose === "final" || film.body.purpose === "recall") return undefined;
  if (startOfCourse(body, film) === "orifice")
    return "No working length: it is counted from the reference point. Trace from there, or change where this course begins.";
  return body.canal === undefined ? "No working length: name the canal below, and it stands here." : undefined;
}

interface StopOptions {
  readonly entry: LedgerEntry | undefined;
  /** What to do where there is no entry. */
  readonly way: string | undefined;
}

function Stop({ entry, way }: StopOptions) {
  const stop = numberOf(entry, "recommendedMm");
  const locator = numberOf(entry, "locatorDifferenceMm");
  if (entry === undefined || stop === undefined) {
    if (entry === undefined) return way === undefined ? null : <p className="quiet">{way}</p>;
    const why = entry.refused === undefined ? whyAbsent(entry, "recommendedMm") : undefined;
    return why === undefined ? null : <p className="quiet">No stop: {why}.</p>;
  }
  return (
    <p className="stop">
      Stop at <LedgerFigure entry={entry} number={stop} unit="mm" says="Where to stop" />
      {stop.interval && <span className="quiet"> {intervalInWords(stop.interval)}</span>}
      {locator && (
        <>
          {" "}
          · apex locator less film{" "}
          <LedgerFigure
            entry={entry}
            number={locator}
            unit="mm"
            digits={1}
            says="Apex locator's reading less the film's"
          />
        </>
      )}
    </p>
  );
}

interface MeasureRow {
  readonly name: string;
  readonly says: string;
  readonly unit: string;
  /** Whose construction can be drawn from here. */
  readonly built?: ConstructionName;
}

const rows: readonly MeasureRow[] = [
  { name: "pruettDeg", says: "Largest bend", unit: "°", built: "pruett" },
  { name: "pruettRadiusMm", says: "Radius of that bend", unit: "mm" },
  { name: "minRadiusMm", says: "Tightest radius", unit: "mm", built: "tightest" },
  { name: "atMm", says: "Its place, from its start", unit: "mm" },
  { name: "schneiderDeg", says: "Angle of Schneider", unit: "°", built: "schneider" },
  { name: "weineDeg", says: "Angle of Weine", unit: "°", built: "weine" },
  { name: "accessAngleDeg", says: "Access angle", unit: "°", built: "access" },
  { name: "heightMm", says: "Curvature height", unit: "mm", built: "height" },
  { name: "heightDistanceMm", says: "Its foot, from its start", unit: "mm" },
  { name: "totalTurnDeg", says: "All turning", unit: "°" },
  { name: "chordMm", says: "Straight distance", unit: "mm" },
];

interface MeasuresOptions {
  readonly box: LightBox;
  readonly mark: Mark;
  readonly entry: LedgerEntry;
  readonly start: CourseStart;
}

const Measures = ({ box, mark, entry, start }: MeasuresOptions) => (
  <table className="measures">
    <thead className="unseen">
      <tr>
        <th scope="col">Measure</th>
        <th scope="col">Value</th>
        <th scope="col">Interval of 95 %</th>
        <th scope="col">On the film</th>
      </tr>
    </thead>
    <tbody>
      {rows
        .filter(({ name }) => numberOf(entry, name) !== undefined)
        .map((row) => (
          <Measure
            key={row.name}
            {...{ box, mark, entry }}
            row={{ ...row, says: row.says.replace("its start", startWords[start]) }}
          />
        ))}
    </tbody>
  </table>
);

interface MeasureOptions {
  readonly box: LightBox;
  readonly mark: Mark;
  readonly entry: LedgerEntry;
  readonly row: (typeof rows)[number];
}

function Measure({ box, mark, entry, row: { name, says, unit, built } }: MeasureOptions) {
  const number = numberOf(entry, name);
  return (
    <tr>
      <th scope="row">{says}</th>
      <td>{number !== undefined && <LedgerFigure entry={entry} number={number} unit={unit} says={says} />}</td>
      <td className="quiet">{number?.interval && intervalInWords(number.interval)}</td>
      <td>{built && <ConstructionToggle {...{ box, mark, entry }} name={built} says={says} />}</td>
    </tr>
  );
}

/** What the table does not hold, and why: each reason once, with the measures it stands for. */
function Absent({ entry }: { entry: LedgerEntry }) {
  const missing = rows.filter(({ name }) => numberOf(entry, name) === undefined);
  const reasons = new Set(missing.map(({ name }) => whyAbsent(entry, name) ?? "it was not computed"));
  return [...reasons].map((why) => (
    <p key={why} className="quiet">
      No {wordsOf(missing.filter(({ name }) => (whyAbsent(entry, name) ?? "it was not computed") === why))}: {why}.
    </p>
  ));
}

const wordsOf = (some: typeof rows): string => some.map(({ says }) => lowered(says)).join(", ");

type Course = NonNullable<ReturnType<typeof measuredCourse>>;

/** More than one bend: each on its own, because one angle would let them cancel out. */
function Bends({ bends }: { bends: Course["bends"] }) {
  if (bends.length < 2) return null;
  return (
    <ol className="bends">
      {bends.map(({ angleDeg, radiusMm, fromMm, toMm, side }) => (
        <li key={`${side} ${angleDeg}`}>
          {withUnit(numberInWords(angleDeg, 0), "°")} to the {side}
          {radiusMm === undefined ? "" : `, radius ${withUnit(numberInWords(radiusMm, 1), "mm")}`}
          {fromMm !== undefined && toMm !== undefined && (
            <span className="quiet"> from {withUnit(intervalInWords({ low: fromMm, high: toMm }), "mm")}</span>
          )}
        </li>
      ))}
    </ol>
  );
}

const Severity = ({ course }: { course: Course }) => (
  <ul className="severity">
    {course.severity.map(({ source, class: word }) => (
      <li key={source}>
        {word} <span className="quiet">after {sourceInWords(source)}</span>
      </li>
    ))}
  </ul>
);
