import {
  type EmergencyGuide,
  type EmergencyLine,
  sourcesOfEmergency,
} from "../../../record/emergency/emergency-guide.ts";
import { SeenMark } from "../../parts/seen-mark.tsx";
import { sourceInWords } from "../../words/value-words.ts";

interface EmergencySheetOptions {
  readonly guide: EmergencyGuide;
  /** The clinic's own words; they go before the usual steps. */
  readonly protocol: string | undefined;
}

/** One emergency: whom to call, how it is recognised, the steps, what is not done. */
export const EmergencySheet = ({ guide, protocol }: EmergencySheetOptions) => (
  <article className="emergency-sheet">
    <h2>{guide.title}</h2>
    <p className="emergency-call">
      {guide.call.says} <From {...guide.call} />
    </p>
    <Lines title="How it is recognised" lines={guide.signs} />
    {protocol !== undefined && protocol !== "" && (
      <section className="emergency-protocol">
        <h3>Your clinic's protocol goes before these steps</h3>
        <p>{protocol}</p>
      </section>
    )}
    <section className="emergency-steps">
      <h3>The usual first steps</h3>
      <ol>
        {guide.steps.map((step) => (
          <li key={step.says}>
            {step.says} <From {...step} />
            {step.caution !== undefined && <span className="emergency-caution">◇ {step.caution}</span>}
          </li>
        ))}
      </ol>
    </section>
    <Lines title="What is not done" lines={guide.not} />
    {guide.differ.length > 0 && <Lines title="Where sources differ" lines={guide.differ} />}
    {guide.cautions.length > 0 && <Lines title="Also" lines={guide.cautions} />}
    <footer>
      <p>
        Support for, and never in place of, your local protocol, the product's labelling and licensed judgement. A line
        without a source is common practice.
      </p>
      <details>
        <summary>Sources</summary>
        <ul>
          {sourcesOfEmergency(guide).map(({ id, reference, verification }) => (
            <li key={id}>
              {reference} <SeenMark verification={verification} />
            </li>
          ))}
        </ul>
      </details>
    </footer>
  </article>
);

const Lines = ({ title, lines }: { readonly title: string; readonly lines: readonly EmergencyLine[] }) => (
  <section className="emergency-lines">
    <h3>{title}</h3>
    <ul>
      {lines.map((line) => (
        <li key={line.says}>
          {line.says} <From {...line} />
        </li>
      ))}
    </ul>
  </section>
);

/** Where a line is from, in quiet letters; that the rest is common practice is said once, below all of them. */
const From = ({ source, mark, called }: EmergencyLine) =>
  mark === "common practice" ? null : (
    <span className="emergency-from">
      {called ?? sourceInWords(source)}
      {mark === "memory" && ", from memory"}
    </span>
  );
