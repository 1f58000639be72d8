import type { KeyboardEvent, ReactNode } from "react";
import type { Words } from "../../../../record/words/case-words.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { isUnset } from "../../../parts/fields/unset.ts";
import { valueAt } from "../../../record/body-path.ts";
import { KeyCell } from "../forms/key-cell.tsx";
import "./answers.css";

/** One question that is answered with one key. */
export interface Question {
  readonly at: string;
  readonly label: string;
  readonly words: Words<string>;
}

interface AnswersOptions {
  readonly title: string;
  readonly questions: readonly Question[];
  /** Said beside the heading. */
  readonly note?: string;
  /** What is written and not chosen, after the questions. */
  readonly children?: ReactNode;
}

/** Questions under a heading that says how many are open, each a line with its answer; up and down walk through them. */
export function Answers({ title, questions, note, children }: AnswersOptions) {
  const body = useField("", title).value;
  const open = questions.filter(({ at }) => isUnset(valueAt(body, at))).length;
  return (
    <section className="form-part">
      <h2>
        {title} <span className="answers-open">{openInWords(open, questions.length)}</span>
      </h2>
      {note !== undefined && <p className="quiet">{note}</p>}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: arrows walk between the controls inside, which are reached by Tab as well */}
      <div className="answers" onKeyDown={walk}>
        {questions.map(({ at, label, words }) => (
          <KeyCell key={at} at={at} label={label} words={words} bare={false} />
        ))}
        {children}
      </div>
    </section>
  );
}

function openInWords(open: number, all: number): string {
  if (open === 0) return "all answered";
  return open === all ? "nothing answered yet" : `${open} open`;
}

/** Up and down go to the answer before and after, not through the answers of one. */
function walk(event: KeyboardEvent<HTMLElement>): void {
  const by = { ArrowUp: -1, ArrowDown: 1 }[event.key];
  const { target } = event;
  if (by === undefined || event.altKey || event.ctrlKey || event.shiftKey || !(target instanceof HTMLElement)) return;
  if (target instanceof HTMLTextAreaElement || target.matches("[type=date]")) return;
  const controls = [...event.currentTarget.querySelectorAll<HTMLElement>("select, input, textarea")];
  const next = controls[controls.indexOf(target) + by];
  if (next === undefined) return;
  event.preventDefault();
  next.focus();
}
