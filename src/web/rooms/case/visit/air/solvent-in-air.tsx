import { useMemo, useState } from "react";
import { Link } from "wouter";
import {
  breathed,
  firstLimitInWords,
  rateInWords,
  rateTaken,
  solventHeadline,
} from "../../../../../ledger/solvent-in-words.ts";
import {
  type SolventTold,
  solventForPatientTold,
  solventIfTold,
  solventSubject,
  solventTold,
} from "../../../../../ledger/solvent-told.ts";
import { dosesOf, type Supposed, supposedAsRecorded, visitSupposed } from "../../../../../ledger/visit-supposed.ts";
import { limitsFigure, vapourFigure } from "../../../../../pages/solvent-figures.ts";
import type { BodyOf } from "../../../../../record/parts.ts";
import { FigureView } from "../../../../parts/figure-view.tsx";
import { SayRefusal } from "../../../../parts/say-refusal.tsx";
import { useWhatIf } from "../../../../record/what-if.ts";
import { capital } from "../../../../words/capital.ts";
import { refusalInWords } from "../../../../words/value-words.ts";
import { useCaseNow } from "../../case-now.ts";
import { AroundTheSum } from "./around-the-sum.tsx";
import { LimitsTold } from "./limits-told.tsx";
import { useSettled } from "./use-settled.ts";
import { WhatIfFields } from "./what-if-fields.tsx";
import { WhoBreathes } from "./who-breathes.tsx";

interface SolventInAirOptions {
  readonly id: string;
  readonly revision: number;
  readonly visit: BodyOf<"visit">;
  readonly name: string;
  /** In the subject of its sum, where the visit has several. */
  readonly named: string | undefined;
}

/** One solvent of a visit: what its sum says, or why there is none. */
export function SolventInAir(options: SolventInAirOptions) {
  const { ledger } = useCaseNow();
  const { id, name, named } = options;
  const sum = solventTold(ledger, id, named);
  if (sum === undefined) return <p className="quiet">{capital(name)}: reckoned once the dose is recorded.</p>;
  if (sum.output === undefined)
    return (
      <p className="look">
        ◆ {capital(name)} is not reckoned: {refusalInWords(sum.why)}
      </p>
    );
  return <ReckonedInAir {...options} told={sum.output} entryId={sum.entryId} />;
}

interface ReckonedOptions extends SolventInAirOptions {
  readonly told: SolventTold;
  readonly entryId: string;
}

function ReckonedInAir({ id, revision, visit, name, named, told, entryId }: ReckonedOptions) {
  const { ledger } = useCaseNow();
  const [supposed, suppose] = useState<Supposed>({});
  const { answer, isOld, error, isSupposed } = useSupposed({ id, revision, visit, name, named }, supposed);
  const patient = solventForPatientTold(ledger, id, named);
  const by = { staff: told, patient: patient?.output, assistantIn: visit.clinic?.room?.assistantIn };
  const recorded = { ...rateTaken(told), ...supposedAsRecorded(visit, name) };
  const headline = solventHeadline(told, name);
  const shownAnswer = isSupposed ? answer?.output : undefined;
  return (
    <section className="form-part" aria-label={`${capital(name)} in the air`}>
      <p className="air-headline">
        {named !== undefined && `${capital(name)}. `}
        <a className="air-number" href={`#${entryId}`}>
          {headline.leads}
        </a>{" "}
        {headline.follows}
      </p>
      <p>{firstLimitInWords(told)}</p>
      <WhoBreathes {...{ by, entryId }} patientEntryId={patient?.entryId} />
      <div className="air-side" data-old={isOld}>
        <WhatIfFields {...{ recorded, supposed, suppose }} rate={rateInWords(told)} />
        <div className="air-answer" aria-live="polite" aria-busy={isOld}>
          {isSupposed && isOld && (
            <p className="quiet">◌ The answer to this is on its way; below stands the one before.</p>
          )}
          {!isSupposed && (
            <p className="quiet">Change a figure: what would be stands here, and dotted in the figures below.</p>
          )}
          {shownAnswer && <AnswerInWords told={shownAnswer} name={name} />}
          {isSupposed && answer?.why !== undefined && (
            <p className="look">◆ Not reckoned: {refusalInWords(answer.why)}</p>
          )}
          {isSupposed && error && <SayRefusal of={error} />}
        </div>
      </div>
      <AirFigures {...{ told, visit, name, by }} supposed={shownAnswer} />
      {told.limits.length > 0 && (
        <details className="air-more">
          <summary>Every limit as a table, each with its source and note ({told.limits.length})</summary>
          <LimitsTold {...{ told, entryId }} />
        </details>
      )}
      <AroundTheSum told={told} />
      <p>
        <Link href="/methods/solvent">What this can and can&apos;t tell</Link>
      </p>
    </section>
  );
}

const AnswerInWords = ({ told, name }: { readonly told: SolventTold; readonly name: string }) => {
  const { leads, follows } = solventHeadline(told, name);
  return (
    <p>
      What if: <strong>{leads}</strong> {follows} {firstLimitInWords(told)}
    </p>
  );
};

/** What the sum would say of the visit as it is supposed; the answer before stands until the next has come. */
function useSupposed({ id, revision, visit, name, named }: SolventInAirOptions, supposed: Supposed) {
  const { caseId } = useCaseNow();
  const settled = useSettled(supposed);
  const isSupposed = Object.keys(supposed).length > 0;
  const asks = useMemo(() => {
    if (Object.keys(settled).length === 0) return [];
    const operation = {
      op: "put" as const,
      id,
      kind: "visit" as const,
      baseRevision: revision,
      body: visitSupposed(visit, name, settled),
    };
    return [{ topic: "solvent" as const, subject: solventSubject(id, named), operations: [operation] }];
  }, [settled, id, revision, visit, name, named]);
  const { answers, isOld, error } = useWhatIf(caseId, asks);
  return { answer: solventIfTold(answers[0]), isOld: isOld || (isSupposed && settled !== supposed), error, isSupposed };
}

interface AirFiguresOptions {
  readonly told: SolventTold;
  readonly visit: BodyOf<"visit">;
  readonly name: string;
  readonly by: Parameters<typeof breathed>[0];
  readonly supposed: SolventTold | undefined;
}

/** The course over the visit, and each limit of the air that somebody breathes. */
function AirFigures({ told, visit, name, by, supposed }: AirFiguresOptions) {
  const { assistantIn } = by;
  const course = useMemo(
    () => vapourFigure(told, dosesOf(visit, name), { theme: "paper", widthPx: 640, supposed }),
    [told, visit, name, supposed],
  );
  const limits = useMemo(() => {
    const zones = new Set(breathed({ staff: told, assistantIn }).map(({ zone }) => zone));
    return told.limits.length === 0
      ? undefined
      : limitsFigure(told, [...zones], { theme: "paper", widthPx: 640, supposed });
  }, [told, assistantIn, supposed]);
  return (
    <div className="air-figures">
      <FigureView figure={course} />
      {limits && <FigureView figure={limits} />}
      {limits && <p className="quiet">* recalled and not read: look it up.</p>}
    </div>
  );
}
