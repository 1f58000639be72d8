import { type ComponentType, type ReactNode, useEffect, useMemo, useRef, useState } from "react";
import type { BodyOf, Part, PartKind } from "../../../record/parts.ts";
import { Button } from "../../parts/button.tsx";
import { dayInWords } from "../../parts/days-in-words.ts";
import { EditPart } from "../../parts/fields/editing.tsx";
import type { DraftBook } from "../../record/draft-book.ts";
import { useCaseNow } from "./case-now.ts";
import { FilmStrip } from "./film-strip.tsx";
import { CaseForm } from "./forms/case-form.tsx";
import { ConsentForm } from "./forms/consent-form.tsx";
import { DiagnosisForm } from "./forms/diagnosis-form.tsx";
import { FindingsForm } from "./forms/findings-form.tsx";
import { HandbackForm } from "./forms/handback-form.tsx";
import { HistoryForm } from "./forms/history-form.tsx";
import { MishapForm } from "./forms/mishap-form.tsx";
import { PlanForm } from "./forms/plan-form.tsx";
import { RecallForm } from "./forms/recall-form.tsx";
import { ReviewForm } from "./forms/review-form.tsx";
import { faultsAtPlaces } from "./ledger/faults-at-places.ts";
import { MomentEmblem } from "./moment-emblem.tsx";
import { VisitForm } from "./visit/visit-form.tsx";
import "./moment-page.css";
import { DifficultyNow } from "./plan/difficulty-now.tsx";
import { RemoveCase } from "./remove-case.tsx";
import type { Moment } from "./spine/spine-moments.ts";

interface FormOptions {
  /** The tooth as it stood and its films, for a form that has something before them. */
  readonly picture: ReactNode;
}

const forms: Partial<Readonly<Record<PartKind, ComponentType<FormOptions>>>> = {
  case: CaseForm,
  medicalHistory: HistoryForm,
  findings: FindingsForm,
  diagnosis: DiagnosisForm,
  plan: PlanForm,
  consent: ConsentForm,
  visit: VisitForm,
  mishap: MishapForm,
  handback: HandbackForm,
  recall: RecallForm,
  review: ReviewForm,
};

interface MomentPageOptions {
  readonly caseId: string;
  readonly moment: Moment;
  readonly parts: readonly Part[];
  /** Absent where the case is only looked at. */
  readonly book: DraftBook | undefined;
  readonly noteAnatomy: (body: BodyOf<"anatomy">) => void;
  readonly remove: (part: Part, title: string) => void;
  readonly recordDue: (kind: "recall" | "visit") => void;
}

/** The page of one moment: the tooth as it stood, its films, and what is written, edited in place. */
export function MomentPage({ caseId, moment, parts, book, noteAnatomy, remove, recordDue }: MomentPageOptions) {
  const { part, title, day, films } = moment;
  const picture = (
    <div className="moment-picture">
      <MomentEmblem {...{ parts, day }} {...(book ? { note: noteAnatomy } : {})} />
      <FilmStrip {...{ caseId, films }} />
    </div>
  );
  return (
    <article className="moment" aria-labelledby="moment-title">
      <header className="moment-head">
        <h2 id="moment-title" ref={useFocusWhenAdded(moment.id)} tabIndex={-1}>
          {title}
        </h2>
        <span className="quiet">{[dayInWords(day), moment.when].filter((text) => text !== "").join(" · ")}</span>
      </header>
      {part?.kind !== "visit" && picture}
      {moment.shape === "due" && <DuePage moment={moment} readOnly={book === undefined} record={recordDue} />}
      {part && <PartForm key={part.id} {...{ part, title, book, picture }} />}
      {part?.kind === "findings" && <DifficultyNow />}
      {part?.kind === "case" && book && <RemoveCase caseId={caseId} />}
      {part && part.kind !== "case" && book && <Remove title={title} remove={() => remove(part, title)} />}
    </article>
  );
}

/** Who adds a moment is in its heading: its fields come next, and keys and readers begin there. */
function useFocusWhenAdded(id: string) {
  const { added } = useCaseNow();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (added?.current !== id) return;
    added.current = undefined;
    heading.current?.focus();
  }, [added, id]);
  return heading;
}

interface PartFormOptions {
  readonly part: Part;
  readonly title: string;
  readonly book: DraftBook | undefined;
  readonly picture: ReactNode;
}

/** The form of a part's kind, bound to it. */
function PartForm({ part, title, book, picture }: PartFormOptions) {
  const { ledger } = useCaseNow();
  const told = useMemo(() => faultsAtPlaces(ledger, part.id), [ledger, part.id]);
  const Form = forms[part.kind];
  if (Form === undefined) return null;
  return (
    <EditPart part={part} title={title} draft={book?.of(part.id)} book={book} told={told}>
      <Form picture={picture} />
    </EditPart>
  );
}

interface DuePageOptions {
  readonly moment: Moment;
  readonly readOnly: boolean;
  readonly record: (kind: "recall" | "visit") => void;
}

function DuePage({ moment, readOnly, record }: DuePageOptions) {
  const kind = moment.title.startsWith("Recall") ? "recall" : "visit";
  return (
    <div className="moment-due">
      <p>
        The patient is expected on {dayInWords(moment.day)}, {moment.line}. Nothing is recorded yet.
      </p>
      {!readOnly && (
        <Button weight="strong" onClick={() => record(kind)}>
          {kind === "recall" ? "Record this recall" : "Record this visit"}
        </Button>
      )}
    </div>
  );
}

/** Asks once more before a moment is taken out; it stays in the history. */
function Remove({ title, remove }: { readonly title: string; readonly remove: () => void }) {
  const [sure, setSure] = useState(false);
  return (
    <footer className="moment-foot">
      {sure ? (
        <>
          <span>Take out “{title}”? It stays in the history and can be undone.</span>
          <Button weight="look" onClick={remove}>
            Take it out
          </Button>
          <Button onClick={() => setSure(false)}>Keep it</Button>
        </>
      ) : (
        <Button weight="bare" onClick={() => setSure(true)}>
          Take out this moment
        </Button>
      )}
    </footer>
  );
}
