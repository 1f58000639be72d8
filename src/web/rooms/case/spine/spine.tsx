import { type KeyboardEvent, useEffect, useMemo, useRef } from "react";
import { Link, useLocation } from "wouter";
import { stateWords } from "../../../../figures/canal-state.ts";
import { emblem } from "../../../../figures/emblem.ts";
import type { Figure } from "../../../../figures/svg-tree.ts";
import { thePart } from "../../../../record/parts.ts";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import { useTeeth } from "../../../record/readings.ts";
import { useCaseNow } from "../case-now.ts";
import { AddMoment } from "./add-moment.tsx";
import type { Addable } from "./addable.ts";
import "./spine.css";
import type { Moment } from "./spine-moments.ts";
import { SpineScrub } from "./spine-scrub.tsx";
import type { StatesThen } from "./states-along.ts";

/** A page of the case that stands beside time. */
export interface StandingPage {
  readonly id: string;
  readonly title: string;
  readonly line: string;
  /** Something on it is open. */
  readonly look?: boolean;
}

interface SpineOptions {
  readonly caseId: string;
  readonly moments: readonly Moment[];
  readonly standing: readonly StandingPage[];
  readonly shown: string;
  /** The canals as each moment left them. */
  readonly states: ReadonlyMap<string, StatesThen>;
  /** The moment that is looked at while another page is open. */
  readonly looked: string | undefined;
  readonly look: (id: string | undefined) => void;
  /** Absent where the case is only looked at. */
  readonly add?: (kind: Addable) => void;
}

/** The moments of a case from the first day on; arrow keys walk, the page follows; along its line the canals are looked at. */
export function Spine({ caseId, moments, standing, shown, states, looked, look, add }: SpineOptions) {
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
  const [, go] = useLocation();
  const ids = useMemo(() => moments.map(({ id }) => id), [moments]);
  const at = Math.max(0, ids.indexOf(looked ?? shown));
  const marks = useEmblemMarks(moments, states);
  useEffect(() => {
    const item = looked === undefined ? null : list.current?.querySelector('[data-looked="true"]');
    item?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }, [looked]);
  useEffect(() => {
    const link = shown === "" ? null : list.current?.querySelector('[aria-current="page"]');
    link?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }, [shown]);
  return (
    <nav className="spine" aria-label="Moments of the case" ref={list} onKeyDown={walk}>
      <div className="spine-scroll">
        <div className="spine-track">
          {moments.length > 1 && (
            <SpineScrub
              {...{ ids, at, look }}
              says={saysThen(moments[at], states)}
              open={(id) => go(`/case/${caseId}/${id}`)}
            />
          )}
          <ol className="spine-line">
            {moments.map((moment, index) => (
              <li
                key={moment.id}
                data-shape={moment.shape}
                data-shown={moment.id === shown}
                data-looked={moment.id === looked}
                data-at={index === at}
              >
                <SpineLink
                  {...{ caseId, shown }}
                  page={withDay(moment, moments[index - 1])}
                  mark={moment.shape}
                  emblem={marks.get(moment.id)}
                />
              </li>
            ))}
          </ol>
        </div>
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

const markPx = 24;

/** The tooth, small, at each moment that left its canals otherwise than the moment before. */
function useEmblemMarks(
  moments: readonly Moment[],
  states: ReadonlyMap<string, StatesThen>,
): ReadonlyMap<string, Figure> {
  const { parts } = useCaseNow();
  const teeth = useTeeth();
  const number = thePart(parts, "case")?.body.tooth;
  const roots = thePart(parts, "anatomy")?.body.roots;
  const tooth = teeth.data?.find(({ twoDigit }) => twoDigit === number);
  return useMemo(() => {
    if (tooth === undefined || roots === undefined) return new Map();
    const changed = moments.flatMap(({ id }) => {
      const then = states.get(id);
      return then?.changed ? [[id, then.states] as const] : [];
    });
    return new Map(
      changed.map(([id, then]) => [id, emblem({ tooth, roots, states: then, theme: "paper", widthPx: markPx })]),
    );
  }, [moments, states, tooth, roots]);
}

/** A moment as the slider reads it out: its name, its day, and every canal. */
function saysThen(moment: Moment | undefined, states: ReadonlyMap<string, StatesThen>): string {
  if (moment === undefined) return "";
  const canals = Object.entries(states.get(moment.id)?.states ?? {}).map(
    ([name, state]) => `${name} ${stateWords(state)}`,
  );
  return `${moment.title}, ${dayInWords(moment.day)}: ${canals.length === 0 ? "no canals noted" : canals.join(", ")}`;
}

const shapeWords = { done: "", mishap: "mishap: ", due: "due: " } as const;

interface SpineLinkOptions {
  readonly caseId: string;
  readonly page: StandingPage;
  readonly shown: string;
  readonly mark?: Moment["shape"];
  /** The tooth as it stood then, where it had changed. */
  readonly emblem?: Figure | undefined;
}

const SpineLink = ({ caseId, page, shown, mark, emblem: then }: SpineLinkOptions) => (
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
    <span className="spine-says" data-look={page.look}>
      {page.line}
    </span>
    {then && (
      <span className="spine-emblem" aria-hidden="true">
        <FigureView figure={then} />
      </span>
    )}
  </Link>
);
