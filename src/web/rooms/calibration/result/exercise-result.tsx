import { Link } from "wouter";
import type { ExerciseView } from "../../../../server/api.ts";
import { Button } from "../../../parts/button.tsx";
import { Cautions } from "../../../parts/cautions.tsx";
import { dayInWords, today } from "../../../parts/days-in-words.ts";
import { DemoMark } from "../../../parts/demo-mark.tsx";
import { countOf, numberInWords } from "../../../parts/figures-in-words.ts";
import { PageHead } from "../../../parts/page-head.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { type ClickAnswer, readClickAnswer } from "../click-answer.ts";
import {
  type ClickRow,
  endsInWords,
  outliersInWords,
  pxInWords,
  rowsAside,
  rowsByDirection,
  rowsByKind,
  rowsByTool,
} from "../click-rows.ts";
import { UseFromNowOn } from "./use-from-now-on.tsx";
import "./exercise-result.css";

/** What an exercise told: the one number large, what speaks against it, and everything that stands behind it. */
export function ExerciseResult({ view }: { readonly view: ExerciseView }) {
  const answer = readClickAnswer(view.finished?.answer);
  const print = () => window.print();
  useShortcut("p", "Exercise", "Print this page", print);
  return (
    <>
      <PageHead
        end={
          <>
            <Button hint="p" onClick={print}>
              Print
            </Button>
            <Link href="/calibration" className="button">
              Calibration
            </Link>
          </>
        }
      >
        <h1 className="result-title">Click error</h1>
        <span className="quiet">{whenAndWho(view)}</span>
        <DemoMark />
      </PageHead>
      <main className="result">
        {answer === undefined ? (
          <p>This exercise was worked out by another version of the program, in a form that can't be read here.</p>
        ) : (
          <Told view={view} answer={answer} />
        )}
      </main>
    </>
  );
}

const whenAndWho = ({ who, finished }: ExerciseView): string =>
  [who, finished === undefined ? "" : dayInWords(today(new Date(finished.at)))]
    .filter((text) => text !== "")
    .join(", ");

function Told({ view, answer }: { readonly view: ExerciseView; readonly answer: ClickAnswer }) {
  const { sigmaPx, intervals, clicks, without, zoom } = answer;
  const outliers = outliersInWords(answer);
  return (
    <>
      <section className="result-head" aria-labelledby="result-number">
        <p id="result-number" className="result-number">
          {pxInWords(sigmaPx)}
          {intervals.sigmaPx && <span className="result-ends">{endsInWords(intervals.sigmaPx)}</span>}
        </p>
        <p>
          So far a click of yours misses, in each direction, as a standard deviation with its 95 % interval: measured
          with {countOf(clicks, "click")}
          {zoom && `, shown ${numberInWords(zoom.middle, 1)} times as large as the film's pixels`}.
        </p>
        {without !== undefined && (
          <p>
            Without the pairs that are out of line: <strong>{pxInWords(without.sigmaPx)}</strong>{" "}
            <span className="quiet">{endsInWords(without.interval)}</span>
          </p>
        )}
      </section>
      <UseFromNowOn id={view.id} answer={answer} />
      <section>
        <h2>Read it with care</h2>
        <Cautions topic="clickError" cautions={answer.cautions} />
      </section>
      <div className="result-tables">
        <Table name="By kind of place" rows={rowsByKind(answer)} />
        <Table name="By direction" rows={rowsByDirection(answer)} />
        {answer.byTool.length > 0 && <Table name="By tool" rows={rowsByTool(answer)} />}
        <Table name="Drift, and the true places" rows={rowsAside(answer)} />
      </div>
      {outliers.length > 0 && (
        <section>
          <h2>Out of line</h2>
          <ul className="result-list">
            {outliers.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      )}
      <Grounds view={view} answer={answer} />
    </>
  );
}

function Table({ name, rows }: { readonly name: string; readonly rows: readonly ClickRow[] }) {
  return (
    <table className="result-table">
      <caption>{name}</caption>
      <tbody>
        {rows.map((row) => (
          <tr key={row.name}>
            <th scope="row">
              {row.name} <span className="quiet">{row.beside}</span>
            </th>
            <td>{row.value}</td>
            <td className="quiet">{row.interval}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const Grounds = ({ view, answer }: { readonly view: ExerciseView; readonly answer: ClickAnswer }) => (
  <section className="result-grounds">
    <h2>How it came about</h2>
    <p>{answer.basis.formula}.</p>
    <ul className="result-list">
      {answer.basis.assumptions.map((line) => (
        <li key={line}>{line}</li>
      ))}
      {answer.notComputed.map(({ name, why }) => (
        <li key={name}>
          Not computed, {name}: {sentenceInWords(why)}.
        </li>
      ))}
    </ul>
    <p className="quiet">
      <Link href="/methods/clickError">How this is computed</Link>, version {view.finished?.topicVersion} · order of
      films by seed {view.seed} · {view.id}
    </p>
  </section>
);
