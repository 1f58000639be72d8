import { type KeyboardEvent, useEffect, useRef } from "react";
import { Link } from "wouter";
import { AddMoment } from "./add-moment.tsx";
import type { Addable } from "./addable.ts";
import "./spine.css";
import type { Moment } from "./spine-moments.ts";

/** A page of the case that stands beside time. */
export interface StandingPage {
  readonly id: string;
  readonly title: string;
  readonly line: string;
}

interface SpineOptions {
  readonly caseId: string;
  readonly moments: readonly Moment[];
  readonly standing: readonly StandingPage[];
  readonly shown: string;
  /** Absent where the case is only looked at. */
  readonly add?: (kind: Addable) => void;
}

/** The moments of a case from the first day on; arrow keys walk, the page follows. */
export function Spine({ caseId, moments, standing, shown, add }: SpineOptions) {
  const list = useRef<HTMLElement>(null);
  const walk = (event: KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[event.key];
    const links: Element[] = [...(list.current?.querySelectorAll("a") ?? [])];
    const at = document.activeElement === null ? -1 : links.indexOf(document.activeElement);
    const next = step === undefined || at < 0 ? undefined : links[at + step];
    if (!(next instanceof HTMLElement)) return;
    event.preventDefault();
    next.focus();
    next.click();
  };
  useEffect(() => {
    const link = shown === "" ? null : list.current?.querySelector('[aria-current="page"]');
    link?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }, [shown]);
  return (
    <nav className="spine" aria-label="Moments of the case" ref={list} onKeyDown={walk}>
      <div className="spine-scroll">
        <ol className="spine-line">
          {moments.map((moment, index) => (
            <li key={moment.id} data-shape={moment.shape} data-shown={moment.id === shown}>
              <SpineLink {...{ caseId, shown }} page={withDay(moment, moments[index - 1])} mark={moment.shape} />
            </li>
          ))}
        </ol>
        <ul className="spine-standing">
          {standing.map((page) => (
            <li key={page.id} data-shown={page.id === shown}>
              <SpineLink caseId={caseId} page={page} shown={shown} />
            </li>
          ))}
        </ul>
      </div>
      {add && <AddMoment add={add} />}
    </nav>
  );
}

/** The day stands where it changes; a recall says in its title how long after the treatment it was. */
function withDay(moment: Moment, before: Moment | undefined): StandingPage {
  const told = moment.day === before?.day || moment.part?.kind === "recall";
  const day = told ? "" : moment.when;
  return { ...moment, line: [day, moment.line].filter((text) => text !== "").join(" · ") };
}

const shapeWords = { done: "", mishap: "mishap: ", due: "due: " } as const;

interface SpineLinkOptions {
  readonly caseId: string;
  readonly page: StandingPage;
  readonly shown: string;
  readonly mark?: Moment["shape"];
}

const SpineLink = ({ caseId, page, shown, mark }: SpineLinkOptions) => (
  <Link
    href={`/case/${caseId}/${page.id}`}
    className="spine-link"
    aria-current={page.id === shown ? "page" : undefined}
    tabIndex={page.id === shown ? 0 : undefined}
  >
    {mark && (
      <svg className="spine-mark" viewBox="0 0 16 16" aria-hidden="true">
        {mark === "mishap" ? <path d="M8 1.5 14.5 8 8 14.5 1.5 8Z" /> : <circle cx="8" cy="8" r="5.5" />}
      </svg>
    )}
    <span className="spine-title">
      {mark && mark !== "done" && page.title !== "Mishap" && !page.title.endsWith("due") && (
        <span className="unseen">{shapeWords[mark]}</span>
      )}
      {page.title}
    </span>
    <span className="spine-says">{page.line}</span>
  </Link>
);
